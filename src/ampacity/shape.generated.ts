// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import type { EditionYear } from "../edition/edition-year.js";
import type { Shape } from "../input/shapes.js";

/** Letters of the insulation. Of a conductor with two marks, the one that holds in the place. */
export type InsulationType =
  | "TW"
  | "THW"
  | "THW-2"
  | "THHW"
  | "THHN"
  | "THWN"
  | "THWN-2"
  | "XHH"
  | "XHHW"
  | "XHHW-2"
  | "RHH"
  | "RHW"
  | "RHW-2"
  | "USE"
  | "USE-2"
  | "UF"
  | "NM";

export const insulationTypeShape: Shape = {
  is: "words",
  of: [
    "TW",
    "THW",
    "THW-2",
    "THHW",
    "THHN",
    "THWN",
    "THWN-2",
    "XHH",
    "XHHW",
    "XHHW-2",
    "RHH",
    "RHW",
    "RHW-2",
    "USE",
    "USE-2",
    "UF",
    "NM",
  ],
};

/** A conductor with its insulation. */
export interface InsulatedConductor {
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Material of a conductor. */
  readonly material: Material;
  /** Letters of the insulation. Of a conductor with two marks, the one that holds in the place. */
  readonly insulation: InsulationType;
}

export const insulatedConductorShape: Shape = {
  is: "object",
  members: {
    size: { is: "checked", read: readSize },
    material: { is: "checked", read: readMaterial },
    insulation: insulationTypeShape,
  },
};

/** Location; the inside of a raceway in a wet place, or in the ground, is wet. */
export type Location = "dry" | "damp" | "wet";

export const locationShape: Shape = { is: "words", of: ["dry", "damp", "wet"] };

/** A temperature, in the unit in which it is known. */
export type Temperature =
  | (CelsiusTemperature & { readonly fahrenheit?: never })
  | (FahrenheitTemperature & { readonly celsius?: never });

export const temperatureShape: Shape = {
  is: "variants",
  of: [
    {
      is: "object",
      members: {
        celsius: {
          is: "between",
          unit: "degrees Celsius",
          least: -60,
          most: 150,
          advice: "check the temperature; no place is colder",
        },
      },
    },
    {
      is: "object",
      members: {
        fahrenheit: {
          is: "between",
          unit: "degrees Fahrenheit",
          least: -76,
          most: 302,
          advice: "check the temperature; no place is colder",
        },
      },
    },
  ],
};

/** Where a conductor lies. */
export interface PlaceOfUse {
  /** Location; the inside of a raceway in a wet place, or in the ground, is wet. */
  readonly location: Location;
  /** Ambient temperature; 30 C, that of the ampacity table, by default. */
  readonly ambient?: Temperature;
  /** Whether the ambient temperature is corrected for by the table, as by default, or by the equation. */
  readonly method?: "table" | "equation";
  /** Inches from the roof to the underside, in direct sunlight; left out where there is no roof below. */
  readonly inchesAboveRoof?: number;
  /** Current-carrying conductors in the raceway or cable, spares and every parallel set counted; not more than three by default. */
  readonly currentCarrying?: number;
  /** Length of the raceway in inches; longer than 24 in. by default. */
  readonly racewayInches?: number;
}

export const placeOfUseShape: Shape = {
  is: "object",
  members: {
    location: locationShape,
    ambient: temperatureShape,
    method: { is: "words", of: ["table", "equation"] },
    inchesAboveRoof: { is: "number", unit: "inches", orZero: true },
    currentCarrying: { is: "number", unit: "current-carrying conductors", whole: true },
    racewayInches: { is: "number", unit: "inches" },
  },
  optional: ["ambient", "method", "inchesAboveRoof", "currentCarrying", "racewayInches"],
};

/** Temperature column of the ampacity table, in degrees Celsius. */
export type TemperatureColumn = 60 | 75 | 90;

export const temperatureColumnShape: Shape = {
  is: "numbers",
  unit: "temperature column in degrees Celsius",
  of: [60, 75, 90],
};

/** The terminations of a conductor. */
export type Terminations =
  | (MarkedTerminations & { readonly circuitAmperes?: never })
  | (UnmarkedTerminations & { readonly marked?: never });

export const terminationsShape: Shape = {
  is: "variants",
  of: [
    { is: "object", members: { marked: temperatureColumnShape } },
    { is: "object", members: { circuitAmperes: { is: "number", unit: "amperes" } } },
  ],
};

/** A conductor in its place, whose ampacity is to be found. */
export interface AmpacityQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** A conductor with its insulation. */
  readonly conductor: InsulatedConductor;
  /** Where a conductor lies. */
  readonly place: PlaceOfUse;
  /** The terminations of a conductor. */
  readonly terminations: Terminations;
}

export const ampacityQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    conductor: insulatedConductorShape,
    place: placeOfUseShape,
    terminations: terminationsShape,
  },
};

/** A temperature in degrees Celsius. */
export interface CelsiusTemperature {
  /** Degrees Celsius. */
  readonly celsius: number;
}

export const celsiusTemperatureShape: Shape = {
  is: "object",
  members: {
    celsius: {
      is: "between",
      unit: "degrees Celsius",
      least: -60,
      most: 150,
      advice: "check the temperature; no place is colder",
    },
  },
};

/** Alike circuits in a raceway or cable. */
export interface CircuitInRaceway {
  /** Conductors of the circuit, those for grounding and bonding not counted; each set of a parallel circuit is one. */
  readonly kind:
    | "two-wire"
    | "three-wire-single-phase"
    | "two-phases-and-neutral-of-wye"
    | "three-wire-three-phase"
    | "four-wire-wye";
  /** How many alike; one by default. */
  readonly count?: number;
  /** Whether the major part of the load is nonlinear, so that the neutral carries harmonics; not by default. */
  readonly mostlyNonlinear?: boolean;
}

export const circuitInRacewayShape: Shape = {
  is: "object",
  members: {
    kind: {
      is: "words",
      of: [
        "two-wire",
        "three-wire-single-phase",
        "two-phases-and-neutral-of-wye",
        "three-wire-three-phase",
        "four-wire-wye",
      ],
    },
    count: { is: "number", unit: "circuits", whole: true },
    mostlyNonlinear: { is: "flag", says: "whether most of the load is nonlinear" },
  },
  optional: ["count", "mostlyNonlinear"],
};

/** What the ampacity of a conductor of any size goes by: its insulation, its place and its terminations. */
export interface ConditionsOfUse {
  /** Letters of the insulation. Of a conductor with two marks, the one that holds in the place. */
  readonly insulation: InsulationType;
  /** Where a conductor lies. */
  readonly place: PlaceOfUse;
  /** The terminations of a conductor. */
  readonly terminations: Terminations;
}

export const conditionsOfUseShape: Shape = {
  is: "object",
  members: { insulation: insulationTypeShape, place: placeOfUseShape, terminations: terminationsShape },
};

/** A current for which a conductor is to be found. */
export interface ConductorQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Material; copper-clad aluminum shares the aluminum columns. */
  readonly material: Material;
  /** Temperature column of the ampacity table, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
  /** Amperes to carry. */
  readonly amperes: number;
}

export const conductorQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    material: { is: "checked", read: readMaterial },
    temperature: temperatureColumnShape,
    amperes: { is: "number", unit: "amperes" },
  },
};

/** A load of which a part is continuous. */
export interface ContinuousLoadQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** What the conductors are part of. */
  readonly of: "service" | "feeder" | "branch-circuit";
  /** Continuous load in amperes: three hours and more. */
  readonly continuous: number;
  /** Other load in amperes. */
  readonly other: number;
  /** Whether the assembly with its overcurrent devices is listed to run at 100 percent of its rating. */
  readonly listedForAll?: boolean;
}

export const continuousLoadQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    of: { is: "words", of: ["service", "feeder", "branch-circuit"] },
    continuous: { is: "number", unit: "amperes", orZero: true },
    other: { is: "number", unit: "amperes", orZero: true },
    listedForAll: { is: "flag", says: "whether the assembly with its devices is listed for 100 percent" },
  },
  optional: ["listedForAll"],
};

/** What lies in one raceway or cable. */
export interface CountQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** The circuits in the raceway or cable. */
  readonly circuits: readonly CircuitInRaceway[];
  /** Spare conductors; none by default. */
  readonly spares?: number;
}

export const countQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    circuits: { is: "list", of: circuitInRacewayShape, least: 1, most: 2000 },
    spares: { is: "number", unit: "spare conductors", whole: true },
  },
  optional: ["spares"],
};

/** Conductors that a device is to protect. */
export interface ProtectedConductors {
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Material of a conductor. */
  readonly material: Material;
  /** Conductors in parallel per phase; one if there is no other. */
  readonly sets: number;
  /** Ampacity of one of them in its place, in amperes. */
  readonly amperes: number;
}

export const protectedConductorsShape: Shape = {
  is: "object",
  members: {
    size: { is: "checked", read: readSize },
    material: { is: "checked", read: readMaterial },
    sets: { is: "number", unit: "sets", whole: true },
    amperes: { is: "number", unit: "amperes" },
  },
};

/** Conductors, and the device that may protect them. */
export interface DeviceQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Conductors that a device is to protect. */
  readonly conductors: ProtectedConductors;
  /** What the conductors are; a branch circuit of several receptacles supplies portable loads by cord and plug. */
  readonly serves:
    | "service-or-feeder"
    | "branch-circuit"
    | "branch-circuit-of-several-receptacles"
    | "tap"
    | "transformer-secondary";
  /** Kind of the overcurrent device. */
  readonly device: "circuit-breaker" | "fuse";
  /** Rating in amperes that is to be judged; the largest permitted alone by default. */
  readonly rating?: number;
}

export const deviceQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    conductors: protectedConductorsShape,
    serves: {
      is: "words",
      of: [
        "service-or-feeder",
        "branch-circuit",
        "branch-circuit-of-several-receptacles",
        "tap",
        "transformer-secondary",
      ],
    },
    device: { is: "words", of: ["circuit-breaker", "fuse"] },
    rating: { is: "number", unit: "amperes" },
  },
  optional: ["rating"],
};

/** The ungrounded conductors of a service or feeder that carries the whole load of one dwelling. */
export interface DwellingQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Rating of the service or feeder in amperes. */
  readonly amperes: number;
  /** Material of the conductors. */
  readonly material: Material;
  /** What supplies the dwelling: single-phase three-wire, or two phases and the neutral of a wye. */
  readonly system: "120/240-three-wire" | "208Y/120-two-phases";
  /** Conditions of use; those of the ampacity table, and 75 C, by default. */
  readonly conditions?: ConditionsOfUse;
}

export const dwellingQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    amperes: {
      is: "between",
      unit: "amperes",
      least: 100,
      most: 400,
      advice: "the allowance for dwellings holds from 100 through 400 A; size others by their load",
    },
    material: { is: "checked", read: readMaterial },
    system: { is: "words", of: ["120/240-three-wire", "208Y/120-two-phases"] },
    conditions: conditionsOfUseShape,
  },
  optional: ["conditions"],
};

/** A temperature in degrees Fahrenheit. */
export interface FahrenheitTemperature {
  /** Degrees Fahrenheit. */
  readonly fahrenheit: number;
}

export const fahrenheitTemperatureShape: Shape = {
  is: "object",
  members: {
    fahrenheit: {
      is: "between",
      unit: "degrees Fahrenheit",
      least: -76,
      most: 302,
      advice: "check the temperature; no place is colder",
    },
  },
};

/** Terminations that are listed and marked for a temperature. */
export interface MarkedTerminations {
  /** Temperature in degrees Celsius for which the equipment at both ends is listed and marked, the lower of the two. */
  readonly marked: TemperatureColumn;
}

export const markedTerminationsShape: Shape = { is: "object", members: { marked: temperatureColumnShape } };

/** A cell of the ampacity table. */
export interface TableAmpacityQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Material; copper-clad aluminum shares the aluminum columns. */
  readonly material: Material;
  /** Temperature column of the ampacity table, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
}

export const tableAmpacityQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    material: { is: "checked", read: readMaterial },
    temperature: temperatureColumnShape,
    size: { is: "checked", read: readSize },
  },
};

/** Terminations without a mark that counts, of a circuit of so many amperes. */
export interface UnmarkedTerminations {
  /** Rating of the circuit in amperes: through 100 A terminations are used at 60 C, above at 75 C. */
  readonly circuitAmperes: number;
}

export const unmarkedTerminationsShape: Shape = {
  is: "object",
  members: { circuitAmperes: { is: "number", unit: "amperes" } },
};
