import { type Dice, several } from "../dice.js";
import type { Derived } from "../parts.js";
import { drawElectrodes } from "./electrodes.js";
import { drawGrounding } from "./groundings.js";
import { drawRun } from "./runs.js";
import { withSharedRaceway } from "./shared-raceways.js";
import { withSourceDevice } from "./sources.js";

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
  const isControl = kind === "transformer" && dice.chance(10);
  const system: Derived = {
    id,
    source: {
      id: source,
      kind,
      outdoors: dice.chance(30),
      ...(kind === "transformer" && dice.chance(10) && { controlTransformer: false }),
    },
    ...grounded,
    runs,
    disconnects,
    jumperAt: dice.pick(["source", "disconnects", "both-ends", "compare"] as const),
    ...(hasCommon && { commonElectrodeConductor: { id: commonOfDerived } }),
    ...((electrodes.length > 0 || dice.chance(20)) && { electrodes }),
  };
  return isControl ? asControl(system) : withSourceDevice(dice, withSharedRaceway(dice, system, false));
}

/** A control transformer with the one small circuit that its 1000 VA can feed. */
function asControl(system: Derived): Derived {
  const [first] = system.disconnects;
  const [run] = system.runs;
  if (first === undefined || run === undefined) return system;
  const { racewayJumpers: _, ...plain } = run;
  const gone = new Set(system.disconnects.slice(1).map(({ id }) => id));
  const electrodes = system.electrodes?.map((one) => (gone.has(one.from) ? { ...one, from: first.id } : one));
  return {
    ...system,
    source: { ...system.source, controlTransformer: true },
    runs: [
      {
        ...plain,
        raceways: { count: 1, kind: "nonmetallic" },
        supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
      },
    ],
    disconnects: [{ ...first, amperes: 20 }],
    ...(electrodes && { electrodes }),
  };
}
