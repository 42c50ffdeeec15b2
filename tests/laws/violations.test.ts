import {
  type EditionYear,
  editionYears,
  type Installation,
  scheduleOf,
  type Violation,
  violationCodes,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { violationSections } from "../../src/installation/violations/sections.js";
import { derived, installation, service, setsOf } from "../installation/installations.js";

type Parts = Partial<Installation>;
type Service = NonNullable<Installation["services"]>[number];
type Electrode = Extract<NonNullable<Service["electrodes"]>[number], { readonly kind: unknown }>;

/** A cause and what takes it away; with the editions that know the violation. */
interface Case {
  readonly what: string;
  readonly code: Violation["code"];
  readonly at: readonly string[];
  readonly with: Parts;
  readonly without: readonly Parts[];
  /** Editions that have it; all of them unless told. */
  readonly in?: (year: EditionYear) => boolean;
}

const since =
  (first: EditionYear) =>
  (year: EditionYear): boolean =>
    year >= first;
const before =
  (first: EditionYear) =>
  (year: EditionYear): boolean =>
    year < first;

const of = (parts: Partial<Service>): Parts => ({ services: [service(parts)] });
const disconnects = (n: number): Service["disconnects"] =>
  Array.from({ length: n }, (_, i) => ({
    id: `D${i + 1}`,
    designation: "service-disconnect" as const,
    amperes: 400,
  }));
const runsTo = (n: number): Service["runs"] =>
  Array.from({ length: n }, (_, i) => ({
    id: `R${i + 1}`,
    from: "U1",
    to: `D${i + 1}`,
    supply: setsOf(1, "500 kcmil"),
    raceways: { count: 1, kind: "nonmetallic" },
  }));
const several = (n: number, parts: Partial<Service> = {}): Parts =>
  of({
    disconnects: disconnects(n),
    runs: runsTo(n),
    commonElectrodeConductor: { id: "C1" },
    electrodes: [{ id: "E1", kind: "concrete-encased", from: "C1" }],
    ...parts,
  });
const eachItsOwn = (electrodes: NonNullable<Service["electrodes"]>): Parts =>
  of({ disconnects: disconnects(2), runs: runsTo(2), electrodes });
const ahead = (designation: "emergency-disconnect" | "meter-disconnect"): Parts =>
  of({
    disconnects: [{ id: "M1", designation, amperes: 400, bondedBy: "jumper" }, ...disconnects(1)],
    runs: [
      { ...runsTo(1)[0], id: "R0", from: "U1", to: "M1" },
      { ...runsTo(1)[0], id: "R1", from: "M1", to: "D1" },
    ] as Service["runs"],
  });
const twoAt = (jumperAt: "both-ends" | "source"): Parts => ({
  derivedSystems: [
    derived({
      source: { id: "T1", kind: "transformer", outdoors: true },
      runs: ["P1", "P2"].map((to) => ({
        id: `to ${to}`,
        from: "T1",
        to,
        supply: setsOf(1, "500 kcmil"),
        raceways: { count: 1, kind: "nonmetallic" },
      })),
      disconnects: ["P1", "P2"].map((id) => ({ id, amperes: 400 })),
      jumperAt,
    }),
  ],
});
const assembly = (inside: NonNullable<Service["assembly"]>): Parts =>
  several(3, { housing: "listed-assembly", assembly: inside });
const run = (parts: Partial<Service["runs"][number]>): Parts =>
  of({
    runs: [
      {
        id: "R1",
        from: "U1",
        to: "D1",
        supply: setsOf(1, "500 kcmil"),
        raceways: { count: 1, kind: "nonmetallic" },
        ...parts,
      },
    ],
  });
const electrodes = (...list: readonly (Partial<Electrode> & Pick<Electrode, "kind">)[]): Parts =>
  of({ electrodes: list.map((one, i) => ({ id: `E${i + 1}`, from: "D1", ...one })) });
const small = (route: Electrode["route"], more: Partial<Electrode> = {}): Parts =>
  of({
    runs: [
      {
        id: "R1",
        from: "U1",
        to: "D1",
        supply: setsOf(1, "4 AWG"),
        raceways: { count: 1, kind: "nonmetallic" },
      },
    ],
    electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1", ...(route && { route }), ...more }],
  });
const aluminum = (route: Electrode["route"]): Parts => ({
  materials: {
    bondingJumpers: "copper",
    groundedConductors: "copper",
    electrodeConductors: "aluminum",
    equipmentGrounding: "copper",
  },
  services: [
    service({ electrodes: [{ id: "E1", kind: "structural-metal", from: "D1", ...(route && { route }) }] }),
  ],
});
const ends = (
  outdoors: boolean,
  kind: "nonmetallic" | "nonflexible-metal",
  jumperAt: "both-ends" | "source" | "disconnects",
): Parts => ({
  derivedSystems: [
    derived({
      source: { id: "T1", kind: "transformer", outdoors },
      runs: [
        { id: "Y1", from: "T1", to: "P1", supply: setsOf(1, "500 kcmil"), raceways: { count: 1, kind } },
      ],
      jumperAt,
      electrodes: [{ id: "G1", kind: "structural-metal", from: jumperAt === "disconnects" ? "P1" : "T1" }],
    }),
  ],
});
const panel = (
  exception?: NonNullable<Installation["loadSideConnections"]>[number]["exception"],
  is = true,
): Parts => ({
  ...of({}),
  circuits: [{ id: "F1", from: "D1", to: "panel", device: { amperes: 200 }, wiring: "raceway" }],
  ...(is && { loadSideConnections: [{ id: "L1", at: "panel", ...(exception && { exception }) }] }),
});
const neutral = (size: "10 AWG" | "12 AWG" | "6 AWG" | "8 AWG") => ({ size, material: "copper" as const });
const range = (changed: object = {}) =>
  panel({
    kind: "range-or-dryer",
    existingBranchCircuit: true,
    insulatedOrServiceCable: true,
    groundedConductor: neutral("10 AWG"),
    ...changed,
  });
const meter = (changed: object = {}) =>
  panel({
    kind: "meter-enclosure",
    besideServiceDisconnect: true,
    groundFaultProtection: false,
    groundedConductor: neutral("6 AWG"),
    ...changed,
  });
const oldBuilding = (changed: object = {}, is = true): Parts => ({
  ...panel(),
  circuits: [
    {
      id: "F1",
      from: "D1",
      to: "panel",
      device: { amperes: 200 },
      conductors: setsOf(1, "3/0 AWG"),
      wiring: "raceway",
      groundedConductor: {},
    },
  ],
  buildings: [
    {
      id: "barn",
      circuit: "F1",
      onSingleBranchCircuit: false,
      electrodes: [{ id: "B1", kind: "ring", ringConductor: "2 AWG", from: "barn" }],
      ...(is && {
        existingGroundedConductor: {
          equipmentGroundingConductor: false,
          continuousMetalPath: false,
          groundFaultProtection: false,
          ...changed,
        },
      }),
    },
  ],
});
/** A transformer without electrodes that is small enough for one of control circuits. */
const control = (controlTransformer: boolean): Parts => ({
  derivedSystems: [
    derived({
      source: { id: "T1", kind: "transformer", outdoors: false, controlTransformer },
      runs: [
        {
          id: "Y1",
          from: "T1",
          to: "P1",
          supply: setsOf(1, "14 AWG"),
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "P1", amperes: 15 }],
      electrodes: [],
    }),
  ],
});
/** Metal that is or is no electrode, beside a footing and what else the service is connected to. */
const frame = (
  list: "piping" | "structuralMetal",
  isElectrode: boolean,
  more: NonNullable<Service["electrodes"]> = [],
): Parts => {
  const metal = { id: "frame", of: "S1", isElectrode };
  return {
    ...of({ electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }, ...more] }),
    ...(list === "piping" ? { piping: [{ ...metal, kind: "water" }] } : { structuralMetal: [metal] }),
  };
};
const shed = (parts: Partial<NonNullable<Installation["buildings"]>[number]>): Parts => ({
  ...of({}),
  circuits: [
    {
      id: "F1",
      from: "D1",
      to: "shed",
      device: { amperes: 20 },
      conductors: setsOf(1, "12 AWG"),
      wiring: "raceway",
    },
  ],
  buildings: [{ id: "shed", circuit: "F1", onSingleBranchCircuit: false, ...parts }],
});
const steelFrom = (from: string): NonNullable<Service["electrodes"]> => [
  { id: "G1", kind: "structural-metal", from },
];
type FactoryJumper = "in-place" | "removed" | undefined;
const generator = (factoryJumper: FactoryJumper): Parts => ({
  generators: [
    {
      id: "G1",
      supply: setsOf(1, "500 kcmil"),
      to: "ATS",
      integralOvercurrentDevice: true,
      deviceAmperes: 400,
      ...(factoryJumper && { factoryJumper }),
    },
  ],
  transferSwitches: [{ id: "ATS", groundedConductor: "carried-through" }],
});
const factory = (factoryJumper: FactoryJumper, jumperAt: "disconnects" | "source"): Parts => ({
  derivedSystems: [
    derived({
      source: {
        id: "T1",
        kind: "transformer",
        outdoors: false,
        ...(factoryJumper && { factoryJumper }),
      },
      jumperAt,
      electrodes: steelFrom(jumperAt === "source" ? "T1" : "P1"),
    }),
  ],
});
const outside = (parts: Partial<NonNullable<Installation["loadSideJumpers"]>[number]>): Parts => ({
  ...of({}),
  circuits: [{ id: "F1", from: "D1", to: "panel", device: { amperes: 200 }, wiring: "raceway" }],
  loadSideJumpers: [{ id: "J1", circuits: ["F1"], from: "D1", to: "panel", placed: "outside", ...parts }],
});
const impedance = (electrodeConductorAt: "first-disconnect" | "impedance", from: "D1" | "Z1"): Parts =>
  of({
    grounding: "impedance",
    impedance: { id: "Z1", amperes: 10, electrodeConductorAt },
    electrodes: [{ id: "E1", kind: "concrete-encased", from }],
  });
const grounded = (size: "2 AWG" | "3 AWG" | "1/0 AWG", existingUnderSupervision?: boolean): Parts =>
  run({
    supply: setsOf(2, "500 kcmil"),
    raceways: { count: 2, kind: "nonmetallic" },
    groundedConductors: { size, ...(existingUnderSupervision && { existingUnderSupervision }) },
  });
const mixed = (size: "500 kcmil" | "600 kcmil", material: "copper" | "aluminum"): Parts =>
  run({ supply: { sets: [...setsOf(1, "500 kcmil").sets, ...setsOf(1, size, material).sets] } });

const cases: readonly Case[] = [
  {
    what: "seven disconnects",
    code: "more-than-six-disconnects",
    at: ["S1"],
    with: several(7),
    without: [several(6)],
  },
  {
    what: "several disconnects in one undivided enclosure",
    code: "disconnects-share-a-compartment",
    at: ["S1"],
    with: assembly({ compartments: "shared" }),
    without: [
      assembly({ compartments: "one-for-each" }),
      several(3),
      several(1, { housing: "listed-assembly", assembly: { compartments: "shared" } }),
    ],
    in: since("2020"),
  },
  {
    what: "the same in existing equipment",
    code: "disconnects-share-a-compartment",
    at: ["S1"],
    with: assembly({ compartments: "shared", existing: true }),
    without: [],
    in: (year) => year === "2020",
  },
  {
    what: "an emergency disconnect ahead of the service disconnect",
    code: "designation-not-in-edition",
    at: ["M1"],
    with: ahead("emergency-disconnect"),
    without: [ahead("meter-disconnect")],
    in: before("2020"),
  },
  {
    what: "jumpers at both ends of an outdoor source with several disconnects",
    code: "jumper-not-permitted-here",
    at: ["T1", "P1", "P2"],
    with: twoAt("both-ends"),
    without: [twoAt("source")],
  },
  {
    what: "jumpers at both ends of a metal raceway",
    code: "jumper-not-permitted-here",
    at: ["T1", "P1"],
    with: ends(true, "nonflexible-metal", "both-ends"),
    without: [ends(true, "nonmetallic", "both-ends"), ends(true, "nonflexible-metal", "source")],
  },
  {
    what: "jumpers at both ends of an indoor source",
    code: "jumper-not-permitted-here",
    at: ["T1", "P1"],
    with: ends(false, "nonmetallic", "both-ends"),
    without: [ends(false, "nonmetallic", "source"), ends(false, "nonmetallic", "disconnects")],
    in: since("2014"),
  },
  {
    what: "the jumper of an outdoor source in its disconnect",
    code: "jumper-not-permitted-here",
    at: ["P1"],
    with: ends(true, "nonmetallic", "disconnects"),
    without: [ends(true, "nonmetallic", "source")],
    in: since("2011"),
  },
  {
    what: "a load-side connection",
    code: "grounded-conductor-bonded-on-load-side",
    at: ["panel"],
    with: panel(),
    without: [panel(undefined, false), range(), meter(), oldBuilding()],
  },
  ...[
    range({ existingBranchCircuit: false }),
    range({ insulatedOrServiceCable: false }),
    range({ groundedConductor: neutral("12 AWG") }),
    range({ groundedConductor: { size: "10 AWG", material: "aluminum" } }),
    meter({ besideServiceDisconnect: false }),
    meter({ groundFaultProtection: true }),
    // 250.122: a device of 200 A has 6 AWG copper.
    meter({ groundedConductor: neutral("8 AWG") }),
  ].map(
    (parts, i): Case => ({
      what: `an exception with one condition unmet (${i + 1})`,
      code: "grounded-conductor-bonded-on-load-side",
      at: ["panel"],
      with: parts,
      without: [],
    }),
  ),
  {
    what: "a load-side connection at a building",
    code: "grounded-conductor-bonded-on-load-side",
    at: ["panel"],
    with: oldBuilding({}, false),
    without: [oldBuilding({ continuousMetalPath: true })],
  },
  ...["equipmentGroundingConductor", "continuousMetalPath", "groundFaultProtection"].map(
    (condition): Case => ({
      what: `an existing building that may not keep its grounded conductor (${condition})`,
      code: "grounded-conductor-rebonded",
      at: ["barn"],
      with: oldBuilding({ [condition]: true }),
      without: [oldBuilding()],
    }),
  ),
  {
    what: "parallel conductors of 1 AWG",
    code: "parallel-below-1-0",
    at: ["R1"],
    with: run({ supply: setsOf(2, "1 AWG") }),
    without: [
      run({ supply: setsOf(2, "1/0 AWG") }),
      run({ supply: setsOf(1, "1 AWG") }),
      run({ supply: setsOf(2, "1 AWG"), parallelException: "control-power" }),
      run({ supply: setsOf(2, "1 AWG"), parallelException: "high-frequency" }),
    ],
  },
  {
    what: "parallel conductors of 1 AWG to an elevator",
    code: "parallel-below-1-0",
    at: ["R1"],
    with: run({ supply: setsOf(2, "1 AWG"), parallelException: "elevator" }),
    without: [],
    in: since("2011"),
  },
  {
    what: "grounded conductors of 2 AWG in parallel",
    code: "grounded-conductors-below-1-0",
    at: ["R1"],
    with: grounded("2 AWG"),
    without: [grounded("1/0 AWG"), grounded("2 AWG", true)],
  },
  {
    what: "existing neutrals of 3 AWG in parallel",
    code: "grounded-conductors-below-1-0",
    at: ["R1"],
    with: grounded("3 AWG", true),
    without: [],
  },
  {
    what: "unlike sizes in parallel",
    code: "unlike-conductors-in-parallel",
    at: ["R1"],
    with: mixed("600 kcmil", "copper"),
    without: [mixed("500 kcmil", "copper")],
  },
  {
    what: "unlike materials in parallel",
    code: "unlike-conductors-in-parallel",
    at: ["R1"],
    with: mixed("500 kcmil", "aluminum"),
    without: [mixed("500 kcmil", "copper")],
  },
  {
    what: "a raceway that locknuts alone bond",
    code: "bonded-by-locknuts",
    at: ["R1"],
    with: run({ raceways: { count: 1, kind: "nonflexible-metal" }, racewayJumpers: "locknuts" }),
    without: [
      run({ raceways: { count: 1, kind: "nonflexible-metal" }, racewayJumpers: "fittings-instead" }),
      run({ raceways: { count: 1, kind: "nonflexible-metal" }, racewayJumpers: "common" }),
    ],
  },
  {
    what: "a single rod",
    code: "electrode-not-supplemented",
    at: ["E1"],
    with: electrodes({ kind: "rod" }),
    without: [
      electrodes({ kind: "rod" }, { kind: "rod" }),
      electrodes({ kind: "rod" }, { kind: "concrete-encased" }),
      electrodes({ kind: "rod", ohms: 25 }),
    ],
  },
  {
    what: "a single rod beside the water pipe",
    code: "electrode-not-supplemented",
    at: ["E1"],
    with: electrodes({ kind: "rod", ohms: 25.1 }, { kind: "metal-water-pipe" }),
    without: [electrodes({ kind: "rod", ohms: 20 }, { kind: "metal-water-pipe" })],
  },
  {
    what: "a water pipe alone",
    code: "water-pipe-not-supplemented",
    at: ["E1"],
    with: electrodes({ kind: "metal-water-pipe" }),
    without: [
      electrodes({ kind: "metal-water-pipe" }, { kind: "concrete-encased" }),
      electrodes({ kind: "metal-water-pipe" }, { kind: "plate" }),
    ],
  },
  {
    what: "a concrete-encased electrode that is present and unused",
    code: "electrode-not-connected",
    at: ["footing"],
    with: of({ electrodesNotConnected: [{ id: "footing", kind: "concrete-encased" }] }),
    without: [
      of({}),
      of({
        electrodesNotConnected: [{ id: "footing", kind: "concrete-encased", steelNotAccessible: true }],
      }),
    ],
  },
  {
    what: "building steel that is present and unused",
    code: "electrode-not-connected",
    at: ["steel"],
    with: of({ electrodesNotConnected: [{ id: "steel", kind: "structural-metal" }] }),
    without: [of({})],
  },
  {
    what: "building steel that is said to be an electrode and that nothing names",
    code: "electrode-not-connected",
    at: ["frame"],
    with: frame("structuralMetal", true),
    without: [
      frame("structuralMetal", false),
      frame("structuralMetal", true, [{ electrode: "frame", from: "D1" }]),
      frame("structuralMetal", true, [{ id: "E2", kind: "structural-metal", from: "D1" }]),
    ],
  },
  {
    what: "a water pipe that is said to be an electrode and that nothing names",
    code: "electrode-not-connected",
    at: ["frame"],
    with: frame("piping", true),
    without: [
      frame("piping", false),
      frame("piping", true, [{ electrode: "frame", from: "D1" }]),
      frame("piping", true, [{ id: "E2", kind: "metal-water-pipe", from: "D1" }]),
    ],
  },
  {
    what: "a service without any electrode conductor",
    code: "electrode-conductor-missing",
    at: ["S1"],
    with: of({ electrodes: [] }),
    without: [of({}), of({ electrodes: [], commonElectrodeConductor: { id: "C1" } })],
  },
  {
    what: "a derived system without any electrode conductor",
    code: "electrode-conductor-missing",
    at: ["X1"],
    with: control(false),
    without: [
      { derivedSystems: [derived()] },
      { derivedSystems: [derived({ electrodes: [], commonElectrodeConductor: { id: "C1" } })] },
      control(true),
    ],
  },
  {
    what: "a building without any electrode conductor",
    code: "electrode-conductor-missing",
    at: ["shed"],
    with: shed({}),
    without: [
      shed({ electrodes: [{ id: "B1", kind: "ring", ringConductor: "2 AWG", from: "shed" }] }),
      shed({ onSingleBranchCircuit: true }),
    ],
  },
  {
    what: "an open electrode conductor of 8 AWG",
    code: "electrode-conductor-unprotected",
    at: ["E1"],
    with: small({ protection: "none" }),
    without: [
      small(undefined),
      small({ protection: "rigid-metal" }),
      small({ protection: "cable-armor" }),
      small({}, { ferrousRaceway: true }),
      electrodes({ kind: "structural-metal", route: { protection: "none" } }),
    ],
  },
  {
    what: "a larger one that is exposed to damage",
    code: "electrode-conductor-unprotected",
    at: ["E1"],
    with: electrodes({ kind: "structural-metal", route: { protection: "none", exposedToDamage: true } }),
    without: [electrodes({ kind: "structural-metal", route: { exposedToDamage: true } })],
  },
  {
    what: "an electrode conductor of 8 AWG in Schedule 40",
    code: "electrode-conductor-unprotected",
    at: ["E1"],
    with: small({ protection: "pvc-schedule-40" }),
    without: [small({ protection: "pvc-schedule-80" })],
    in: since("2020"),
  },
  {
    what: "bare aluminum against masonry",
    code: "aluminum-not-permitted-here",
    at: ["E1"],
    with: aluminum({ cover: "bare", against: ["masonry"] }),
    without: [
      aluminum({ cover: "insulated", against: ["masonry"] }),
      aluminum({ cover: "bare" }),
      electrodes({ kind: "structural-metal", route: { cover: "bare", against: ["masonry"] } }),
    ],
    in: before("2020"),
  },
  {
    what: "covered aluminum against concrete",
    code: "aluminum-not-permitted-here",
    at: ["E1"],
    with: aluminum({ cover: "covered", against: ["concrete"] }),
    without: [aluminum({ cover: "insulated", against: ["concrete"] })],
    in: since("2020"),
  },
  {
    what: "bare aluminum where corrosion threatens",
    code: "aluminum-not-permitted-here",
    at: ["E1"],
    with: aluminum({ cover: "bare", against: ["corrosive-surroundings"] }),
    without: [aluminum({ cover: "bare" })],
  },
  {
    what: "aluminum that ends 12 in. above the earth",
    code: "aluminum-not-permitted-here",
    at: ["E1"],
    with: aluminum({ outdoorEnd: { inchesAboveEarth: 12 } }),
    without: [aluminum({ outdoorEnd: { inchesAboveEarth: 18 } })],
  },
  {
    what: "the same in a listed enclosure",
    code: "aluminum-not-permitted-here",
    at: ["E1"],
    with: aluminum({ outdoorEnd: { inchesAboveEarth: 12, inListedEnclosure: true } }),
    without: [],
    in: before("2020"),
  },
  {
    what: "one of several enclosures that no electrode conductor reaches",
    code: "electrode-conductor-missing",
    at: ["D2"],
    with: eachItsOwn([{ id: "E1", kind: "concrete-encased", from: "D1" }]),
    without: [
      several(2),
      eachItsOwn([
        { id: "E1", kind: "concrete-encased", from: "D1" },
        { electrode: "E1", from: "D2" },
      ]),
    ],
  },
  {
    what: "an electrode conductor at the disconnect, the jumper being at the source",
    code: "electrode-conductor-not-at-jumper",
    at: ["G1"],
    with: { derivedSystems: [derived({ electrodes: steelFrom("P1") })] },
    without: [
      { derivedSystems: [derived({ electrodes: steelFrom("T1") })] },
      { derivedSystems: [derived({ jumperAt: "disconnects", electrodes: steelFrom("P1") })] },
    ],
  },
  {
    what: "the factory jumper of a generator whose grounded conductor is carried through",
    code: "factory-jumper-to-be-removed",
    at: ["G1"],
    with: generator("in-place"),
    without: [generator("removed"), generator(undefined)],
  },
  {
    what: "the factory jumper of a transformer whose jumper is in its disconnect",
    code: "factory-jumper-to-be-removed",
    at: ["T1"],
    with: factory("in-place", "disconnects"),
    without: [factory("removed", "disconnects"), factory("in-place", "source")],
  },
  {
    what: "a bonding jumper of more than 6 ft outside of its raceway",
    code: "jumper-outside-too-long",
    at: ["J1"],
    with: outside({ lengthFeet: 6.5 }),
    without: [
      outside({ lengthFeet: 6 }),
      outside({ lengthFeet: 6.5, atOutdoorPole: true }),
      outside({ lengthFeet: 6.5, placed: "inside" }),
    ],
  },
  {
    what: "an electrode conductor at the disconnect that is said to start at the impedance",
    code: "electrode-conductor-not-at-impedance",
    at: ["E1"],
    with: impedance("impedance", "D1"),
    without: [impedance("impedance", "Z1"), impedance("first-disconnect", "D1")],
  },
  {
    what: "an electrode conductor at the impedance that is said to start at the disconnect",
    code: "electrode-conductor-not-at-impedance",
    at: ["E1"],
    with: impedance("first-disconnect", "Z1"),
    without: [impedance("first-disconnect", "D1")],
  },
];

function found(parts: Parts, year: EditionYear, code: Violation["code"]): readonly Violation[] {
  return scheduleOf(installation(parts, year)).violations.filter((one) => one.code === code);
}

describe.each(cases)(
  "a violation comes and goes with its cause: $what",
  ({ code, at, with: cause, without, ...rest }) => {
    it.each(editionYears)("in %s", (year) => {
      const wanted = rest.in?.(year) ?? true;
      const violations = found(cause, year, code);
      expect(violations.map((one) => one.at)).toEqual(wanted ? [at] : []);
      const sections = violationSections[code].map((one) => one[year].section);
      for (const { section, remedies } of violations) {
        expect(sections).toContain(section);
        expect(remedies.length).toBeGreaterThan(0);
      }
      for (const parts of without) expect(found(parts, year, code)).toEqual([]);
    });
  },
);

it("knows a cause of every violation but that of an amendment, which forbids a material in words of its own", () => {
  const codes = new Set([...cases.map(({ code }) => code), "material-forbidden"]);
  expect(violationCodes.filter((code) => !codes.has(code))).toEqual([]);
});
