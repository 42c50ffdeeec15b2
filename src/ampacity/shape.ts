import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { editionYear } from "../edition/shape.js";
import { between, called, count, flag, listOf, notNegative, positive, says } from "../input/define.js";
import { insulationTypes } from "./insulation-type.js";

export const temperatureColumn = v.pipe(
  v.picklist([60, 75, 90]),
  called("temperature column in degrees Celsius"),
  says("Temperature column of the ampacity table, in degrees Celsius."),
);

const ofEdition = { edition: v.pipe(editionYear, says("Edition whose ampacity table is used.")) };

const ofColumn = {
  ...ofEdition,
  material: v.pipe(material, says("Material; copper-clad aluminum shares the aluminum columns.")),
  temperature: temperatureColumn,
};

export const tableAmpacityQuestion = v.pipe(
  v.strictObject({ ...ofColumn, size: conductorSize }),
  says("A cell of the ampacity table."),
);

export const conductorQuestion = v.pipe(
  v.strictObject({ ...ofColumn, amperes: v.pipe(positive("amperes"), says("Amperes to carry.")) }),
  says("A current for which a conductor is to be found."),
);

export const insulationType = v.pipe(
  v.picklist(insulationTypes),
  says("Letters of the insulation. Of a conductor with two marks, the one that holds in the place."),
);

export const location = v.pipe(
  v.picklist(["dry", "damp", "wet"]),
  says("Location; the inside of a raceway in a wet place, or in the ground, is wet."),
);

const coldest = "check the temperature; no place is colder";

export const celsiusTemperature = v.pipe(
  v.strictObject({
    celsius: v.pipe(between("degrees Celsius", -60, 150, coldest), says("Degrees Celsius.")),
  }),
  says("A temperature in degrees Celsius."),
);

export const fahrenheitTemperature = v.pipe(
  v.strictObject({
    fahrenheit: v.pipe(between("degrees Fahrenheit", -76, 302, coldest), says("Degrees Fahrenheit.")),
  }),
  says("A temperature in degrees Fahrenheit."),
);

export const temperature = v.pipe(
  v.union([celsiusTemperature, fahrenheitTemperature]),
  says("A temperature, in the unit in which it is known."),
);

/** What surrounds conductors, whatever else is told of their place. */
export const surroundings = {
  location,
  ambient: v.optional(
    v.pipe(temperature, says("Ambient temperature; 30 C, that of the ampacity table, by default.")),
  ),
  method: v.optional(
    v.pipe(
      v.picklist(["table", "equation"]),
      says(
        "Whether the ambient temperature is corrected for by the table, as by default, or by the equation.",
      ),
    ),
  ),
  inchesAboveRoof: v.optional(
    v.pipe(
      notNegative("inches"),
      says(
        "Inches from the roof to the underside, in direct sunlight; left out where there is no roof below.",
      ),
    ),
  ),
};

export const placeOfUse = v.pipe(
  v.strictObject({
    ...surroundings,
    currentCarrying: v.optional(
      v.pipe(
        count("current-carrying conductors"),
        says(
          "Current-carrying conductors in the raceway or cable, spares and every parallel set counted; not more than three by default.",
        ),
      ),
    ),
    racewayInches: v.optional(
      v.pipe(positive("inches"), says("Length of the raceway in inches; longer than 24 in. by default.")),
    ),
  }),
  says("Where a conductor lies."),
);

export const markedTerminations = v.pipe(
  v.strictObject({
    marked: v.pipe(
      temperatureColumn,
      says(
        "Temperature in degrees Celsius for which the equipment at both ends is listed and marked, the lower of the two.",
      ),
    ),
  }),
  says("Terminations that are listed and marked for a temperature."),
);

export const unmarkedTerminations = v.pipe(
  v.strictObject({
    circuitAmperes: v.pipe(
      positive("amperes"),
      says("Rating of the circuit in amperes: through 100 A terminations are used at 60 C, above at 75 C."),
    ),
  }),
  says("Terminations without a mark that counts, of a circuit of so many amperes."),
);

export const terminations = v.pipe(
  v.union([markedTerminations, unmarkedTerminations]),
  says("The terminations of a conductor."),
);

const conditions = {
  place: placeOfUse,
  terminations,
};

export const insulatedConductor = v.pipe(
  v.strictObject({ size: conductorSize, material, insulation: insulationType }),
  says("A conductor with its insulation."),
);

export const ampacityQuestion = v.pipe(
  v.strictObject({ ...ofEdition, conductor: insulatedConductor, ...conditions }),
  says("A conductor in its place, whose ampacity is to be found."),
);

export const conditionsOfUse = v.pipe(
  v.strictObject({ insulation: insulationType, ...conditions }),
  says(
    "What the ampacity of a conductor of any size goes by: its insulation, its place and its terminations.",
  ),
);

export const dwellingQuestion = v.pipe(
  v.strictObject({
    ...ofEdition,
    amperes: v.pipe(
      between(
        "amperes",
        100,
        400,
        "the allowance for dwellings holds from 100 through 400 A; size others by their load",
      ),
      says("Rating of the service or feeder in amperes."),
    ),
    material: v.pipe(material, says("Material of the conductors.")),
    system: v.pipe(
      v.picklist(["120/240-three-wire", "208Y/120-two-phases"]),
      says("What supplies the dwelling: single-phase three-wire, or two phases and the neutral of a wye."),
    ),
    conditions: v.optional(
      v.pipe(conditionsOfUse, says("Conditions of use; those of the ampacity table, and 75 C, by default.")),
    ),
  }),
  says("The ungrounded conductors of a service or feeder that carries the whole load of one dwelling."),
);

export const continuousLoadQuestion = v.pipe(
  v.strictObject({
    ...ofEdition,
    of: v.pipe(v.picklist(["service", "feeder", "branch-circuit"]), says("What the conductors are part of.")),
    continuous: v.pipe(notNegative("amperes"), says("Continuous load in amperes: three hours and more.")),
    other: v.pipe(notNegative("amperes"), says("Other load in amperes.")),
    listedForAll: v.optional(
      v.pipe(
        flag("whether the assembly with its devices is listed for 100 percent"),
        says(
          "Whether the assembly with its overcurrent devices is listed to run at 100 percent of its rating.",
        ),
      ),
    ),
  }),
  says("A load of which a part is continuous."),
);

export const circuitInRaceway = v.pipe(
  v.strictObject({
    kind: v.pipe(
      v.picklist([
        "two-wire",
        "three-wire-single-phase",
        "two-phases-and-neutral-of-wye",
        "three-wire-three-phase",
        "four-wire-wye",
      ]),
      says(
        "Conductors of the circuit, those for grounding and bonding not counted; each set of a parallel circuit is one.",
      ),
    ),
    count: v.optional(v.pipe(count("circuits"), says("How many alike; one by default."))),
    mostlyNonlinear: v.optional(
      v.pipe(
        flag("whether most of the load is nonlinear"),
        says(
          "Whether the major part of the load is nonlinear, so that the neutral carries harmonics; not by default.",
        ),
      ),
    ),
  }),
  says("Alike circuits in a raceway or cable."),
);

export const countQuestion = v.pipe(
  v.strictObject({
    ...ofEdition,
    circuits: v.pipe(listOf(circuitInRaceway), says("The circuits in the raceway or cable.")),
    spares: v.optional(v.pipe(count("spare conductors"), says("Spare conductors; none by default."))),
  }),
  says("What lies in one raceway or cable."),
);

export const protectedConductors = v.pipe(
  v.strictObject({
    size: conductorSize,
    material,
    sets: v.pipe(count("sets"), says("Conductors in parallel per phase; one if there is no other.")),
    amperes: v.pipe(positive("amperes"), says("Ampacity of one of them in its place, in amperes.")),
  }),
  says("Conductors that a device is to protect."),
);

export const deviceQuestion = v.pipe(
  v.strictObject({
    ...ofEdition,
    conductors: protectedConductors,
    serves: v.pipe(
      v.picklist([
        "service-or-feeder",
        "branch-circuit",
        "branch-circuit-of-several-receptacles",
        "tap",
        "transformer-secondary",
      ]),
      says(
        "What the conductors are; a branch circuit of several receptacles supplies portable loads by cord and plug.",
      ),
    ),
    device: v.pipe(v.picklist(["circuit-breaker", "fuse"]), says("Kind of the overcurrent device.")),
    rating: v.optional(
      v.pipe(
        positive("amperes"),
        says("Rating in amperes that is to be judged; the largest permitted alone by default."),
      ),
    ),
  }),
  says("Conductors, and the device that may protect them."),
);
