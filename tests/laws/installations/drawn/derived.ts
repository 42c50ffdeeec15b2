import { type Dice, several } from "../dice.js";
import type { Derived } from "../parts.js";
import { drawElectrodes } from "./electrodes.js";
import { drawGrounding } from "./groundings.js";
import { drawRun } from "./runs.js";

/** The name of the common electrode conductor that derived systems tap. */
export const commonOfDerived = "XC";

/** A separately derived system with every place of its jumper. */
export function drawDerived(dice: Dice, n: number): Derived {
  const { phases, ...grounded } = drawGrounding(dice);
  const id = `X${n}`;
  const source = `${id}T`;
  const kind = dice.pick(["transformer", "transformer", "generator", "other"] as const);
  const disconnects = several(dice.pick([1, 1, 2, 3]), (i) => ({
    id: `${id}P${i}`,
    amperes: dice.pick([60, 200, 800]),
  }));
  const runs = disconnects.flatMap(({ id: to }, i) =>
    several(dice.chance(12) ? 2 : 1, (twin) =>
      drawRun(
        dice,
        { id: `${id}R${i}${"ab"[twin]}`, from: source, to },
        { grounding: grounded.grounding, phases, fittings: false },
      ),
    ),
  );
  const hasCommon = dice.chance(30);
  const places = [
    source,
    source,
    ...disconnects.map((one) => one.id),
    ...(hasCommon ? [commonOfDerived] : []),
  ];
  const electrodes = drawElectrodes(dice, `${id}E`, places);
  return {
    id,
    source: {
      id: source,
      kind,
      outdoors: dice.chance(30),
      ...(kind === "transformer" && dice.chance(15) && { controlTransformer: dice.chance(60) }),
    },
    ...grounded,
    runs,
    disconnects,
    jumperAt: dice.pick(["source", "disconnects", "both-ends", "compare"] as const),
    ...(hasCommon && { commonElectrodeConductor: { id: commonOfDerived } }),
    ...((electrodes.length > 0 || dice.chance(20)) && { electrodes }),
  };
}
