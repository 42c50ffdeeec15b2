import {
  areaOf,
  type Code,
  conductorSizes,
  editionYears,
  type Material,
  materials,
  type Prepared,
  type PreparedByRating,
  prepare,
  type Readings,
  type SizingResult,
  type Step,
  type Supply,
  size,
} from "bondmil";
import { plainly } from "../../../src/asking/plainly.js";
import { readingFacts } from "../../../src/edition/tables/readings.generated.js";
import { largestRating } from "../../../src/rules/rating-table.js";
import { type Dice, diceOf } from "../installations/dice.js";
import { rolesByRating, rolesBySupply } from "../roles.js";

/** A case in which the prepared and the full path require different areas. */
export interface Disagreement {
  readonly case: number;
  readonly role: string;
  readonly input: unknown;
  readonly full: number;
  readonly prepared: number;
}

/**
 * Draws so many plainest questions of every role that can be prepared, of every edition, with readings chosen, and asks both paths. What is
 * prepared is kept from one case to the next, as a loop does.
 */
export function disagreements(seed: number, cases: number, most = 10): readonly Disagreement[] {
  const dice = diceOf(seed);
  const codes = editionYears.flatMap((year) =>
    Array.from({ length: codesOfAnEdition }, () => codeOf(year, dice)),
  );
  const found: Disagreement[] = [];
  const prepared = keeper();
  for (let number = 0; number < cases && found.length < most; number += 1) {
    const drawn = dice.chance(70) ? bySupply(dice, codes, prepared) : byRating(dice, codes, prepared);
    if (drawn.full !== drawn.prepared) found.push({ case: number, ...drawn });
  }
  return found;
}

const codesOfAnEdition = 12;

type Drawn = Omit<Disagreement, "case">;

/** Whatever is prepared, once. */
function keeper(): <P extends Prepared | PreparedByRating>(key: string, make: () => P) => P {
  const kept = new Map<string, Prepared | PreparedByRating>();
  return (key, make) => {
    const known = kept.get(key) ?? make();
    kept.set(key, known);
    return known as ReturnType<typeof make>;
  };
}

function codeOf(year: Code["year"], dice: Dice): Code {
  const ids = Object.keys(readingFacts) as (keyof Readings)[];
  const readings: Record<string, string> = {};
  for (const id of ids) if (dice.chance(30)) readings[id] = dice.pick(Object.keys(readingFacts[id].policy));
  return { year, readings: readings as Code["readings"] & object };
}

function bySupply(dice: Dice, codes: readonly Code[], keep: ReturnType<typeof keeper>): Drawn {
  const role = dice.pick(rolesBySupply);
  const code = dice.pick(codes);
  const material = dice.pick(materials);
  const supplyMaterial = dice.pick(materials);
  const supply = supplyFrom(dice, supplyMaterial);
  const input = plainly(role, { code, material, supply });
  const full = size(role, input) as SizingResult;
  const path = keep([role.id, codes.indexOf(code), supplyMaterial, material].join(), () =>
    prepare(role, { code, supplyMaterial, conductor: { material } }),
  );
  const installed = stepArea(full, "sum") ?? Number.NaN;
  const sets = supply.sets.reduce((sum, { count }) => sum + count, 0);
  const prepared =
    path.kind === "by-area"
      ? path.requiredArea(installed)
      : path.requiredArea(
          installed,
          path.needsAssumedArea(installed, sets) ? (stepArea(full, "assumed") ?? Number.NaN) : 0,
          sets,
        );
  return { role: role.id, input, full: full.requiredArea, prepared };
}

function supplyFrom(dice: Dice, material: Material): Supply {
  const sizes = conductorSizes.filter((one) => areaOf(one) > 0);
  const entries = dice.between(1, 3);
  const most = dice.pick([1, 3, 20]);
  return {
    sets: Array.from({ length: entries }, () => ({
      count: dice.between(1, most),
      size: dice.pick(sizes),
      material,
    })),
  };
}

function stepArea({ steps }: SizingResult, kind: "sum" | "assumed"): number | undefined {
  return steps.find((step): step is Extract<Step, { kind: typeof kind }> => step.kind === kind)?.area;
}

function byRating(dice: Dice, codes: readonly Code[], keep: ReturnType<typeof keeper>): Drawn {
  const role = dice.pick(rolesByRating);
  const code = dice.pick(codes);
  const material = dice.pick(materials);
  const amperes = dice.between(1, largestRating(code));
  const input = plainly(role, { code, material, amperes });
  const path = keep([role.id, codes.indexOf(code), material].join(), () =>
    prepare(role, { code, conductor: { material } }),
  );
  return {
    role: role.id,
    input,
    full: (size(role, input) as SizingResult).requiredArea,
    prepared: path.requiredArea(amperes),
  };
}
