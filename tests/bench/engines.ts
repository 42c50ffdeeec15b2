import { ZenEngine } from "@gorules/zen-engine";
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

/** The rows as a decision table, the first that holds deciding. */
function decisionTable(): Engined {
  const rules = ends.map((end, row) => ({ _id: `row ${row}`, in: `<= ${end}`, out: String(answers[row]) }));
  const content = {
    inputs: [{ id: "in", name: "area", field: "area" }],
    outputs: [{ id: "out", name: "required", field: "required" }],
    rules: [...rules, { _id: "one-eighth", in: "", out: "ceil(area / 8)" }],
    hitPolicy: "first",
  };
  const nodes = [
    { id: "start", type: "inputNode", name: "start", position: { x: 0, y: 0 } },
    { id: "table", type: "decisionTableNode", name: "table", position: { x: 1, y: 0 }, content },
    { id: "end", type: "outputNode", name: "end", position: { x: 2, y: 0 } },
  ];
  const edges = [
    { id: "first", type: "edge", sourceId: "start", targetId: "table" },
    { id: "second", type: "edge", sourceId: "table", targetId: "end" },
  ];
  const decision = new ZenEngine().createDecision({ nodes, edges });
  return async (area) => Number((await decision.evaluate({ area })).result.required);
}

/** General engines for rules that answer later, given the same rows. */
export const engines: Readonly<Record<string, Engined>> = {
  "json-rules-engine": rulesWithEvents(),
  "@gorules/zen-engine": decisionTable(),
};
