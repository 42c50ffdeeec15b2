import * as bondmil from "bondmil";
import * as corpus from "bondmil/corpus";
import { corpusCases, implementationOf, judgeCase, runCorpus, sources } from "bondmil/corpus";
import * as tables from "bondmil/tables";
import { demo, demoNames } from "../installation/installations.js";

/** Right arguments of a function, from which wrong ones are made. */
export interface Entry {
  readonly call: (...args: never[]) => unknown;
  readonly args: readonly (readonly unknown[])[];
  /** How often it is called beside the others; 1 by default. */
  readonly weight?: number;
  /** Whether one call takes seconds, so that it is left to the large run. */
  readonly slow?: true;
}

/** Exports that are not called, each with the reason. */
export const notCalled: Readonly<Record<string, string>> = {
  "bondmil InputError": "a class for whoever throws: the library makes it from its own issues",
};

const code = { year: "2023" } as const;
const copper = { material: "copper" } as const;
const wire = { size: "4/0 AWG", material: "copper" } as const;
const big = { size: "500 kcmil", material: "copper" } as const;
const supply = { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] } as const;
const phased = {
  sets: [
    { count: 2, phases: [big, wire, null] },
    { count: 1, phases: [wire, big, wire] },
  ],
} as const;
const amendments = [
  {
    kind: "floor",
    role: "main-bonding-jumper",
    copper: "2 AWG",
    citation: { jurisdiction: "Example County", section: "1" },
  },
  {
    kind: "cell",
    table: "bonding-conductor",
    row: "2 AWG",
    column: "copper",
    size: "6 AWG",
    citation: { jurisdiction: "Example County", section: "2" },
    when: { location: "coast" },
  },
] as const;
const jumper = {
  code: { ...code, amendments, circumstances: { location: "coast" } },
  supply,
  conductor: copper,
} as const;
const candidateQuestion = {
  code,
  system: { kind: "feeder", ungrounded: 3, grounded: { currentCarrying: true, loadAmperes: 100 } },
  load: { continuous: 100, other: 200 },
  device: 400,
  conductor: { insulation: "THWN-2", materials: ["copper", "aluminum"] },
  place: { location: "wet", ambient: { celsius: 35 } },
  limits: { mostSets: 2, mostSetsInRaceway: 2 },
  raceways: ["pvc-schedule-40"],
  bonding: copper,
} as const;
const barnToChoose = {
  format: 1,
  title: "Barn",
  code: { year: "2020" },
  materials: {
    bondingJumpers: "copper",
    groundedConductors: "copper",
    electrodeConductors: "copper",
    equipmentGrounding: "copper",
  },
  services: [
    {
      id: "S1",
      grounding: "solidly-grounded",
      connection: "single-phase-three-wire",
      utility: { id: "pole", outdoorTransformer: true },
      runs: [
        {
          id: "R1",
          from: "pole",
          to: "D1",
          supply: {
            toChoose: {
              load: { continuous: 0, other: 180 },
              device: 200,
              conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
              place: { location: "wet" },
              limits: { mostSets: 1 },
            },
          },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 200 }],
      housing: "separate-enclosures",
      electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
    },
  ],
} as const;
const circuits = [{ device: { amperes: 400 }, conductors: { sets: [{ count: 1, ...big }] } }] as const;
const enclosures = [
  { id: "D1", supply },
  { id: "D2", supply: phased },
] as const;
const electrodes = [{ kind: "metal-water-pipe" }, { kind: "ring", conductor: "2 AWG" }] as const;

const installations = demoNames.map(demo);
const installationArgs = [...installations.map((one) => [one]), [JSON.stringify(installations[0])]];
const shop = installations[0] as bondmil.Installation;
const schedule = bondmil.scheduleOf(shop);
const check = bondmil.checkOf(shop);
const compared = (["editions", "readings", "arrangements"] as const).map((over) =>
  bondmil.compareInstallation({ over, installation: shop }),
);
const results = [
  bondmil.size(bondmil.mainBondingJumper, jumper),
  bondmil.size(bondmil.mainBondingJumper, { code, supply: phased, conductor: { ...copper, form: "bus" } }),
  bondmil.size(bondmil.equipmentGroundingConductor, { code, circuits, conductor: copper }),
];
const withstand = {
  conductor: wire,
  temperatures: { initial: 75, final: 150 },
  fault: { amperes: 5000, seconds: 0.25 },
};
const filled = {
  edition: "2023",
  raceway: "rigid-metal",
  tradeSize: "3",
  nipple: true,
  conductors: [
    { count: 3, size: "4/0 AWG", insulation: "THWN-2", compact: false },
    { count: 1, size: "2 AWG", insulation: "RHW", withoutCovering: true },
  ],
  added: [
    { count: 1, size: "6 AWG", bare: "stranded" },
    { count: 1, squareInches: 0.2 },
  ],
} as const;
const dropping = {
  edition: "2023",
  current: "three-phase",
  volts: 480,
  amperes: 200,
  feet: 500,
  conductors: { sets: 1, size: "3/0 AWG", material: "copper" },
  impedance: { from: "table-9", conduit: "steel", powerFactor: 0.85 },
  permittedPercent: 2,
  mostSets: 4,
} as const;
const service = { code, enclosures, conductor: copper, wireway: { id: "W1", supply } } as const;
const source = {
  code,
  source: { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" },
  grounding: "solidly-grounded",
} as const;
const designation = { code, designation: "meter-disconnect", grounding: "solidly-grounded" } as const;
const overEditions = {
  over: "editions",
  input: { supply, conductor: copper },
  editions: ["2011", "2023"],
} as const;
const overReadings = { over: "readings", input: jumper } as const;
const overAmendments = { over: "amendments", input: jumper } as const;
const supplySweep = {
  editions: ["2020"],
  supplyMaterial: "copper",
  material: "copper",
  sizes: ["600 kcmil"],
  counts: [1, 4],
} as const;
const conductorInPlace = {
  edition: "2023",
  conductor: { size: "8 AWG", material: "copper", insulation: "THHN" },
  place: { location: "dry", ambient: { celsius: 35 }, currentCarrying: 9, racewayInches: 300 },
  terminations: { marked: 75 },
} as const;
const onRoof = {
  edition: "2011",
  conductor: { size: "250 kcmil", material: "aluminum", insulation: "XHHW-2" },
  place: { location: "wet", ambient: { fahrenheit: 95 }, inchesAboveRoof: 6, method: "equation" },
  terminations: { circuitAmperes: 200 },
} as const;
const counted = {
  edition: "2020",
  circuits: [{ kind: "four-wire-wye", count: 2, mostlyNonlinear: true }, { kind: "two-wire" }],
  spares: 1,
} as const;
const device = {
  edition: "2023",
  conductors: { size: "500 kcmil", material: "copper", sets: 2, amperes: 380 },
  serves: "service-or-feeder",
  device: "fuse",
  rating: 750,
} as const;
const house = {
  edition: "2023",
  amperes: 200,
  material: "aluminum",
  system: "208Y/120-two-phases",
  conditions: {
    insulation: "THWN-2",
    place: { location: "wet", ambient: { celsius: 40 } },
    terminations: { marked: 75 },
  },
} as const;
const load = {
  edition: "2014",
  of: "branch-circuit",
  continuous: 40,
  other: 0,
  listedForAll: true,
} as const;
const tapped = {
  edition: "2023",
  feederDevice: 400,
  feet: 20,
  place: "inside",
  endsIn: { device: 150 },
  load: 120,
  transformer: { primaryVolts: 480, secondaryVolts: 208, secondaryFeet: 5 },
} as const;
const secondaryOf = {
  edition: "2023",
  transformer: { kva: 75, primaryVolts: 480, secondaryVolts: 208, phases: 3, windings: "other" },
  protection: "primary-and-secondary",
  conductors: {
    feet: 20,
    place: "inside",
    endsIn: { devices: [100, 100], equipment: 225 },
    load: 150,
  },
  feederTap: { feederDevice: 400, primaryFeet: 5 },
} as const;
const ratingSweep = { editions: ["2020"], material: "copper", ratings: [100, 4000] } as const;
const filter = { role: "intersystem-bonding-conductor", edition: "2023", standing: "cited" } as const;
const rows = runCorpus(implementationOf(bondmil), { role: "intersystem-bonding-conductor" });
const csvRows = [{ size: "4/0 AWG", area: 211600, note: null, ok: true }, { size: 'a "b"' }];

const sizings = { ...bondmil.roles, "cable-tray": bondmil.cableTrayAsEquipmentGroundingConductor };
const roleIds = Object.keys(bondmil.roles) as readonly bondmil.Role[];
const documentOptions = { title: "Shop", preparedBy: "J. Doe", date: "2026-01-31" } as const;
const told = [
  ...results,
  bondmil.size(bondmil.cableTrayAsEquipmentGroundingConductor, { code, amperes: 225, metal: "steel" }),
  bondmil.shortTimeWithstand(withstand),
  bondmil.racewayFill(filled),
  bondmil.voltageDrop(dropping),
  bondmil.bondingAtDesignation(designation),
  bondmil.classifySource(source),
  bondmil.ampacityOf(conductorInPlace),
  bondmil.ampacityOf(onRoof),
  bondmil.currentCarryingConductors(counted),
  bondmil.deviceFor(device),
  bondmil.dwellingConductor(house),
  bondmil.requiredByLoad(load),
  bondmil.feederTap(tapped),
  bondmil.transformerSecondary(secondaryOf),
];
const documents = [
  bondmil.reportDocument(shop, documentOptions),
  bondmil.rowsDocument(csvRows),
  ...told.map((one) => bondmil.resultDocument(one)),
];

/** The value of a role by its id; what is no id is taken as it is. */
function roleOf(id: unknown): never {
  const isId = typeof id === "string" && Object.hasOwn(sizings, id);
  return (isId ? sizings[id as keyof typeof sizings] : id) as never;
}

/** A function that takes a role, called with its id: what is fuzzed is the id and what stands beside it. */
function ofRole(call: (role: never, request: never) => unknown): Entry["call"] {
  return (id: unknown, request: never) => call(roleOf(id), request);
}

/** Every role of one kind with the same request. */
function rolesBy(by: bondmil.AnyRole["by"], ...rest: readonly unknown[]): Entry["args"] {
  return roleIds.filter((id) => bondmil.roles[id].by === by).map((id) => [id, ...rest]);
}

/** A prepared sizing is asked too: what is fuzzed is the request, and the areas or amperes. */
function askPrepared(id: unknown, request: never, area: number, assumed: number, sets: number): unknown {
  const prepared: bondmil.Prepared | bondmil.PreparedByRating = bondmil.prepare(roleOf(id), request);
  if (prepared.kind !== "by-assumed-area") return prepared.requiredArea(area);
  return [prepared.needsAssumedArea(area, sets), prepared.requiredArea(area, assumed, sets)];
}

/** A role with some of the inputs of its published checks. */
function published(role: bondmil.Role): Entry["args"] {
  const inputs = corpusCases({ role })
    .filter((one) => !("error" in judgeCase(one, { errors: ["out-of-range"] }).expected))
    .map(({ edition, question }) => ({ ...question.input, code: { year: edition } }));
  const step = Math.ceil(inputs.length / 40);
  return inputs.filter((_, i) => i % step === 0).map((input) => [role, input]);
}

/** The name of the value of a role. */
function camel(id: string): string {
  return id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
}

const ofBondmil: Readonly<Record<string, Entry>> = {
  amend: { call: bondmil.amend, args: [[code, ...amendments]] },
  ampacityOf: { call: bondmil.ampacityOf, args: [[conductorInPlace], [onRoof]] },
  currentCarryingConductors: { call: bondmil.currentCarryingConductors, args: [[counted]] },
  deviceFor: { call: bondmil.deviceFor, args: [[device]] },
  dwellingConductor: { call: bondmil.dwellingConductor, args: [[house]] },
  requiredByLoad: { call: bondmil.requiredByLoad, args: [[load]] },
  tableAmpacity: {
    call: bondmil.tableAmpacity,
    args: [[{ edition: "2023", size: "600 kcmil", material: "aluminum", temperature: 75 }]],
  },
  areaOf: { call: bondmil.areaOf, args: [["1/0 AWG"]] },
  arrangementsOf: {
    call: ofRole(bondmil.arrangementsOf as never),
    args: [
      ["main-bonding-jumper", service],
      [
        "system-bonding-jumper",
        { code, source: { id: "T1", outdoors: false }, enclosures, conductor: copper },
      ],
      ["supply-side-bonding-jumper", { code, raceways: enclosures, conductor: copper, temperature: 75 }],
      [
        "grounding-electrode-conductor",
        { code, system: "service", conductor: copper, electrodes, enclosures, wireway: { id: "W1", supply } },
      ],
      [
        "grounding-electrode-conductor",
        { code, system: "separately-derived", conductor: copper, electrodes, systems: enclosures },
      ],
    ],
    weight: 4,
  },
  arrangementsDocument: {
    call: bondmil.arrangementsDocument,
    args: [[bondmil.arrangementsOf(bondmil.mainBondingJumper, service), { title: "Shop" }]],
  },
  assumedConductors: {
    call: bondmil.assumedConductors,
    args: [[{ edition: "2023", supply, material: "copper", temperature: 75 }]],
  },
  bondingAtDesignation: { call: bondmil.bondingAtDesignation, args: [[designation]] },
  scheduleOf: {
    call: bondmil.scheduleOf,
    args: [...installationArgs, [installations[0], { fingerprint: false }]],
  },
  candidatesDocument: {
    call: bondmil.candidatesDocument,
    args: [[bondmil.supplyCandidates(candidateQuestion), { title: "Feeder" }]],
  },
  candidatesOf: { call: bondmil.candidatesOf, args: [[barnToChoose]] },
  checkDocument: { call: bondmil.checkDocument, args: [[check, documentOptions]] },
  checkOf: { call: bondmil.checkOf, args: installationArgs },
  classifySource: { call: bondmil.classifySource, args: [[source]] },
  columnOf: { call: bondmil.columnOf, args: [["copper-clad aluminum"]] },
  compare: {
    call: ofRole(bondmil.compare),
    args: [overEditions, overReadings, overAmendments].map((one) => ["main-bonding-jumper", one]),
    weight: 3,
  },
  compareInstallation: {
    call: bondmil.compareInstallation,
    args: [
      [{ over: "editions", installation: shop, editions: ["2011", "2023"] }],
      [{ over: "amendments", installation: shop, amendments }],
      [{ over: "readings", installation: shop }],
      [{ over: "arrangements", installation: shop }],
    ],
    weight: 0.05,
  },
  compareSizes: { call: bondmil.compareSizes, args: [["4 AWG", "4/0 AWG"]] },
  comparisonDocument: {
    call: bondmil.comparisonDocument,
    args: [
      ...compared.map((one) => [one]),
      [bondmil.compare(bondmil.mainBondingJumper, overEditions), documentOptions],
      [bondmil.compare(bondmil.mainBondingJumper, overReadings), { title: "Kiosk" }],
    ],
    weight: 0.1,
  },
  correspondingSum: { call: bondmil.correspondingSum, args: [[supply], [phased]] },
  "installationSchema.validate": {
    call: bondmil.installationSchema["~standard"].validate,
    args: installationArgs,
  },
  effects: {
    call: bondmil.effects,
    args: [[{ code: { year: "2023", amendments }, installations: [shop] }]],
    weight: 0.001,
    slow: true,
  },
  explain: { call: bondmil.explain, args: told.map((one) => [one]) },
  feederTap: { call: bondmil.feederTap, args: [[tapped]] },
  fingerprintOf: { call: bondmil.fingerprintOf, args: [[jumper], [[1, null, "a"]]], weight: 0.02 },
  formatArea: { call: bondmil.formatArea, args: [[1_800_000, "mm2"]] },
  formatSize: { call: bondmil.formatSize, args: [["3/0 AWG"]] },
  fromSquareInches: { call: bondmil.fromSquareInches, args: [[0.5]] },
  issuesSoFar: { call: bondmil.issuesSoFar, args: installationArgs },
  isEditionYear: { call: bondmil.isEditionYear, args: [["2023"]] },
  isMaterial: { call: bondmil.isMaterial, args: [["copper"]] },
  isConductorSize: { call: bondmil.isConductorSize, args: [["1/0 AWG"]] },
  isStandardSize: { call: bondmil.isStandardSize, args: [["1250 kcmil"]] },
  largestDevice: {
    call: ofRole(bondmil.largestDevice),
    args: rolesBy("rating", { code, conductor: wire }),
  },
  largestSupply: {
    call: ofRole(bondmil.largestSupply),
    args: rolesBy("supply", { code, conductor: wire, supplyMaterial: "copper" }),
  },
  metalMass: {
    call: bondmil.metalMass,
    args: [[{ conductors: [{ count: 3, ...wire, solid: false }], feet: 500 }]],
  },
  nextSizeDown: { call: bondmil.nextSizeDown, args: [["1/0 AWG"]] },
  nextSizeUp: { call: bondmil.nextSizeUp, args: [["4/0 AWG"]] },
  parseSize: { call: bondmil.parseSize, args: [["4/0 AWG"], ["#2"], ["250,000 cmil"], ["two aught"]] },
  conductorName: { call: bondmil.conductorName, args: [[bondmil.scheduleOf(shop).conductors[0]]] },
  drawingAsSvg: {
    call: bondmil.drawingAsSvg,
    args: [[bondmil.drawingOf(shop)], [bondmil.drawingOf(shop), { highlight: "main-bonding-jumper D1" }]],
  },
  drawingOf: { call: bondmil.drawingOf, args: installationArgs },
  endName: { call: bondmil.endName, args: [[{ kind: "place", id: "D1" }]] },
  prepare: {
    call: askPrepared,
    args: [
      ...rolesBy("supply", { code, supplyMaterial: "aluminum", conductor: copper }, 1_800_000, 1_500_000, 3),
      ...rolesBy("supply", { code, supplyMaterial: "copper", conductor: copper }, 1_800_000, 0, 1),
      ...rolesBy("rating", { code, conductor: copper }, 400),
    ],
    weight: 3,
  },
  readInstallation: { call: bondmil.readInstallation, args: installationArgs },
  rectangularBarsFor: { call: bondmil.rectangularBarsFor, args: [[375_000]] },
  render: {
    call: bondmil.render,
    args: documents.flatMap((one) =>
      (["text", "markdown", "html", "csv"] as const).map((as) => [one, { as, width: 60 }]),
    ),
    weight: 0.3,
  },
  racewayFill: {
    call: bondmil.racewayFill,
    args: [[filled], [{ edition: "2011", raceway: "intermediate-metal", conductors: filled.conductors }]],
  },
  reportDocument: {
    call: bondmil.reportDocument,
    args: installationArgs.map(([one]) => [one, documentOptions]),
    weight: 0.3,
  },
  requireEvidence: { call: bondmil.requireEvidence, args: results.map((one) => [one, "carried"]) },
  reserveOf: { call: bondmil.reserveOf, args: results.map((result) => [{ installed: wire, result }]) },
  resultDocument: { call: bondmil.resultDocument, args: told.map((one) => [one, documentOptions]) },
  rowsDocument: { call: bondmil.rowsDocument, args: [[csvRows, documentOptions]] },
  scheduleDocument: { call: bondmil.scheduleDocument, args: [[schedule, documentOptions]] },
  shortTimeWithstand: {
    call: bondmil.shortTimeWithstand,
    args: [
      [withstand],
      [
        {
          ...withstand,
          conductor: { areaCircularMils: 250_000, material: "aluminum" },
          fault: { letThrough: 1e6 },
        },
      ],
    ],
  },
  size: {
    call: ofRole(bondmil.size),
    args: [...roleIds.flatMap(published), ["cable-tray", { code, amperes: 225, metal: "steel" }]],
    weight: 16,
  },
  smallestConductorFor: {
    call: bondmil.smallestConductorFor,
    args: [[{ edition: "2023", amperes: 340, material: "aluminum", temperature: 75 }]],
  },
  standardSizeFor: { call: bondmil.standardSizeFor, args: [[225_000]] },
  sumOfLargest: { call: bondmil.sumOfLargest, args: [[supply], [phased]] },
  supplyCandidates: { call: bondmil.supplyCandidates, args: [[candidateQuestion]] },
  sweep: {
    call: ofRole(bondmil.sweep),
    args: [...rolesBy("supply", supplySweep), ...rolesBy("rating", ratingSweep)],
  },
  toSquareInches: { call: bondmil.toSquareInches, args: [[250_000]] },
  toSquareMillimeters: { call: bondmil.toSquareMillimeters, args: [[250_000]] },
  tradeOffAsSvg: { call: bondmil.tradeOffAsSvg, args: [[bondmil.supplyCandidates(candidateQuestion)]] },
  transformerSecondary: { call: bondmil.transformerSecondary, args: [[secondaryOf]] },
  transformerCurrent: { call: bondmil.transformerCurrent, args: [[{ kva: 112.5, volts: 208, phases: 3 }]] },
  voltageDrop: {
    call: bondmil.voltageDrop,
    args: [[dropping], [{ ...dropping, impedance: { from: "table-8", coated: true, celsius: 60 } }]],
  },
  weakestEvidence: { call: bondmil.weakestEvidence, args: [[["single", "carried"]]] },
  ...Object.fromEntries(
    roleIds.map((id) => [
      `${camel(id)}.validate`,
      {
        call: bondmil.roles[id]["~standard"].validate,
        args: published(id).map(([, input]) => [input]),
        weight: 0.3,
      },
    ]),
  ),
};

const ofCorpus: Readonly<Record<string, Entry>> = {
  corpusCases: { call: corpusCases, args: [[filter]], weight: 0.2 },
  implementationOf: { call: implementationOf, args: [[{ ...bondmil }], [{ ...bondmil }, { amendments }]] },
  judgeCase: {
    call: corpus.judgeCase,
    args: [
      [corpusCases(filter)[0], { size: "6 AWG", requiredArea: 26_240 }],
      [corpusCases(filter)[0], { errors: ["out-of-range"] }],
    ],
  },
  runCorpus: { call: runCorpus, args: [[() => ({ size: "6 AWG" }), filter]], weight: 0.2 },
  writeMisses: { call: corpus.writeMisses, args: [[rows, { ...sources }]], weight: 0.05 },
  writeSummary: { call: corpus.writeSummary, args: [[rows, { ...sources }]], weight: 0.05 },
};

const ofTables: Readonly<Record<string, Entry>> = {
  inForce: {
    call: tables.inForce,
    args: [[tables.policies.policies["main-bonding-jumper"] ?? [], "2023"]],
    weight: 0.3,
  },
  rowsIn: { call: tables.rowsIn, args: [[tables.bondingConductor, "2023"]], weight: 0.3 },
};

/** Everything that is called, by the entry of the package and its name. */
export const entries: Readonly<Record<string, Entry>> = Object.fromEntries(
  Object.entries({ bondmil: ofBondmil, "bondmil/corpus": ofCorpus, "bondmil/tables": ofTables }).flatMap(
    ([from, list]) => Object.entries(list).map(([name, entry]) => [`${from} ${name}`, entry] as const),
  ),
);

/** Every export that can be called, as the modules have them. */
export const callable: readonly string[] = Object.entries({
  bondmil,
  "bondmil/corpus": corpus,
  "bondmil/tables": tables,
}).flatMap(([from, module]) =>
  Object.entries(module).flatMap(([name, value]) => functionsIn(value, name).map((one) => `${from} ${one}`)),
);

/** A function, the validation of a standard schema, or nothing for plain data. */
function functionsIn(value: unknown, name: string): readonly string[] {
  if (typeof value === "function") return [name];
  if (typeof value !== "object" || value === null || !("~standard" in value)) return [];
  return [`${name}.validate`];
}
