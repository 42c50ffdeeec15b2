import { readFileSync } from "node:fs";
import {
  type ConductorSize,
  type EditionYear,
  editionYears,
  InputError,
  type Installation,
  type Issue,
  type Material,
  materials,
  readInstallation,
  standardSizes,
} from "bondmil";
import fc from "fast-check";

/** The demo installations by name. */
export const demoNames = ["shop", "cold-store", "print-works"] as const;

export function demo(name: (typeof demoNames)[number]): Installation {
  const url = new URL(`../../docs/installations/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(url, "utf8")) as Installation;
}

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type Run = Service["runs"][number];
type SupplySets = { sets: { count: number; size: "500 kcmil"; material: Material }[] };

export const copper = { sets: [{ count: 1, size: "500 kcmil" as const, material: "copper" as const }] };

export function setsOf(count: number, size: Run["id"], material: Material = "copper"): SupplySets {
  return { sets: [{ count, size: size as "500 kcmil", material }] };
}

/** An installation around its parts, all of copper. */
export function installation(parts: Partial<Installation>, year: EditionYear = "2023"): Installation {
  return {
    format: 1,
    title: "Test",
    code: { year },
    materials: {
      bondingJumpers: "copper",
      groundedConductors: "copper",
      electrodeConductors: "copper",
      equipmentGrounding: "copper",
    },
    ...parts,
  };
}

/** A service with one disconnect on one run, and what is changed of it. */
export function service(parts: Partial<Service> = {}): Service {
  return {
    id: "S1",
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    utility: { id: "U1", outdoorTransformer: false },
    runs: [
      {
        id: "R1",
        from: "U1",
        to: "D1",
        supply: { sets: [...copper.sets] },
        raceways: { count: 1, kind: "nonmetallic" },
      },
    ],
    disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 400 }],
    housing: "separate-enclosures",
    electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
    ...parts,
  };
}

/** A derived system with one disconnect, and what is changed of it. */
export function derived(parts: Partial<Derived> = {}): Derived {
  return {
    id: "X1",
    source: { id: "T1", kind: "transformer", outdoors: false },
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    runs: [
      {
        id: "Y1",
        from: "T1",
        to: "P1",
        supply: { sets: [...copper.sets] },
        raceways: { count: 1, kind: "nonmetallic" },
      },
    ],
    disconnects: [{ id: "P1", amperes: 400 }],
    jumperAt: "source",
    electrodes: [{ id: "G1", kind: "structural-metal", from: "T1" }],
    ...parts,
  };
}

/** Codes and paths of what is refused; empty for an installation that is read. */
export function refused(source: unknown): readonly (readonly [Issue["code"], string])[] {
  try {
    readInstallation(source);
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => [code, path]);
    throw error;
  }
}

const material = fc.constantFrom(...materials);
const sized = fc.constantFrom(
  ...standardSizes.filter((one) => !one.startsWith("18") && !one.startsWith("16")),
);
const year = fc.constantFrom(...editionYears);

const anySupply = (parts: number): fc.Arbitrary<Run["supply"]> => {
  const count = fc.integer({ min: 1, max: 3 }).map((n) => n * parts);
  const conductor = fc.record({ size: sized, material });
  const uniform = fc.record({ count, size: sized, material });
  const phased = fc.record({
    count,
    phases: fc
      .array(fc.option(conductor, { freq: 6 }), { minLength: 3, maxLength: 3 })
      .filter((one) => one.some((phase) => phase !== null)),
  });
  const sets = fc.array(fc.oneof(uniform, uniform, phased), { minLength: 1, maxLength: 3 });
  const forLoad = fc
    .record({ amperes: fc.integer({ min: 20, max: 300 }), material, sets: fc.constant(parts) })
    .map(({ amperes, material: metal, sets: n }) => ({
      forLoad: { amperes: n === 1 ? amperes : amperes * n + 150 * n, material: metal, sets: n },
    }))
    .filter(({ forLoad: { amperes, sets: n } }) => amperes / n <= 450)
    .chain(({ forLoad: load }) =>
      fc
        .option(fc.integer({ min: load.amperes, max: load.amperes + 60 }), { nil: undefined })
        .map((circuitAmperes) => ({ forLoad: { ...load, ...(circuitAmperes && { circuitAmperes }) } })),
    );
  return fc.oneof(
    { weight: 5, arbitrary: sets.map((list) => ({ sets: list })) },
    { weight: parts === 1 ? 1 : 0, arbitrary: forLoad },
  );
};

/** A run of a service, whose metal raceways may be bonded by fittings instead. */
function anyServiceRun(...[id, from, to, hasNeutral]: Parameters<typeof anyRun>): fc.Arbitrary<Run> {
  return fc
    .tuple(anyRun(id, from, to, hasNeutral), fc.boolean())
    .map(([one, fittings]) =>
      fittings && one.raceways !== undefined && one.raceways.kind !== "nonmetallic"
        ? { ...one, racewayJumpers: "fittings-instead" }
        : one,
    );
}

function anyRun(id: string, from: string, to: string, hasNeutral: boolean): fc.Arbitrary<Run> {
  return fc.integer({ min: 1, max: 4 }).chain((count) =>
    fc.record(
      {
        id: fc.constant(id),
        from: fc.constant(from),
        to: fc.constant(to),
        supply: anySupply(count),
        raceways: fc.record({
          count: fc.constant(count),
          kind: fc.constantFrom("nonflexible-metal", "flexible-metal", "nonmetallic", "unknown"),
        }),
        racewayJumpers: fc.constantFrom("per-raceway", "common"),
        ...(hasNeutral && {
          load: fc.record({
            amperes: fc.integer({ min: 0, max: 100 }),
            circuitAmperes: fc.constantFrom(60, 100, 200),
          }),
        }),
        lengthFeet: fc.double({ min: 0.001, max: 1e5, noNaN: true }),
      },
      { requiredKeys: ["id", "from", "to", "supply", "raceways"] },
    ),
  ) as fc.Arbitrary<Run>;
}

const groundings = fc.constantFrom(
  { grounding: "solidly-grounded", connection: "three-phase-wye" } as const,
  { grounding: "solidly-grounded", connection: "high-leg-delta" } as const,
  { grounding: "ungrounded", connection: "three-phase-delta" } as const,
  {
    grounding: "impedance",
    connection: "three-phase-wye",
    impedance: { amperes: 5, electrodeConductorAt: "first-disconnect" },
  } as const,
  {
    grounding: "impedance",
    connection: "three-phase-wye",
    impedance: { amperes: 60, electrodeConductorAt: "impedance" },
  } as const,
);

const kinds = ["rod", "plate", "concrete-encased", "metal-water-pipe", "structural-metal", "other"] as const;

/** Electrodes that hang on a place or on each other. */
function anyElectrodes(prefix: string, places: readonly string[]): fc.Arbitrary<Service["electrodes"]> {
  const entry = fc.record({
    kind: fc.constantFrom(...kinds, "ring" as const),
    place: fc.nat(),
    ferrousRaceway: fc.boolean(),
    ohms: fc.constantFrom(20, 40),
    route: fc.record(
      {
        cover: fc.constantFrom("bare" as const, "insulated" as const),
        against: fc.constant(["concrete" as const]),
        outdoorEnd: fc.constant({ inchesAboveEarth: 12 }),
        exposedToDamage: fc.boolean(),
      },
      { requiredKeys: [] },
    ),
  });
  return fc.array(entry, { maxLength: 4 }).map((entries) =>
    entries.map(({ kind, place, ferrousRaceway, ohms, route }, i) => {
      const starts = [...places, ...entries.slice(0, i).map((_, before) => `${prefix}${before}`)];
      const from = starts[place % starts.length] ?? "";
      const ring = kind === "ring" ? { ringConductor: "2/0 AWG" as const } : {};
      const measured = kind === "rod" ? { ohms } : {};
      return { id: `${prefix}${i}`, kind, from, ferrousRaceway, route, ...measured, ...ring };
    }),
  );
}

function anyService(n: number): fc.Arbitrary<Service> {
  const count = fc.integer({ min: 1, max: 3 });
  return fc
    .record({ count, ground: groundings, hasCommon: fc.boolean() })
    .chain((shape) => {
      const hasNeutral = shape.ground.grounding === "solidly-grounded";
      const bonds = hasNeutral ? (["jumper", "grounded-conductor"] as const) : (["jumper"] as const);
      const ids = Array.from({ length: shape.count }, (_, i) => `S${n}D${i}`);
      const common = `S${n}C`;
      const places = [`S${n}W`, ...ids, ...(shape.hasCommon ? [common] : [])];
      return fc.record({
        id: fc.constant(`S${n}`),
        grounding: fc.constant(shape.ground.grounding),
        connection: fc.constant(shape.ground.connection),
        ...("impedance" in shape.ground && { impedance: fc.constant({ ...shape.ground.impedance }) }),
        utility: fc.record({ id: fc.constant(`S${n}U`), outdoorTransformer: fc.boolean() }),
        boxes: fc.tuple(
          fc.record({
            id: fc.constant(`S${n}W`),
            kind: fc.constantFrom("wireway", "meter", "gutter"),
            bondedBy: fc.constantFrom(...bonds),
          }),
        ),
        runs: fc.tuple(
          anyServiceRun(`S${n}R`, `S${n}U`, `S${n}W`, hasNeutral),
          ...ids.map((id) => anyServiceRun(`${id}R`, `S${n}W`, id, hasNeutral)),
        ),
        disconnects: fc.tuple(
          ...ids.map((id, i) =>
            fc
              .constantFrom(
                ...(i === 0 ? [] : (["meter-disconnect", "supply-side-source"] as const)),
                "service-disconnect" as const,
              )
              .map((designation) => ({
                id,
                designation,
                amperes: 200,
                ...(designation === "meter-disconnect" && { bondedBy: "jumper" as const }),
              })),
          ),
        ),
        housing: fc.constantFrom("separate-enclosures", "listed-assembly"),
        ...(shape.hasCommon && { commonElectrodeConductor: fc.constant({ id: common }) }),
        electrodes: anyElectrodes(`S${n}E`, places),
      });
    })
    .map((one) =>
      (one as Service).housing === "listed-assembly" ? inOneNipple(one as Service) : one,
    ) as fc.Arbitrary<Service>;
}

/** The first two runs that have one raceway each share one of unknown material instead. */
function inOneNipple(service: Service): Service {
  const sharing = service.runs.filter(({ raceways }) => raceways?.count === 1).slice(0, 2);
  if (sharing.length < 2) return service;
  const runs = service.runs.map(({ raceways, racewayJumpers, ...run }) =>
    sharing.some(({ id }) => id === run.id)
      ? { ...run, in: `${service.id}N` }
      : { ...run, ...(raceways && { raceways }), ...(racewayJumpers && { racewayJumpers }) },
  );
  return { ...service, runs, sharedRaceways: [{ id: `${service.id}N`, kind: "unknown" }] };
}

function anyDerived(n: number): fc.Arbitrary<Derived> {
  const count = fc.integer({ min: 1, max: 2 });
  return (
    fc.record({ count, ground: groundings, hasCommon: fc.boolean() }).chain((shape) => {
      const hasNeutral = shape.ground.grounding === "solidly-grounded";
      const ids = Array.from({ length: shape.count }, (_, i) => `X${n}P${i}`);
      return fc.record({
        id: fc.constant(`X${n}`),
        source: fc.record({
          id: fc.constant(`X${n}T`),
          kind: fc.constant("transformer"),
          outdoors: fc.boolean(),
          controlTransformer: fc.boolean(),
        }),
        grounding: fc.constant(shape.ground.grounding),
        connection: fc.constant(shape.ground.connection),
        ...("impedance" in shape.ground && { impedance: fc.constant({ ...shape.ground.impedance }) }),
        runs: fc.tuple(...ids.map((id) => anyRun(`${id}R`, `X${n}T`, id, hasNeutral))),
        disconnects: fc.constant(ids.map((id) => ({ id, amperes: 200 }))),
        jumperAt: fc.constantFrom("source", "disconnects", "both-ends", "compare"),
        ...(shape.hasCommon && { commonElectrodeConductor: fc.constant({ id: "XC" }) }),
        electrodes: anyElectrodes(`X${n}E`, [`X${n}T`, ...ids, ...(shape.hasCommon ? ["XC"] : [])]),
      });
    }) as fc.Arbitrary<Derived>
  ).map(asSmallAsItsSource);
}

/** A control transformer of at most 1000 VA has small conductors and devices. */
function asSmallAsItsSource(system: Derived): Derived {
  if (system.source.controlTransformer !== true) return system;
  return {
    ...system,
    runs: system.runs.map(({ raceways, ...run }) => ({
      ...run,
      supply: setsOf(1, "14 AWG"),
      ...(raceways && { raceways: { ...raceways, count: 1 } }),
    })),
    disconnects: system.disconnects.map((one) => ({ ...one, amperes: 15 })),
  };
}

type Circuit = NonNullable<Installation["circuits"]>[number];

const device: fc.Arbitrary<Circuit["device"]> = fc.oneof<fc.Arbitrary<Circuit["device"]>[]>(
  fc.integer({ min: 15, max: 6000 }).map((amperes) => ({ amperes })),
  fc.constant({ motor: { kind: "inverse-time-or-fuse", deviceAmperes: 150 } }),
  fc.constant({ motor: { kind: "instantaneous-trip", dualElementFuseAmperes: 125 } }),
  fc.constant({ aheadOfFeeder: { amperes: 400 } }),
);

const plainSets = (
  metal: Material,
): fc.Arbitrary<{ sets: { count: number; size: ConductorSize; material: Material }[] }> =>
  fc
    .array(
      fc.record({
        count: fc.integer({ min: 1, max: 4 }),
        size: sized,
        material: fc.constant(metal),
      }),
      { minLength: 1, maxLength: 2 },
    )
    .map((sets) => ({ sets }));

function anyCircuit(n: number): fc.Arbitrary<Circuit> {
  return material.chain((metal) =>
    fc
      .record({
        device,
        conductors: plainSets(metal),
        baseline: fc.option(plainSets(metal), { nil: undefined }),
        reason: fc.constantFrom("voltage-drop" as const, "temperature-or-number" as const, "other" as const),
        wiring: fc.constantFrom(
          "raceway" as const,
          "parallel-raceways" as const,
          "tray-single-conductor" as const,
          "tray-cable" as const,
        ),
      })
      .map(({ baseline, reason, wiring, ...rest }) => ({
        id: `C${n}`,
        from: n === 0 ? "main panel" : `C${n - 1}`,
        to: `panel ${n}`,
        wiring,
        ...rest,
        ...(baseline && { increasedFrom: { conductors: baseline, reason } }),
        ...(wiring === "parallel-raceways" && { raceways: 2 }),
      })),
  );
}

/** Drawings that can be read, of every kind of system and in every edition. */
export const anyInstallation: fc.Arbitrary<Installation> = fc
  .record({
    year,
    services: fc.tuple(anyService(0)),
    derivedSystems: fc.oneof(
      fc.constant([]),
      fc.tuple(anyDerived(0)),
      fc.tuple(anyDerived(0), anyDerived(1)),
    ),
    circuits: fc.tuple(anyCircuit(0), anyCircuit(1)),
    building: anyElectrodes("B0E", ["B0"]),
    materials: fc.record({
      bondingJumpers: material,
      groundedConductors: material,
      electrodeConductors: material,
      equipmentGrounding: material,
    }),
    title: fc.string({ minLength: 1, unit: "binary", maxLength: 20 }).filter((one) => /\S/.test(one)),
  })
  .map(({ year: edition, services, derivedSystems, circuits, building, materials: metals, title }) => ({
    format: 1,
    title,
    code: { year: edition },
    materials: metals,
    existing: [{ id: "main panel" }],
    services,
    derivedSystems,
    circuits,
    loadSideConnections: [{ id: "L0", at: "panel 1" }],
    generators: [
      { id: "N0", supply: setsOf(2, "4/0 AWG"), to: "transfer switch", integralOvercurrentDevice: false },
    ],
    buildings: [{ id: "B0", circuit: "C1", onSingleBranchCircuit: false, electrodes: building }],
    piping: [
      { id: "W0", of: "S0", kind: "water" },
      { id: "W1", of: "B0", kind: "water" },
      { id: "W2", kind: "water-of-occupancy", deviceAmperes: 100 },
      { id: "W3", kind: "other", deviceAmperes: 30 },
    ],
    structuralMetal: [
      { id: "M0", of: "S0" },
      { id: "M1", of: "B0" },
    ],
    intersystem: [{ id: "I0", at: "S0W", termination: "apart" }],
  })) as fc.Arbitrary<Installation>;
