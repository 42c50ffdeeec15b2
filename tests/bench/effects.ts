/**
 * What a proposal costs over the grids of all roles, in a process of its own: npm run bench. The baseline is one pass over the same questions,
 * put one by one to `size`, as printed and as proposed; of the roles that the proposal does not reach, nothing is asked.
 */
import { type AnyRole, type Code, effects, roles, size } from "bondmil";
import { gridOf } from "../../src/asking/grid.js";
import { plainly } from "../../src/asking/plainly.js";
import { medians } from "./medians.js";

const year = "2023";
const all: readonly AnyRole[] = Object.values(roles);

/** One floor for each of the roles. */
function floorsFor(reached: readonly AnyRole[]): Code {
  const citation = { jurisdiction: "Example County", section: "Sec. 12-3" };
  const amendments = reached.map(({ id, by }) => ({
    kind: "floor" as const,
    role: id,
    copper: "4 AWG" as const,
    // What the code names as one size of copper has no aluminum.
    ...(by !== "named-size" && { aluminum: "2 AWG" as const }),
    citation,
  }));
  return { year, amendments };
}

/** The sizings of the roles, both ways; the number of conductors that differ. */
function oneByOne(reached: readonly AnyRole[], after: Code): number {
  return reached.flatMap((role) =>
    gridOf(role, { year }).filter(({ question }) => {
      const [before, proposed] = [question, { ...question, code: after }].map(
        (one) => size(role, plainly(role, one)).requiredArea,
      );
      return before !== proposed;
    }),
  ).length;
}

const changedBy = (code: Code): number =>
  effects({ code }).grid.reduce((sum, { larger, smaller }) => sum + larger + smaller, 0);

console.log(
  "\nWhat a proposal does over the grids of all roles, 2023. Medians of one run; read the ratios.\n",
);
for (const [name, reached] of [
  ["a floor for one role", all.filter(({ id }) => id === "water-piping-bonding-jumper")],
  ["a floor for every role", all],
] as const) {
  const code = floorsFor(reached);
  const expected = oneByOne(reached, code);
  if (changedBy(code) !== expected) throw new Error(`effects finds ${changedBy(code)}, size ${expected}`);
  const [whole = Number.NaN, baseline = Number.NaN] = medians([
    () => changedBy(code),
    () => oneByOne(reached, code),
  ]);
  const columns = [`${whole.toFixed(0)} ms`, `${(whole / baseline).toFixed(2)} x`];
  console.log(name.padEnd(24) + columns.map((one) => one.padStart(12)).join(""));
}
console.log("columns: effects; that to the same sizings one by one");
