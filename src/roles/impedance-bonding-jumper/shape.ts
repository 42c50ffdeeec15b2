import * as v from "valibot";
import { conductorSize } from "../../conductor/shape.js";
import { code } from "../../edition/shape.js";
import { says } from "../../input/define.js";
import { wantedWire } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

export const impedanceJumperAtImpedance = v.pipe(
  v.strictObject({
    code,
    electrodeConductorAt: v.pipe(
      v.literal("impedance"),
      says("The grounding electrode conductor is connected at the impedance."),
    ),
    supply: v.pipe(supply, says("Ungrounded conductors of the service or of the derived system.")),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
  }),
  says("The jumper of an impedance-grounded system whose electrode conductor is connected at the impedance."),
);

export const impedanceJumperAtDisconnect = v.pipe(
  v.strictObject({
    code,
    electrodeConductorAt: v.pipe(
      v.literal("first-disconnect"),
      says("The grounding electrode conductor is connected at the first disconnect."),
    ),
    impedanceConductor: v.pipe(
      conductorSize,
      says("Size of the conductor from the neutral point to the impedance."),
    ),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
  }),
  says(
    "The jumper of an impedance-grounded system whose electrode conductor is connected at the first disconnect.",
  ),
);

export const impedanceBondingJumperInput = v.pipe(
  v.variant("electrodeConductorAt", [impedanceJumperAtImpedance, impedanceJumperAtDisconnect]),
  says("A jumper from the equipment grounding conductors of an impedance-grounded system to the impedance."),
);
