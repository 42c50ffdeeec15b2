import * as v from "valibot";
import { conductorSize } from "../conductor/shape.js";
import { withstandFacts } from "../edition/tables/short-time-withstand.generated.js";
import { between, byHand, says } from "../input/define.js";

const { limits, metals } = withstandFacts;
const highestFinal = metals.copper.highestFinal;
const mostLetThrough = limits.mostAmperes * limits.mostAmperes * limits.mostSeconds;
/** Amperes or ampere-squared seconds: below that a ratio would be beyond numbers. */
const least = 1e-9;

const metal = v.pipe(
  v.picklist(["copper", "aluminum"]),
  says("Copper or aluminum; no constants are known for copper-clad aluminum."),
  byHand({ type: ["ConductorColumn", "conductor/index"] }),
);

export const withstandConductorBySize = v.pipe(
  v.strictObject({
    size: v.pipe(conductorSize, says("Trade size of the conductor.")),
    material: metal,
  }),
  says("A conductor by its trade size."),
);

export const withstandConductorByArea = v.pipe(
  v.strictObject({
    areaCircularMils: v.pipe(
      between("circular mils", 1, limits.mostArea, "check the unit"),
      v.integer(),
      says("Whole circular mils of metal."),
    ),
    material: metal,
  }),
  says("A conductor by its area, such as a bus bar."),
);

const apart =
  "the final temperature lies at least one degree above the initial one, and not above the melting point";

export const withstandTemperatures = v.pipe(
  v.strictObject({
    initial: v.pipe(
      between("degrees Celsius", limits.lowestInitial, highestFinal - limits.leastRise, apart),
      says("When the fault begins."),
    ),
    final: v.pipe(
      between("degrees Celsius", limits.lowestInitial + limits.leastRise, highestFinal, apart),
      says("What the insulation, the connection or the metal may reach."),
    ),
  }),
  says("Temperatures of the conductor in degrees Celsius. Neither has a default: both decide."),
);

export const withstandFault = v.pipe(
  v.strictObject({
    amperes: v.pipe(
      between("amperes", least, limits.mostAmperes, "check the unit"),
      says("Symmetrical rms amperes."),
    ),
    seconds: v.pipe(
      between(
        "seconds",
        limits.leastSeconds,
        limits.mostSeconds,
        "below that the asymmetry of the current decides: give the device's stated letThrough instead; above it the conductor is not adiabatic",
      ),
      says("Seconds until the device has cleared."),
    ),
  }),
  says(`A fault of ${limits.leastSeconds} s to ${limits.mostSeconds} s.`),
);

export const withstandLetThrough = v.pipe(
  v.strictObject({
    letThrough: v.pipe(
      between("ampere-squared seconds", least, mostLetThrough, "check the unit"),
      says("Ampere-squared seconds."),
    ),
  }),
  says(
    "What a device lets through, as its maker states it for the available current. The only way below 0.1 s.",
  ),
);

export const shortTimeWithstandInput = v.pipe(
  v.strictObject({
    conductor: v.pipe(v.union([withstandConductorBySize, withstandConductorByArea]), says("The conductor.")),
    temperatures: v.pipe(withstandTemperatures, says("Temperatures, in degrees Celsius.")),
    fault: v.pipe(
      v.union([withstandFault, withstandLetThrough]),
      says("The fault current and how long it flows, or what a device lets through."),
    ),
  }),
  says("A conductor to be held against a fault."),
);
