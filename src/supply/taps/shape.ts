import * as v from "valibot";
import { editionYear } from "../../edition/shape.js";
import { between, called, flag, listOf, notNegative, positive, says } from "../../input/define.js";

const edition = v.pipe(editionYear, says("Edition whose rules are used."));
const load = v.pipe(
  notNegative("amperes"),
  says("Calculated load that the conductors supply, in amperes; 0 where it is not known."),
);
const place = v.pipe(
  v.picklist(["inside", "outside"]),
  says("Outside where the conductors run outdoors except at the point of load termination."),
);
const leavesEnclosure = v.optional(
  v.pipe(
    flag("whether the conductors leave the enclosure or vault in which they begin"),
    says(
      "Whether the conductors are installed in the field and leave the enclosure or vault in which they begin; they do by default.",
    ),
  ),
);

export const oneDevice = v.pipe(
  v.strictObject({
    device: v.pipe(positive("amperes"), says("Amperes of the device.")),
  }),
  says("One circuit breaker or one set of fuses at the end."),
);

export const severalDevices = v.pipe(
  v.strictObject({
    devices: v.pipe(
      listOf(v.pipe(positive("amperes"), says("Amperes of one device.")), 100),
      says("Amperes of each device."),
    ),
    equipment: v.pipe(
      positive("amperes"),
      says("Rating of the equipment that holds the devices, in amperes, such as the bus of a panelboard."),
    ),
  }),
  says("Several devices at the end, in one piece of equipment."),
);

export const conductorEnding = v.pipe(
  v.union([oneDevice, severalDevices]),
  says("What the conductors end in: one device, or equipment with several."),
);

export const highBay = v.pipe(
  v.strictObject({
    wallFeet: v.pipe(positive("feet"), says("Height of the building at its walls, in feet.")),
    horizontalFeet: v.pipe(notNegative("feet"), says("How much of the tap runs horizontally, in feet.")),
    aboveFloorFeet: v.pipe(
      positive("feet"),
      says("Height above the floor at which the tap is made, in feet."),
    ),
    qualified: v.pipe(
      flag("whether only qualified persons service the systems"),
      says("Whether maintenance and supervision ensure that only qualified persons service the systems."),
    ),
    unspliced: v.pipe(
      flag("whether the tap is without splice and passes no wall, floor or ceiling"),
      says("Whether the tap has no splice and passes through no wall, floor or ceiling."),
    ),
  }),
  says("A manufacturing building with a high bay."),
);

export const tappedTransformer = v.pipe(
  v.strictObject({
    primaryVolts: v.pipe(between("volts", 1, 1_000_000), says("Volts of the primary, from line to line.")),
    secondaryVolts: v.pipe(
      between("volts", 1, 1_000_000),
      says("Volts of the secondary, from line to line."),
    ),
    secondaryFeet: v.pipe(
      notNegative("feet"),
      says("Length of the secondary conductors to their device, in feet."),
    ),
  }),
  says("The transformer that a tap supplies."),
);

export const feederTapQuestion = v.pipe(
  v.strictObject({
    edition,
    feederDevice: v.pipe(positive("amperes"), says("Amperes of the device that protects the feeder.")),
    feet: v.pipe(
      positive("feet"),
      says(
        "Length of the tap in feet, less any part of a transformer's primary that is protected at its ampacity.",
      ),
    ),
    place,
    endsIn: conductorEnding,
    load,
    leavesEnclosure,
    highBay: v.optional(highBay),
    transformer: v.optional(tappedTransformer),
  }),
  says("Conductors tapped to a feeder, and where they end."),
);

export const protectedTransformer = v.pipe(
  v.strictObject({
    kva: v.pipe(
      between("kilovolt-amperes", 0.001, 10_000_000),
      says("Apparent power in kilovolt-amperes, from 0.001 to 10,000,000."),
    ),
    primaryVolts: v.pipe(
      between("volts", 1, 1000, "the table for higher voltages is not here"),
      says("Volts of the primary, from line to line; through 1000."),
    ),
    secondaryVolts: v.pipe(
      between("volts", 1, 1000, "the table for higher voltages is not here"),
      says("Volts of the secondary, from line to line; through 1000."),
    ),
    phases: v.pipe(
      v.picklist([1, 3]),
      called("phases of the transformer"),
      says("Phases of the transformer."),
    ),
    windings: v.pipe(
      v.picklist(["two-wire-secondary", "delta-delta-three-wire", "other"]),
      says(
        "Whether the secondary is single-phase two-wire at one voltage, or delta-delta three-wire at one voltage; all others are other.",
      ),
    ),
  }),
  says(
    "A transformer: its nameplate, and the two connections whose secondary conductors the primary device may protect.",
  ),
);

export const secondaryConductors = v.pipe(
  v.strictObject({
    feet: v.pipe(positive("feet"), says("Length of the secondary conductors in feet.")),
    place,
    endsIn: v.optional(conductorEnding),
    load,
    leavesEnclosure,
    industrial: v.optional(
      v.pipe(
        flag("whether the installation is industrial and only qualified persons service the systems"),
        says(
          "Whether the installation is industrial and only qualified persons service the systems; not by default.",
        ),
      ),
    ),
  }),
  says(
    "The secondary conductors. Without endsIn they end in one device, the largest that the table permits.",
  ),
);

export const transformerQuestion = v.pipe(
  v.strictObject({
    edition,
    transformer: protectedTransformer,
    protection: v.pipe(
      v.picklist(["primary-only", "primary-and-secondary"]),
      says("Which sides have overcurrent protection for the transformer itself."),
    ),
    primaryDevice: v.optional(
      v.pipe(
        positive("amperes"),
        says("Amperes of the primary device; the largest that the table permits by default."),
      ),
    ),
    conductors: secondaryConductors,
    feederTap: v.optional(
      v.pipe(
        v.strictObject({
          feederDevice: v.pipe(positive("amperes"), says("Amperes of the device that protects the feeder.")),
          primaryFeet: v.pipe(
            notNegative("feet"),
            says("Length of the tap to the primary in feet, less any part protected at its ampacity."),
          ),
        }),
        says(
          "Given where a feeder tap supplies the transformer and its primary conductors are not protected at their ampacity.",
        ),
      ),
    ),
  }),
  says("A transformer whose devices and secondary conductors are to be found."),
);
