import { CEILING, IF, LOOKUP } from "@formulajs/formulajs";
import { areaOf, mainBondingJumper, prepare, size } from "bondmil";
import jsonLogic from "json-logic-js";
import { bondingConductor } from "../../src/edition/tables/bonding-conductor.generated.js";

/** Circular mils of a copper supply to circular mils of its copper main bonding jumper. */
export type Contender = (supplyArea: number) => number;

const code = { year: "2023" } as const;
const table = bondingConductor[code.year];
if (table === null) throw new Error(`${code.year} has no table of bonding conductors`);

const ends = table.rows.map(({ through }) => through.copper);
const answers = table.rows.map(({ copper }) => areaOf(copper));
/** Areas are whole, so a row begins one circular mil after the end of the row before. */
const begins = [0, ...ends.slice(0, -1).map((end) => end + 1)];
const threshold = table.threshold.copper;

/** The baseline: what one would write by hand for this one table, with nothing checked and nothing explained. */
function sortedArray(): Contender {
  const bounds = Float64Array.from(ends);
  const results = Float64Array.from(answers);
  return (area) => {
    for (let row = 0; row < bounds.length; row += 1) {
      if (area <= (bounds[row] as number)) return results[row] as number;
    }
    return Math.ceil(area / 8);
  };
}

function prepared(): Contender {
  const path = prepare(mainBondingJumper, {
    code,
    supplyMaterial: "copper",
    conductor: { material: "copper" },
  });
  if (path.kind !== "by-area") throw new Error("one material is sized by area alone");
  return path.requiredArea;
}

function spreadsheetFunctions(): Contender {
  return (area) => IF(area > threshold, CEILING(area / 8, 1), LOOKUP(area, begins, answers)) as number;
}

function rulesAsJson(): Contender {
  const rows = ends.flatMap((end, row) => [{ "<=": [{ var: "area" }, end] }, answers[row]]);
  const eighth = { "/": [{ var: "area" }, 8] };
  const roundedUp = { "-": [{ "+": [eighth, 1] }, { "%": [{ "+": [eighth, 1] }, 1] }] };
  const up = { if: [{ "==": [{ "%": [{ var: "area" }, 8] }, 0] }, eighth, roundedUp] };
  const rule = { if: [...rows, up] } as unknown as jsonLogic.RulesLogic;
  return (area) => jsonLogic.apply(rule, { area }) as number;
}

/** The contenders by name; the first is the baseline of the ratios. */
export const contenders: Readonly<Record<string, Contender>> = {
  "sorted array, by hand": sortedArray(),
  "prepared path": prepared(),
  "json-logic-js": rulesAsJson(),
  "@formulajs/formulajs": spreadsheetFunctions(),
};

/** The full call on one typical input: reading, steps, citations, evidence, cautions. */
export function fullCall(): number | null {
  return size(mainBondingJumper, {
    code,
    supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
    conductor: { material: "copper" },
  }).requiredArea;
}

/**
 * Whole areas around every end of a row, and a spread of others, in circular mils; none below the smallest jumper, where the cap at
 * the supply decides and a table look-up is not the whole answer.
 */
export const areas: readonly number[] = [
  ...ends.flatMap((end) => [end - 1, end, end + 1]),
  ...Array.from({ length: 1000 }, (_, at) => areaOf("8 AWG") + ((at * 1_037_389) % 4_000_000)),
];
