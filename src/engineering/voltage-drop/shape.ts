import * as v from "valibot";
import { conductorSize } from "../../conductor/shape.js";
import { editionYear } from "../../edition/shape.js";
import { between, count, flag, says } from "../../input/define.js";

const readTable9 = v.pipe(
  v.strictObject({
    from: v.pipe(v.literal("table-9"), says("Alternating-current resistance and reactance in conduit.")),
    conduit: v.pipe(
      v.picklist(["pvc", "aluminum", "steel"]),
      says("What the conduit is made of; the metal around the conductors adds to both."),
    ),
    powerFactor: v.pipe(
      between("power factor", 0.01, 1, "give it as a part of one, lagging"),
      says("Power factor of the load, lagging, as a part of one."),
    ),
  }),
  says("Impedance of three single conductors in conduit at 75 C and 60 Hz (Chapter 9 Table 9)."),
);

const readTable8 = v.pipe(
  v.strictObject({
    from: v.pipe(v.literal("table-8"), says("Direct-current resistance.")),
    solid: v.optional(
      v.pipe(
        flag("whether they are solid"),
        says("Whether the conductors are solid, which the table has through 8 AWG."),
      ),
    ),
    coated: v.optional(
      v.pipe(flag("whether the copper is coated"), says("Whether the copper is coated, for example tinned.")),
    ),
    celsius: v.optional(
      v.pipe(
        between("degrees Celsius", -50, 250, "give the temperature of the conductor"),
        says("Temperature of the conductor; 75 C, that of the table, by default."),
      ),
    ),
  }),
  says(
    "Direct-current resistance (Chapter 9 Table 8); of an alternating current it leaves out reactance and skin effect.",
  ),
);

export const dropImpedance = v.pipe(
  v.variant("from", [readTable9, readTable8]),
  says("Which table gives the impedance. There is no default: both are in use and they differ."),
);

export const dropConductors = v.pipe(
  v.strictObject({
    sets: v.optional(v.pipe(count("sets"), says("Sets in parallel; one by default."))),
    size: conductorSize,
    material: v.pipe(
      v.picklist(["copper", "aluminum"]),
      says("Copper or aluminum; neither table has copper-clad aluminum."),
    ),
  }),
  says("The ungrounded conductors that ampacity requires, the baseline of any increase."),
);

export const voltageDropQuestion = v.pipe(
  v.strictObject({
    edition: v.pipe(editionYear, says("Edition whose tables are used.")),
    current: v.pipe(
      v.picklist(["three-phase", "single-phase", "direct"]),
      says("How the load is connected: balanced over three phases, or by two conductors."),
    ),
    volts: v.pipe(
      between("volts", 1, 2000, "give the voltage of the circuit"),
      says("Voltage of the circuit: between phases of three, else between the two conductors."),
    ),
    amperes: v.pipe(between("amperes", 0.001, 100_000, "check the unit"), says("Amperes of the load.")),
    feet: v.pipe(
      between("feet", 0.1, 100_000, "check the unit"),
      says("Length of the run in feet, one way."),
    ),
    conductors: dropConductors,
    impedance: dropImpedance,
    permittedPercent: v.optional(
      v.pipe(
        between("percent", 0.01, 50, "give it in percent of the voltage"),
        says(
          "Drop that the design permits, in percent of the voltage. The code has informational notes on it, no rule.",
        ),
      ),
    ),
    mostSets: v.optional(
      v.pipe(
        between("sets", 1, 100, "there are no more than 100"),
        v.integer(),
        says(
          "Up to how many sets the conductors may be divided for the permitted drop; those of the conductors by default.",
        ),
      ),
    ),
  }),
  says("A run whose voltage drop is to be found."),
);
