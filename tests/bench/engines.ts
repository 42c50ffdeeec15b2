import { Engine } from "json-rules-engine";
import { answers, ends, threshold } from "./contenders.js";

/** Circular mils in, circular mils out, as an engine that answers later gives them. */
export type Engined = (supplyArea: number) => Promise<number>;

/** One rule for each row; the engine cannot reckon, so that the 12.5 percent are a fact that is reckoned for it. */
function rulesWithEvents(): Engined {
  const engine = new Engine([], { replaceFactsInEventParams: true });
  engine.addFact("eighth", async (_, almanac) => Math.ceil((await almanac.factValue<number>("area")) / 8));
  ends.forEach((end, row) => {
    const over = ends[row - 1] ?? 0;
    const within = [
      { fact: "area", operator: "greaterThan", value: over },
      { fact: "area", operator: "lessThanInclusive", value: end },
    ];
    engine.addRule({
      conditions: { all: within },
      event: { type: "row", params: { required: answers[row] } },
    });
  });
  const above = [{ fact: "area", operator: "greaterThan", value: threshold }];
  const event = { type: "one-eighth", params: { required: { fact: "eighth" } } };
  engine.addRule({ conditions: { all: above }, event });
  return async (area) => {
    const { events } = await engine.run({ area });
    return Number(events[0]?.params?.["required"]);
  };
}

/** General engines for rules that answer later, given the same rows. */
export const engines: Readonly<Record<string, Engined>> = {
  "json-rules-engine": rulesWithEvents(),
};
