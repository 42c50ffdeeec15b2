import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { flag, says } from "../../input/define.js";
import { amperes, wantedWire } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

const conductor = v.pipe(wantedWire, says("The conductor to be sized."));

export const pipingOfService = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(v.literal("service"), says("Piping in the area of a service.")),
    supply: v.pipe(supply, says("Ungrounded conductors of the service.")),
    conductor,
  }),
  says("Metal water piping in the area of a service."),
);

export const pipingOfDerivedSystem = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(
      v.literal("separately-derived"),
      says("Piping in the area of a separately derived system."),
    ),
    supply: v.pipe(supply, says("Ungrounded conductors of the derived system.")),
    conductor,
    isElectrode: v.optional(
      v.pipe(
        flag("whether the piping is itself the electrode"),
        says(
          "Whether the piping is itself the electrode of the derived system, which then needs no further jumper to it.",
        ),
      ),
    ),
  }),
  says("Metal water piping in the area of a separately derived system."),
);

export const pipingOfBuilding = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(v.literal("building"), says("Piping in a building or structure that a feeder supplies.")),
    supply: v.pipe(supply, says("Ungrounded conductors of the feeder.")),
    deviceAmperes: v.optional(
      amperes("Rating in amperes of the device that protects the feeder; it decides from 2020."),
    ),
    conductor,
  }),
  says("Metal water piping in a building or structure that a feeder supplies."),
);

export const pipingOfOccupancy = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(
      v.literal("occupancy"),
      says("Piping of one occupancy, isolated from that of the others."),
    ),
    deviceAmperes: amperes("Rating in amperes of the device that supplies the occupancy."),
    conductor,
  }),
  says("Metal water piping of one occupancy, isolated from that of the others."),
);

export const waterPipingBondingJumperInput = v.pipe(
  v.variant("system", [pipingOfService, pipingOfDerivedSystem, pipingOfBuilding, pipingOfOccupancy]),
  says("A bonding jumper to metal water piping."),
);
