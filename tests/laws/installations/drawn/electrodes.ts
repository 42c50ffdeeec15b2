import type { Installation } from "bondmil";
import { type Dice, several } from "../dice.js";
import type { Electrode } from "../parts.js";

const kinds = [
  "rod",
  "pipe",
  "plate",
  "concrete-encased",
  "ring",
  "metal-water-pipe",
  "structural-metal",
  "other",
] as const;

/** Electrodes that hang on the places or on each other, none to four. */
export function drawElectrodes(dice: Dice, prefix: string, places: readonly string[]): Electrode[] {
  const count = dice.chance(15) ? 0 : dice.between(1, 4);
  return several(count, (i) => {
    const before = several(i, (n) => `${prefix}${n}`);
    return drawElectrode(
      dice,
      `${prefix}${i}`,
      dice.pick(before.length > 0 && dice.chance(40) ? before : places),
    );
  });
}

/** One electrode that hangs on a place. */
export function drawElectrode(dice: Dice, id: string, from: string): Electrode {
  const kind = dice.pick(kinds);
  return {
    id,
    kind,
    from,
    ...(kind === "ring" && {
      ringConductor: dice.pick(["2 AWG", "1/0 AWG", "4/0 AWG", "500 kcmil"] as const),
    }),
    ...withRoute(dice),
    ...(driven.includes(kind) && dice.chance(30) && { ohms: dice.pick([5, 25, 25.5, 100]) }),
    ...(kind === "metal-water-pipe" &&
      dice.chance(40) && { removable: [{ id: `${id}M`, kind: dice.pick(["meter", "filter"] as const) }] }),
  };
}

const driven: readonly Electrode["kind"][] = ["rod", "pipe", "plate"];

/** A ferrous raceway, or how the conductor runs otherwise. */
function withRoute(dice: Dice): Pick<Electrode, "ferrousRaceway" | "route"> {
  const isFerrous = dice.chance(18);
  return {
    ...(dice.chance(30) && { ferrousRaceway: isFerrous }),
    ...(!isFerrous && dice.chance(20) && { route: drawRoute(dice) }),
  };
}

function drawRoute(dice: Dice): NonNullable<Electrode["route"]> {
  return {
    ...(dice.chance(60) && { cover: dice.pick(["bare", "covered", "insulated"] as const) }),
    ...(dice.chance(40) && {
      against: [dice.pick(["masonry", "concrete", "earth", "corrosive-surroundings"] as const)],
    }),
    ...(dice.chance(40) && {
      outdoorEnd: {
        inchesAboveEarth: dice.pick([2, 17.5, 18, 30]),
        ...(dice.chance(40) && { inListedEnclosure: dice.chance(60) }),
      },
    }),
    ...(dice.chance(60) && {
      protection: dice.pick(["none", "rigid-metal", "pvc-schedule-40", "pvc-schedule-80"] as const),
    }),
    ...(dice.chance(30) && { exposedToDamage: dice.chance(50) }),
  };
}

/** Electrodes that are there and not connected. */
export function drawUnused(
  dice: Dice,
  prefix: string,
): NonNullable<NonNullable<Installation["buildings"]>[number]["electrodesNotConnected"]> {
  return several(dice.between(1, 2), (i) => {
    const kind = dice.pick(["concrete-encased", "structural-metal", "rod"] as const);
    const isHidden = kind === "concrete-encased" && dice.chance(50);
    return { id: `${prefix}X${i}`, kind, ...(isHidden && { steelNotAccessible: true }) };
  });
}
