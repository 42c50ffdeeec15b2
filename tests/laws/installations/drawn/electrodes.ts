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
    ...(dice.chance(30) && { ferrousRaceway: dice.chance(60) }),
  };
}
