import * as v from "valibot";
import { temperatureColumn } from "../ampacity/shape.js";
import { conductorSize, material } from "../conductor/shape.js";
import { electrodeKinds } from "../edition/electrode-kinds.js";
import { code } from "../edition/shape.js";
import { byHand, flag, notNegative, positive, says } from "../input/define.js";
import { supply } from "../supply/shape.js";

export const amperes = (what: string) => v.pipe(positive("amperes"), says(what));

export const wantedWire = v.pipe(
  v.strictObject({ material }),
  says("The conductor to be sized, of which the material is chosen."),
);

export const wantedConductor = v.pipe(
  v.strictObject({
    material,
    form: v.optional(
      v.pipe(v.picklist(["wire", "bus"]), says("A wire by default; a bus gets an area instead of a size.")),
    ),
  }),
  says("The conductor to be sized, where it may be a bus."),
);

export const systemKind = v.pipe(
  v.picklist(["service", "separately-derived"]),
  says("What kind of system a conductor belongs to."),
);

export const scope = v.pipe(
  v.picklist(["raceway", "all"]),
  says(
    "Whether it serves one of several raceways, by the conductors in that raceway, or all that there is; all by default.",
  ),
);

export const bySupply = {
  code,
  supply: v.pipe(supply, says("The ungrounded conductors by which the conductor is sized.")),
  conductor: v.pipe(wantedConductor, says("The conductor to be sized.")),
  temperature: v.optional(
    v.pipe(
      temperatureColumn,
      says("Temperature column in which conductors of another material are matched; 75 C by default."),
    ),
  ),
};

export const plainElectrode = v.pipe(
  v.strictObject({
    kind: v.pipe(
      v.picklist(electrodeKinds.filter((kind) => kind !== "ring")),
      says("Kind of electrode (250.52)."),
    ),
  }),
  says("A grounding electrode without a size of its own that counts (250.52)."),
);

export const ringElectrode = v.pipe(
  v.strictObject({
    kind: v.pipe(v.literal("ring"), says("A ground ring.")),
    conductor: v.pipe(conductorSize, says("Size of the ring's bare copper conductor, at least 2 AWG.")),
  }),
  says("A ground ring, whose own conductor counts."),
);

export const electrode = v.pipe(
  v.variant("kind", [plainElectrode, ringElectrode]),
  says("A grounding electrode."),
);

export const ownDevice = v.pipe(
  v.strictObject({
    amperes: amperes(
      "Rating of the device in amperes. Of a motor circuit give `motor` instead: neither its full-load current nor its overloads decide.",
    ),
  }),
  says("The device that protects the circuit."),
);

export const inverseTimeMotorDevice = v.pipe(
  v.strictObject({
    kind: v.pipe(v.literal("inverse-time-or-fuse"), says("An inverse-time breaker or fuses.")),
    deviceAmperes: amperes(
      "Rating in amperes of the branch-circuit short-circuit and ground-fault device, never the full-load current of the motor.",
    ),
  }),
  says(
    "Fuses or an inverse-time breaker as branch-circuit short-circuit and ground-fault device; overloads do not count.",
  ),
);

export const instantaneousTripMotorDevice = v.pipe(
  v.strictObject({
    kind: v.pipe(
      v.literal("instantaneous-trip"),
      says("An instantaneous-trip breaker or motor short-circuit protector."),
    ),
    dualElementFuseAmperes: amperes(
      "Rating in amperes of the largest dual-element time-delay fuse that is permitted for the motor.",
    ),
  }),
  says(
    "An instantaneous-trip breaker or a motor short-circuit protector: what counts is the largest dual-element time-delay fuse that 430.52(C)(1) Exception No. 1 permits for the motor, which the caller gives.",
  ),
);

export const motorDevice = v.pipe(
  v.strictObject({
    motor: v.pipe(
      v.variant("kind", [inverseTimeMotorDevice, instantaneousTripMotorDevice]),
      says("The short-circuit device of the motor circuit."),
    ),
  }),
  says("A motor circuit, whose short-circuit device is larger than its conductors' ampacity (250.122(D))."),
);

export const feederDevice = v.pipe(
  v.strictObject({ aheadOfFeeder: v.pipe(ownDevice, says("The device ahead of the feeder.")) }),
  says("A tap: what counts is the device ahead of the feeder, not one at the end of the tap (250.122(G))."),
);

export const circuitDevice = v.pipe(
  v.union([ownDevice, motorDevice, feederDevice]),
  says(
    "The overcurrent device that decides, with its rating in amperes. It need not be a standard rating; one between two rows of the table takes the next.",
  ),
);

export const increaseReason = v.pipe(
  v.picklist(["voltage-drop", "temperature-or-number", "other"]),
  says("Why ungrounded conductors were increased."),
);

export const increase = v.pipe(
  v.strictObject({
    conductors: v.pipe(
      supply,
      says(
        "The baseline, of the material that is installed. Which conductors it is differs between editions: through 2014 those before the increase; 2017 the smallest with sufficient ampacity for the installation; from 2020 those that temperature and the number of conductors require.",
      ),
    ),
    reason: increaseReason,
  }),
  says("What the ungrounded conductors would be without the increase."),
);

export const protectedCircuit = v.pipe(
  v.strictObject({
    device: circuitDevice,
    conductors: v.optional(
      v.pipe(
        supply,
        says(
          "Its ungrounded conductors as installed, every set of a parallel run; of a tap, the tap conductors. Needed for the limit at the circuit conductors and for an increase; without them neither is applied.",
        ),
      ),
    ),
    increasedFrom: v.optional(
      v.pipe(
        increase,
        says(
          "Without it no increase is counted. Where the installed conductors are the baseline, give them here too.",
        ),
      ),
    ),
  }),
  says("A circuit that the conductor serves."),
  byHand({ read: ["readCircuit", "rules/protected-circuit"] }),
);

export const neutralLoad = v.pipe(
  v.strictObject({
    amperes: v.pipe(
      notNegative("amperes"),
      says(
        "Amperes of this conductor (its share, where several run in parallel); zero if it carries no load.",
      ),
    ),
    circuitAmperes: amperes(
      "Amperes of the circuit, the rating of its device, which decide the temperature of its terminations, 60 C through 100 A and 75 C above, and the smallest conductor that it may have (240.4(D)).",
    ),
    listedFor75: v.optional(
      v.pipe(
        flag("whether the terminations are listed for 75 C"),
        says(
          "Whether the terminations of a circuit of 100 A or less are listed for 75 C; they are not by default.",
        ),
      ),
    ),
  }),
  says("The load that one grounded conductor carries."),
);
