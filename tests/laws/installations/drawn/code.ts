import {
  type Amendment,
  amend,
  type Code,
  conductorSizes,
  editionYears,
  electrodeKinds,
  InputError,
  type Installation,
  materials,
  roleIds,
} from "bondmil";
import readingTable from "../../../../tables/readings.json" with { type: "json" };
import type { Dice } from "../dice.js";

const allReadings = readingTable.readings.map(({ id, alternatives }) => ({
  id,
  alternatives: alternatives.map((one) => one.id),
}));

/** An edition with chosen readings, what is known of the place, and amendments that `amend` takes. */
export function drawCode(dice: Dice): Installation["code"] {
  const year = dice.pick(editionYears);
  const readings = Object.fromEntries(
    dice.chance(25)
      ? [0, 1].map(() => dice.pick(allReadings)).map((one) => [one.id, dice.pick(one.alternatives)])
      : [],
  );
  const hasReadings = Object.keys(readings).length > 0 || dice.chance(10);
  const before = {
    year,
    ...(hasReadings && { readings }),
    ...(dice.chance(20) && {
      circumstances: {
        ...(dice.chance(50) && { lengthFeet: 80 }),
        ...(dice.chance(50) && { location: "pier" }),
        ...(dice.chance(50) && { serviceAmperes: dice.pick([200, 1200]) }),
      },
    }),
  } as Code;
  const wanted = dice.chance(25) ? dice.between(1, 3) : 0;
  return Array.from({ length: wanted }).reduce<Code>(
    (so) => amended(dice, so),
    before,
  ) as unknown as Installation["code"];
}

/** A code with one more amendment, or as it was where the edition does not take it. */
function amended(dice: Dice, code: Code): Code {
  try {
    return amend(code, drawAmendment(dice));
  } catch (error) {
    if (error instanceof InputError) return code;
    throw error;
  }
}

/** An amendment of any kind, with and without a condition. */
function drawAmendment(dice: Dice): Amendment {
  const when = dice.pick([
    { lengthBelowFeet: 100 },
    { lengthFromFeet: 100 },
    { location: "pier" },
    { serviceFromAmperes: 400 },
    { serviceThroughAmperes: 400 },
  ]);
  return {
    ...drawOwn(dice),
    citation: { jurisdiction: "Example County", section: `Sec. ${dice.between(1, 99)}` },
    ...(dice.chance(40) && { when }),
  } as unknown as Amendment;
}

function drawOwn(dice: Dice): object {
  const role = dice.pick(roleIds);
  const kind = dice.pick(["cell", "floor", "basis", "reading", "material", "always-wire"] as const);
  switch (kind) {
    case "cell":
      return { kind, ...drawCell(dice) };
    case "floor":
      return {
        kind,
        role,
        copper: dice.pick(["8 AWG", "4 AWG", "2/0 AWG"]),
        ...(dice.chance(70) && { aluminum: dice.pick(["6 AWG", "2 AWG", "4/0 AWG"]) }),
      };
    case "basis": {
      const use = dice.pick(["no-increase", "no-electrode-ceiling", "equipment-grounding-table"]);
      const electrode =
        use === "no-electrode-ceiling" && dice.chance(50) ? dice.pick(electrodeKinds) : undefined;
      return { kind, role, use, ...(electrode && { electrode }) };
    }
    case "reading": {
      const { id, alternatives } = dice.pick(allReadings);
      return { kind, reading: id, alternative: dice.pick(alternatives) };
    }
    case "material":
      return {
        kind,
        role: dice.pick([role, "every-role"]),
        material: dice.pick(materials),
        ...(dice.chance(50) && { allowedFrom: "1/0 AWG" }),
      };
    case "always-wire":
      return { kind, role };
  }
}

function drawCell(dice: Dice): object {
  const table = dice.pick(["electrode-conductor", "bonding-conductor", "equipment-grounding"]);
  const rows: readonly (string | number)[] =
    table === "equipment-grounding" ? [15, 100, 200, 1200] : ["2 AWG", "3/0 AWG", "600 kcmil", "last"];
  const sizes = conductorSizes.filter((_, i) => i > 2 && i < 24);
  return { table, row: dice.pick(rows), column: dice.pick(["copper", "aluminum"]), size: dice.pick(sizes) };
}
