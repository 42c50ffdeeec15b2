import { CEILING, IF, LOOKUP } from "@formulajs/formulajs";
import {
  type AnyRole,
  areaOf,
  bind,
  type Code,
  editionYears,
  groundingElectrodeConductor,
  mainBondingJumper,
  materials,
  prepare,
  roles,
  type Supply,
  size,
} from "bondmil";
import jsonLogic from "json-logic-js";
import { plainly } from "../../src/asking/plainly.js";
import { bondingConductor } from "../../src/edition/tables/bonding-conductor.generated.js";

const everyRole: readonly AnyRole[] = Object.values(roles);

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

const supply: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] };
const conductor = { material: "copper" } as const;

/** The full call on one typical input: reading, steps, citations, evidence, cautions. */
export function fullCall(): number {
  return size(mainBondingJumper, { code, supply, conductor }).requiredArea;
}

const ofAluminum: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] };
const bound = bind(mainBondingJumper, { code, conductor });
const amended: Code = {
  ...code,
  amendments: [
    {
      kind: "floor",
      role: "main-bonding-jumper",
      copper: "4 AWG",
      citation: { jurisdiction: "Example County", section: "1" },
    },
    {
      kind: "cell",
      table: "bonding-conductor",
      row: "350 kcmil",
      column: "copper",
      size: "1/0 AWG",
      citation: { jurisdiction: "Example County", section: "2" },
    },
  ],
};

/** Calls that give a whole result: the plainest question of every role, bound, and questions that are hard. */
export const calls: Readonly<Record<string, () => number>> = {
  "main-bonding-jumper, three sets": fullCall,
  "the same, bound to code and conductor": () => bound({ supply }).requiredArea,
  "the same, from aluminum": () =>
    size(mainBondingJumper, { code, supply: ofAluminum, conductor }).requiredArea,
  "the same, under two amendments": () =>
    size(mainBondingJumper, { code: amended, supply, conductor }).requiredArea,
  "grounding-electrode-conductor of 2011, two kinds of electrodes": () =>
    size(groundingElectrodeConductor, {
      code: { year: "2011" },
      system: "service",
      supply,
      conductor,
      electrodes: [{ kind: "metal-water-pipe" }, { kind: "rod" }],
    }).requiredArea,
  ...Object.fromEntries(
    everyRole.map((role) => {
      const input = plainly(role, { code, material: "copper", supply });
      return [`${role.id}, plainest question`, () => size(role, input).requiredArea];
    }),
  ),
};

/**
 * Whole areas around every end of a row, and a spread of others, in circular mils; none below the smallest jumper, where the cap at
 * the supply decides and a table look-up is not the whole answer.
 */
export const areas: readonly number[] = [
  ...ends.flatMap((end) => [end - 1, end, end + 1]),
  ...Array.from({ length: 1000 }, (_, at) => areaOf("8 AWG") + ((at * 1_037_389) % 4_000_000)),
];
