import { isList, isObject, type Json } from "./data.js";
import type { Schema } from "./fields.js";

/** Names of members, where they are not the words of the member itself. */
const names: Readonly<Record<string, string>> = {
  id: "Name",
  code: "Code",
  year: "Edition",
  services: "Services",
  derivedSystems: "Separately derived systems",
  circuits: "Feeders and branch circuits",
  piping: "Metal piping",
  existing: "Equipment beyond the drawing",
  intersystem: "Intersystem bonding terminations",
  installed: "What was found on site",
  found: "Found conductors",
  rest: "Everything else",
  asScheduled: "All as scheduled",
  amperes: "Rating (A)",
  deviceAmperes: "Device (A)",
  circuitAmperes: "Circuit (A)",
  dualElementFuseAmperes: "Largest dual-element fuse (A)",
  leastAmpacity: "Least ampacity (A)",
  continuous: "Continuous load (A)",
  other: "Other load (A)",
  lengthFeet: "Length (ft)",
  ohms: "Resistance to earth (ohms)",
  celsius: "Degrees Celsius",
  fahrenheit: "Degrees Fahrenheit",
  inchesAboveEarth: "Above earth (in)",
  inchesAboveRoof: "Above roof (in)",
  racewayInches: "Raceway length (in)",
  terminations: "Terminations (C)",
  busArea: "Area of the bus (circular mils)",
  supply: "Ungrounded conductors",
  conductors: "Ungrounded conductors",
  toChoose: "Load and conditions",
  mostSets: "At most so many sets",
  mostSetsInRaceway: "Sets in one raceway at most",
  count: "How many",
  kind: "Kind",
  in: "Shared raceway",
  of: "Belongs to",
  at: "Place",
  boxes: "Boxes ahead of the disconnects",
  boxesWithoutSupply: "Boxes without supply conductors",
  electrodes: "Electrodes",
  electrodesNotConnected: "Electrodes not connected",
  electrode: "Electrode",
  outdoorTransformer: "Transformer outdoors",
  jumperAt: "System bonding jumper at",
  bondedBy: "Bonded by",
  designation: "Marked as",
  load: "Load",
  listedFor75: "Terminations listed for 75 C",
  equipmentGrounding: "Equipment grounding conductors",
};

/** Values that are not the words of the value itself. */
const values: Readonly<Record<string, string>> = {
  "transformer-cabinet": "CT cabinet",
  "grounded-phase": "corner-grounded",
  "pvc-schedule-40": "PVC Schedule 40",
  "pvc-schedule-80": "PVC Schedule 80",
  "three-phase-wye": "three-phase wye",
  "single-phase-three-wire": "single-phase, three-wire",
  "three-phase-delta": "three-phase delta",
  "high-leg-delta": "high-leg delta",
  "nonflexible-metal": "metal, not flexible",
  "flexible-metal": "metal, flexible",
  "60": "60 C",
  "75": "75 C",
  "90": "90 C",
};

/** What one of several is called, by the member that the list stands in. */
const singulars: Readonly<Record<string, string>> = {
  services: "service",
  derivedSystems: "separately derived system",
  generators: "generator",
  transferSwitches: "transfer switch",
  circuits: "feeder or branch circuit",
  loadSideJumpers: "load-side bonding jumper",
  buildings: "building",
  loadSideConnections: "load-side connection",
  piping: "piping",
  structuralMetal: "frame",
  intersystem: "termination",
  existing: "equipment",
  boxes: "box",
  boxesWithoutSupply: "box",
  buses: "bus",
  runs: "run of conductors",
  sharedRaceways: "shared raceway",
  disconnects: "disconnect",
  electrodes: "electrode",
  electrodesNotConnected: "electrode",
  sets: "kind of set",
  phases: "phase",
  found: "found conductor",
  asScheduled: "part as scheduled",
  amendments: "amendment",
  removable: "meter or fitting",
  materials: "material",
  raceways: "kind of raceway",
};

/** Variants that are told apart by a member of theirs, by the name of the member. */
const variantNames: Readonly<Record<string, string>> = {
  sets: "as chosen",
  forLoad: "as a load requires",
  toChoose: "to be chosen, from candidates",
  phases: "unlike phases",
  size: "alike in every phase",
  electrode: "conductor to an electrode named elsewhere",
  ohms: "electrode of its own",
  amperes: "its own device",
  motor: "motor circuit",
  aheadOfFeeder: "tap: device ahead of the feeder",
  celsius: "Celsius",
  fahrenheit: "Fahrenheit",
};

function words(name: string): string {
  const text = name.replace(/([a-z])([A-Z0-9])/g, "$1 $2").toLowerCase();
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A member in words. */
export function labelOf(name: string): string {
  return names[name] ?? words(name);
}

/** One of a list in words. */
export function singularOf(name: string): string {
  return singulars[name] ?? labelOf(name).toLowerCase();
}

/** A value of a closed list in words; a size stays as it is. */
export function valueWords(value: Json): string {
  const text = typeof value === "string" ? value : String(value);
  if (/\d (?:AWG|kcmil)$|^\d+\/\d/.test(text)) return text;
  return values[text] ?? text.replaceAll("-", " ");
}

/** A variant in words. */
export function variantWords(one: Schema): string {
  if (one.type === "array") return "several";
  if (one.type === "string") return "one";
  if (one.type === "number") return "number";
  if (one.type === "null") return "none";
  const { properties = {} } = one;
  const fixed = Object.values(properties).find((member) => member.const !== undefined)?.const;
  if (fixed !== undefined) return valueWords(fixed);
  const own = Object.keys(variantNames).find((name) => Object.hasOwn(properties, name));
  return own === undefined ? "other" : (variantNames[own] ?? own);
}

/** What stands for a part in a line of a list: its name, and what tells it apart. */
export function titleOf(value: Json | undefined): string {
  if (!isObject(value)) return value === undefined || isList(value) ? "" : String(value);
  const { id, name, role, electrode, kind, designation, from, to, of, amperes, size } = value;
  const first = [id, name, electrode, role === undefined ? undefined : valueWords(role)].find(
    (one) => one !== undefined && one !== "",
  );
  const way = from === undefined ? [] : [`${String(from)}${to === undefined ? "" : ` to ${String(to)}`}`];
  const rest = [kind, designation]
    .flatMap((one) => (typeof one === "string" ? [valueWords(one)] : []))
    .concat(way, typeof of === "string" ? [of] : [], typeof amperes === "number" ? [`${amperes} A`] : [])
    .concat(typeof size === "string" ? [size] : []);
  return [first === undefined ? "without a name" : String(first), ...rest].join(", ");
}
