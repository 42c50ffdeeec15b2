import * as bondmil from "bondmil";
import * as corpus from "bondmil/corpus";
import { type checkFiles, corpusCases, implementationOf, runCorpus, sources } from "bondmil/corpus";
import * as tables from "bondmil/tables";
import { demo, demoNames } from "../installation/drawings.js";

/** Right arguments of a function, from which wrong ones are made. */
export interface Entry {
  readonly call: (...args: never[]) => unknown;
  readonly args: readonly (readonly unknown[])[];
  /** How often it is called beside the others; 1 unless told. */
  readonly weight?: number;
  /** Whether one call takes seconds, so that it is left to the large run. */
  readonly slow?: true;
}

/** Exports that are not called, each with the reason. */
export const notCalled: Readonly<Record<string, string>> = {
  "bondmil InputError": "a class for whoever throws: the library makes it from its own issues",
  "bondmil drawingSchema":
    "a schema of valibot, walked by valibot; what it refuses is fuzzed through readDrawing",
};

const code = { year: "2023" } as const;
const copper = { material: "copper" } as const;
const size = { size: "4/0 AWG", material: "copper" } as const;
const big = { size: "500 kcmil", material: "copper" } as const;
const supply = { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] } as const;
const phased = {
  sets: [
    { count: 2, phases: [big, size, null] },
    { count: 1, phases: [size, big, size] },
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
  jumper: copper,
} as const;
const circuits = [{ device: { amperes: 400 }, conductors: { sets: [{ count: 1, ...big }] } }] as const;
const enclosures = [
  { id: "D1", supply },
  { id: "D2", supply: phased },
] as const;
const electrodes = [{ kind: "metal-water-pipe" }, { kind: "ring", conductor: "2 AWG" }] as const;

const drawings = demoNames.map(demo);
const drawingArgs = [...drawings.map((one) => [one]), [JSON.stringify(drawings[0])]];
const shop = drawings[0] as bondmil.Drawing;
const schedule = bondmil.buildSchedule(shop);
const check = bondmil.checkInstalled(shop);
const compared = (["edition", "reading", "arrangement"] as const).map((by) =>
  bondmil.compareDrawing({ by, drawing: shop }),
);
const results = [
  bondmil.sizeMainBondingJumper(jumper),
  bondmil.sizeMainBondingJumper({ code, supply: phased, jumper: { ...copper, form: "bus" } }),
  bondmil.sizeEquipmentGroundingConductor({ code, circuits, conductor: copper }),
];
const withstand = {
  conductor: size,
  temperatures: { initial: 75, final: 150 },
  fault: { amperes: 5000, seconds: 0.25 },
};
const service = { code, enclosures, jumper: copper, wireway: { id: "W1", supply } } as const;
const source = {
  code,
  source: { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" },
  grounding: "solidly-grounded",
} as const;
const designation = { code, designation: "meter-disconnect", grounding: "solidly-grounded" } as const;
const editionsRequest = {
  size: bondmil.sizeMainBondingJumper,
  input: { supply, jumper: copper },
  years: ["2011", "2023"],
} as const;
const readingsRequest = { size: bondmil.sizeMainBondingJumper, input: jumper } as const;
const supplyRequest = {
  size: bondmil.sizeMainBondingJumper,
  years: ["2020"],
  material: "copper",
  jumperMaterial: "copper",
  sizes: ["600 kcmil"],
  counts: [1, 4],
} as const;
const ratingRequest = {
  size: bondmil.sizeEquipmentGroundingConductor,
  years: ["2020"],
  material: "copper",
  ratings: [100, 4000],
} as const;
const filter = { role: "intersystem-bonding-conductor", edition: "2023", standing: "cited" } as const;
const rows = runCorpus(implementationOf(bondmil), { role: "intersystem-bonding-conductor" });
const csvRows = [{ size: "4/0 AWG", area: 211600, note: null, ok: true }, { size: 'a "b"' }];

const preparedRequest = { code, supply: "aluminum", jumper: "copper" } as const;
const prepares = {
  prepareMainBondingJumper: bondmil.prepareMainBondingJumper,
  prepareSupplySideBondingJumper: bondmil.prepareSupplySideBondingJumper,
  prepareSystemBondingJumper: bondmil.prepareSystemBondingJumper,
};

/** A prepared sizing is asked too: what is fuzzed is the request and the areas. */
function askedPrepared(prepare: (request: bondmil.PreparedRequest) => bondmil.Prepared): Entry {
  return {
    call: (request: bondmil.PreparedRequest, area: number, assumed: number, sets: number) => {
      const prepared = prepare(request);
      if (prepared.kind === "by-area") return prepared.requiredArea(area);
      return [prepared.needsAssumedArea(area, sets), prepared.requiredArea(area, assumed, sets)];
    },
    args: [
      [preparedRequest, 1_800_000, 1_500_000, 3],
      [{ ...preparedRequest, supply: "copper" }, 1_800_000, 0, 1],
    ],
  };
}

/** Every sizing function with the inputs of the published checks. */
function sizing(
  role: keyof typeof checkFiles,
  call: Entry["call"],
  keep: (input: object) => boolean = () => true,
): Entry {
  const inputs = corpusCases({ role }).map(({ edition, question }) => ({
    ...question.input,
    code: { year: edition },
  }));
  const kept = inputs.filter(keep);
  const step = Math.ceil(kept.length / 40);
  return { call, args: kept.filter((_, i) => i % step === 0).map((one) => [one]) };
}

const hasSupply = (input: object): boolean => "supply" in input;

const ofBondmil: Readonly<Record<string, Entry>> = {
  amend: { call: bondmil.amend, args: [[code, ...amendments]] },
  ampacityOf: { call: bondmil.ampacityOf, args: [["2023", "600 kcmil", "aluminum", 75]] },
  areaOf: { call: bondmil.areaOf, args: [["1/0 AWG"]] },
  arrangeElectrodeConductors: {
    call: bondmil.arrangeElectrodeConductors,
    args: [
      [{ code, of: "service", conductor: copper, electrodes, enclosures, wireway: { id: "W1", supply } }],
      [{ code, of: "separately-derived", conductor: copper, electrodes, systems: enclosures }],
    ],
  },
  arrangeRacewayJumpers: {
    call: bondmil.arrangeRacewayJumpers,
    args: [[{ code, raceways: enclosures, jumper: copper, temperature: 75 }]],
  },
  arrangeSeparatelyDerivedSystem: {
    call: bondmil.arrangeSeparatelyDerivedSystem,
    args: [[{ code, source: { id: "T1", outdoors: false }, enclosures, jumper: copper }]],
  },
  arrangeService: { call: bondmil.arrangeService, args: [[service]] },
  assumedConductors: { call: bondmil.assumedConductors, args: [["2023", supply, "copper", 75]] },
  bondingAtDesignation: { call: bondmil.bondingAtDesignation, args: [[designation]] },
  buildSchedule: { call: bondmil.buildSchedule, args: drawingArgs },
  cableTrayAsEquipmentGroundingConductor: {
    call: bondmil.cableTrayAsEquipmentGroundingConductor,
    args: [[{ code, amperes: 225, metal: "steel" }]],
  },
  checkAsHtml: { call: bondmil.checkAsHtml, args: [[check]] },
  checkInstalled: { call: bondmil.checkInstalled, args: drawingArgs },
  checkRows: { call: bondmil.checkRows, args: [[check]] },
  classifySource: { call: bondmil.classifySource, args: [[source]] },
  columnOf: { call: bondmil.columnOf, args: [["copper-clad aluminum"]] },
  compareDrawing: {
    call: bondmil.compareDrawing,
    args: [
      [{ by: "edition", drawing: shop, years: ["2011", "2023"] }],
      [{ by: "amendment", drawing: shop, amendments }],
      [{ by: "reading", drawing: shop }],
      [{ by: "arrangement", drawing: shop }],
    ],
    weight: 0.05,
  },
  compareEditions: { call: bondmil.compareEditions, args: [[editionsRequest]] },
  compareReadings: { call: bondmil.compareReadings, args: [[readingsRequest]] },
  compareSizes: { call: bondmil.compareSizes, args: [["4 AWG", "4/0 AWG"]] },
  comparisonAsHtml: { call: bondmil.comparisonAsHtml, args: compared.map((one) => [one]), weight: 0.1 },
  comparisonRows: { call: bondmil.comparisonRows, args: compared.map((one) => [one]), weight: 0.1 },
  correspondingSum: { call: bondmil.correspondingSum, args: [[supply], [phased]] },
  "drawingStandardSchema.validate": {
    call: bondmil.drawingStandardSchema["~standard"].validate,
    args: drawingArgs,
  },
  explain: { call: bondmil.explain, args: results.map((one) => [one]) },
  explainDesignation: {
    call: bondmil.explainDesignation,
    args: [[bondmil.bondingAtDesignation(designation)]],
  },
  explainShortTimeWithstand: {
    call: bondmil.explainShortTimeWithstand,
    args: [[bondmil.shortTimeWithstand(withstand)]],
  },
  explainSource: { call: bondmil.explainSource, args: [[bondmil.classifySource(source)]] },
  fingerprintOf: { call: bondmil.fingerprintOf, args: [[jumper], [[1, null, "a"]]], weight: 0.02 },
  formatArea: { call: bondmil.formatArea, args: [[1_800_000, "mm2"]] },
  formatSize: { call: bondmil.formatSize, args: [["3/0 AWG"]] },
  fromSquareInches: { call: bondmil.fromSquareInches, args: [[0.5]] },
  isConductorSize: { call: bondmil.isConductorSize, args: [["1/0 AWG"]] },
  isStandardSize: { call: bondmil.isStandardSize, args: [["1250 kcmil"]] },
  largestDeviceFor: { call: bondmil.largestDeviceFor, args: [[{ code, conductor: size }]] },
  largestSupplyFor: {
    call: bondmil.largestSupplyFor,
    args: [[{ code, role: "main-bonding-jumper", jumper: size, supplyMaterial: "copper" }]],
  },
  nextSizeDown: { call: bondmil.nextSizeDown, args: [["1/0 AWG"]] },
  nextSizeUp: { call: bondmil.nextSizeUp, args: [["4/0 AWG"]] },
  parseSize: { call: bondmil.parseSize, args: [["4/0 AWG"], ["#2"], ["250,000 cmil"], ["two aught"]] },
  pictureAsSvg: { call: bondmil.pictureAsSvg, args: [[bondmil.pictureOf(shop)]] },
  pictureOf: { call: bondmil.pictureOf, args: drawingArgs },
  ...Object.fromEntries(Object.entries(prepares).map(([name, one]) => [name, askedPrepared(one)])),
  proposalEffects: {
    call: bondmil.proposalEffects,
    args: [[{ year: "2023", amendments, drawings: [shop] }]],
    weight: 0.001,
    slow: true,
  },
  readDrawing: { call: bondmil.readDrawing, args: drawingArgs },
  rectangularBarsFor: { call: bondmil.rectangularBarsFor, args: [[375_000]] },
  reportAsHtml: { call: bondmil.reportAsHtml, args: drawingArgs, weight: 0.3 },
  reportAsMarkdown: { call: bondmil.reportAsMarkdown, args: drawingArgs, weight: 0.3 },
  requireEvidence: { call: bondmil.requireEvidence, args: results.map((one) => [one, "carried"]) },
  reserveOf: { call: bondmil.reserveOf, args: results.map((result) => [{ installed: size, result }]) },
  rowsToCsv: { call: bondmil.rowsToCsv, args: [[csvRows]] },
  scheduleRows: { call: bondmil.scheduleRows, args: [[schedule]] },
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
  sizeCommonConductorOfDerivedSystems: {
    call: bondmil.sizeCommonConductorOfDerivedSystems,
    args: [[{ code, conductor: copper, electrodes }]],
  },
  sizeElectrodeBondingJumper: sizing("electrode-bonding-jumper", bondmil.sizeElectrodeBondingJumper),
  sizeElectrodeRacewayBondingJumper: sizing(
    "electrode-raceway-bonding-jumper",
    bondmil.sizeElectrodeRacewayBondingJumper,
  ),
  sizeEquipmentBondingJumper: sizing("equipment-bonding-jumper", bondmil.sizeEquipmentBondingJumper),
  sizeEquipmentGroundingConductor: sizing(
    "equipment-grounding-conductor",
    bondmil.sizeEquipmentGroundingConductor,
  ),
  sizeGroundedConductor: sizing("grounded-conductor", bondmil.sizeGroundedConductor),
  sizeGroundingElectrodeConductor: sizing(
    "grounding-electrode-conductor",
    bondmil.sizeGroundingElectrodeConductor,
    hasSupply,
  ),
  sizeImpedanceBondingJumper: sizing("impedance-bonding-jumper", bondmil.sizeImpedanceBondingJumper),
  sizeImpedanceGroundingConductor: sizing(
    "impedance-grounding-conductor",
    bondmil.sizeImpedanceGroundingConductor,
  ),
  sizeIntersystemBondingConductor: sizing(
    "intersystem-bonding-conductor",
    bondmil.sizeIntersystemBondingConductor,
  ),
  sizeMainBondingJumper: sizing("main-bonding-jumper", bondmil.sizeMainBondingJumper),
  sizeOtherPipingBondingJumper: sizing("other-piping-bonding-jumper", bondmil.sizeOtherPipingBondingJumper),
  sizeStructuralMetalBondingJumper: sizing(
    "structural-metal-bonding-jumper",
    bondmil.sizeStructuralMetalBondingJumper,
  ),
  sizeSupplySideBondingJumper: sizing("supply-side-bonding-jumper", bondmil.sizeSupplySideBondingJumper),
  sizeSystemBondingJumper: sizing("system-bonding-jumper", bondmil.sizeSystemBondingJumper),
  sizeWaterPipingBondingJumper: sizing("water-piping-bonding-jumper", bondmil.sizeWaterPipingBondingJumper),
  smallestConductorFor: { call: bondmil.smallestConductorFor, args: [["2023", 340, "aluminum", 75]] },
  standardSizeFor: { call: bondmil.standardSizeFor, args: [[225_000]] },
  sumOfLargest: { call: bondmil.sumOfLargest, args: [[supply], [phased]] },
  suppliesForLoad: {
    call: bondmil.suppliesForLoad,
    args: [[{ year: "2023", amperes: 760, material: "copper", mostSets: 3, column: 75 }]],
  },
  sweepRating: { call: bondmil.sweepRating, args: [[ratingRequest]] },
  sweepSupplyArea: { call: bondmil.sweepSupplyArea, args: [[supplyRequest]], weight: 0.2 },
  toSquareInches: { call: bondmil.toSquareInches, args: [[250_000]] },
  toSquareMillimetres: { call: bondmil.toSquareMillimetres, args: [[250_000]] },
  transformerCurrent: { call: bondmil.transformerCurrent, args: [[{ kva: 112.5, volts: 208, phases: 3 }]] },
  weakestEvidence: { call: bondmil.weakestEvidence, args: [[["single", "carried"]]] },
  writeArrangements: { call: bondmil.writeArrangements, args: [[bondmil.arrangeService(service), "Shop"]] },
  writeCheck: { call: bondmil.writeCheck, args: [[check]] },
  writeCheckMarkdown: { call: bondmil.writeCheckMarkdown, args: [[check]] },
  writeComparison: { call: bondmil.writeComparison, args: compared.map((one) => [one, 100]), weight: 0.1 },
  writeComparisonMarkdown: {
    call: bondmil.writeComparisonMarkdown,
    args: compared.map((one) => [one]),
    weight: 0.1,
  },
  writeEditions: { call: bondmil.writeEditions, args: [[bondmil.compareEditions(editionsRequest), "Riser"]] },
  writeReadings: { call: bondmil.writeReadings, args: [[bondmil.compareReadings(readingsRequest), "Kiosk"]] },
  writeSchedule: { call: bondmil.writeSchedule, args: [[schedule]] },
  writeScheduleMarkdown: { call: bondmil.writeScheduleMarkdown, args: [[schedule]] },
};

const ofCorpus: Readonly<Record<string, Entry>> = {
  corpusCases: { call: corpusCases, args: [[filter]], weight: 0.2 },
  implementationOf: { call: implementationOf, args: [[{ ...bondmil }]] },
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
  return [name === "drawingSchema" ? name : `${name}.validate`];
}
