import { editionYears, type Installation } from "bondmil";
import { type Dice, several } from "../dice.js";
import type { Intersystem, Piping, Structure } from "../parts.js";

/** Piping of every kind, of owners that have conductors to go by. */
export function drawPiping(dice: Dice, installation: Installation): Piping[] {
  const owners = ownersOf(installation);
  return several(dice.pick([0, 0, 1, 2]), (n): Piping => {
    const id = `W${n}`;
    const kind = dice.pick(["water", "water", "water-of-occupancy", "other"] as const);
    const deviceAmperes = dice.pick([15, 100, 400, 1600]);
    if (kind !== "water") return { id, kind, deviceAmperes };
    const removable = [{ id: `${id}F`, kind: "fitting" as const }];
    return { id, kind, ...belonging(dice, owners), ...(dice.chance(30) && { removable }) };
  });
}

/** Frames of buildings, of owners that have conductors to go by. */
export function drawStructures(dice: Dice, installation: Installation): Structure[] {
  const owners = ownersOf(installation);
  return several(dice.pick([0, 0, 1]), (n) => ({ id: `M${n}`, ...belonging(dice, owners) }));
}

interface Owner {
  readonly id: string;
  /** Whether its metal may be its electrode: it needs one. */
  readonly hasElectrode: boolean;
}

function belonging(dice: Dice, owners: readonly Owner[]): Pick<Structure, "of" | "isElectrode"> {
  const first = dice.pick(owners);
  const second = dice.pick(owners);
  const chosen = first !== second && dice.chance(50) ? [first, second] : [first];
  const of = chosen.length === 1 ? first.id : chosen.map(({ id }) => id);
  const hasElectrode = chosen.every((one) => one.hasElectrode);
  return { of, ...(dice.chance(40) && { isElectrode: hasElectrode && dice.chance(50) }) };
}

function ownersOf({
  services = [],
  derivedSystems = [],
  buildings = [],
  circuits = [],
}: Installation): readonly Owner[] {
  const supplied = new Set(circuits.filter((one) => one.conductors !== undefined).map(({ id }) => id));
  return [
    ...services.map(({ id }) => ({ id, hasElectrode: true })),
    ...derivedSystems.map(({ id, source }) => ({ id, hasElectrode: source.controlTransformer !== true })),
    ...buildings
      .filter(({ circuit, disconnect }) => disconnect !== undefined || supplied.has(circuit ?? ""))
      .map(({ id }) => ({ id, hasElectrode: true })),
  ];
}

/** Terminations for other systems, with a busbar where the edition knows one. */
export function drawIntersystem(
  dice: Dice,
  { code, services = [], buildings = [] }: Installation,
): Intersystem[] {
  const hasBusbar = editionYears.indexOf(code.year) >= editionYears.indexOf("2017");
  const places = [
    ...services.flatMap(({ id, boxes = [], disconnects }) => [
      id,
      ...[...boxes, ...disconnects].map((one) => one.id),
    ]),
    ...buildings.map(({ id }) => id),
  ];
  const count = places.length === 0 ? 0 : dice.pick([0, 0, 0, 1]);
  return several(count, (n) => {
    const termination = dice.pick([
      "on-enclosure",
      "apart",
      ...(hasBusbar ? (["busbar"] as const) : []),
    ] as const);
    return {
      id: `I${n}`,
      at: dice.pick(places),
      termination,
      ...(termination === "busbar" &&
        dice.chance(50) && { electrodeConductorOnBusbar: dice.pick(["4 AWG", "3/0 AWG"] as const) }),
      ...(dice.chance(30) && { communicationsUnlikely: dice.chance(50) }),
    };
  });
}
