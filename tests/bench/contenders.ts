import { CEILING, IF, LOOKUP } from "@formulajs/formulajs";
import { type AnyRole, areaOf, editionYears, mainBondingJumper, materials, prepare, roles } from "bondmil";
import jsonLogic from "json-logic-js";
import { bondingConductor } from "../../src/edition/tables/bonding-conductor.generated.js";

export const everyRole: readonly AnyRole[] = Object.values(roles);

/** Circular mils of a copper supply to circular mils of its copper main bonding jumper. */
export type Contender = (supplyArea: number) => number;

const code = { year: "2023" } as const;
const table = bondingConductor[code.year];
if (table === null) throw new Error(`${code.year} has no table of bonding conductors`);

export const ends = table.rows.map(({ through }) => through.copper);
export const answers = table.rows.map(({ copper }) => areaOf(copper));
/** Areas are whole, so a row begins one circular mil after the end of the row before. */
const begins = [0, ...ends.slice(0, -1).map((end) => end + 1)];
export const threshold = table.threshold.copper;

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

/** The other plain way to write the table by hand: one condition after the other. */
function ifChain(): Contender {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = ends;
  const [first = 0, second = 0, third = 0, fourth = 0, fifth = 0, sixth = 0] = answers;
  if (ends.length !== 6) throw new Error("the chain has a condition for each of six rows");
  return (area) => {
    if (area <= a) return first;
    if (area <= b) return second;
    if (area <= c) return third;
    if (area <= d) return fourth;
    if (area <= e) return fifth;
    if (area <= f) return sixth;
    return Math.ceil(area / 8);
  };
}

/** Every role, edition and pair of materials prepared and asked before, so that nothing is measured that only knows one of them. */
export function warm(): number {
  let sum = 0;
  for (const role of everyRole) {
    for (const year of editionYears) {
      for (const material of materials) {
        const conductor = { material };
        if (role.by === "rating") {
          const path = prepare(role, { code: { year }, conductor });
          for (let amperes = 1; amperes <= 400; amperes += 1) sum += path.requiredArea(amperes);
        } else if (role.by === "supply") {
          for (const supplyMaterial of materials) {
            const path = prepare(role, { code: { year }, supplyMaterial, conductor });
            for (const area of areas.slice(0, 400)) {
              sum += path.kind === "by-area" ? path.requiredArea(area) : path.requiredArea(area, area, 2);
            }
          }
        }
      }
    }
  }
  return sum;
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

/** A look-up of every role that can be prepared, in the edition of the table, copper from copper: whole areas or amperes in. */
export const preparedRoles: Readonly<Record<string, Contender>> = Object.fromEntries(
  everyRole.flatMap((role): [string, Contender][] => {
    const conductor = { material: "copper" } as const;
    if (role.by === "rating") return [[role.id, prepare(role, { code, conductor }).requiredArea]];
    if (role.by !== "supply") return [];
    const path = prepare(role, { code, supplyMaterial: "copper", conductor });
    return path.kind === "by-area" ? [[role.id, path.requiredArea]] : [];
  }),
);

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
  "if-chain, by hand": ifChain(),
  "prepared path": prepared(),
  "json-logic-js": rulesAsJson(),
  "@formulajs/formulajs": spreadsheetFunctions(),
};

/**
 * Whole areas around every end of a row, and a spread of others, in circular mils; none below the smallest jumper, where the cap at
 * the supply decides and a table look-up is not the whole answer.
 */
export const areas: readonly number[] = [
  ...ends.flatMap((end) => [end - 1, end, end + 1]),
  ...Array.from({ length: 1000 }, (_, at) => areaOf("8 AWG") + ((at * 1_037_389) % 4_000_000)),
];
