import { columnOf } from "../conductor/index.js";
import { oneOf } from "../input/one-of.js";
import { mostControlTransformerAmperes } from "../rules/small-supplies.js";
import { conductorsOf } from "../supply/sums.js";
import { coherenceOfFindings } from "./coherence-of-findings.js";
import { busFaults } from "./coherent-buses.js";
import { racewayFaults } from "./coherent-raceways.js";
import type { Installation } from "./document.js";
import type { ElectrodeEntry } from "./electrodes-of.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { feederFaults } from "./feeder-faults.js";
import { ownerIds } from "./metal-owners.js";
import { commonMaterialFaults, metalPartFaults } from "./shared-faults.js";
import { transferFaults } from "./source-faults.js";
import { hasGroundedConductor, setCountsOf } from "./supplies.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type Circuit = NonNullable<Installation["circuits"]>[number];

/** Members of an installation that contradict each other, or of which one lacks the other. */
export function coherenceFaults(installation: Installation): readonly Fault[] {
  const { services = [], derivedSystems = [], generators = [], circuits = [], buildings = [] } = installation;
  return [
    ...services.flatMap((one, i) => serviceFaults(one, ["services", i])),
    ...derivedSystems.flatMap((one, i) => derivedFaults(one, ["derivedSystems", i])),
    ...generators.flatMap(({ integralOvercurrentDevice: integral, deviceAmperes }, i) =>
      eitherOr(
        integral,
        deviceAmperes,
        ["generators", i, "deviceAmperes"],
        "the rating of the integral device",
      ),
    ),
    ...circuits.flatMap((one, i) => circuitFaults(one, ["circuits", i])),
    ...coherenceOfFindings(installation),
    ...buildings.flatMap((one, i) => [
      ...ringFaults(one.electrodes, ["buildings", i]),
      ...buildingFaults(one, installation, ["buildings", i]),
    ]),
    ...transferFaults(installation),
    ...feederFaults(installation),
    ...commonMaterialFaults(installation),
    ...metalFaults(installation, "piping"),
    ...metalFaults(installation, "structuralMetal"),
    ...(installation.intersystem ?? []).flatMap(({ termination, electrodeConductorOnBusbar: size }, i) =>
      termination === "busbar" || size === undefined
        ? []
        : [
            fault(
              "unknown-key",
              ["intersystem", i, "electrodeConductorOnBusbar"],
              "no conductor on a busbar",
              size,
              "it belongs to the termination busbar",
            ),
          ],
    ),
  ];
}

function serviceFaults(service: Service, at: Keys): readonly Fault[] {
  const isServed = service.disconnects.some(({ designation }) => designation === "service-disconnect");
  const advice = "name the disconnect that is the service disconnect";
  return [
    ...systemFaults(service, at),
    ...racewayFaults(service, at, "service"),
    ...busFaults(service, at),
    ...(isServed
      ? []
      : [fault("missing", [...at, "disconnects"], "a service disconnect", service.disconnects, advice)]),
    ...(service.boxes ?? []).flatMap(({ bondedBy }, i) => bondFaults(service, bondedBy, [...at, "boxes", i])),
    ...service.disconnects.flatMap((disconnect, i) => {
      const { designation, bondedBy } = disconnect;
      const keys = [...at, "disconnects", i];
      if (designation === "supply-side-source") return bondFaults(service, bondedBy, keys);
      return [
        ...eitherOr(
          designation !== "service-disconnect",
          bondedBy,
          [...keys, "bondedBy"],
          "what bonds a disconnect that is not service equipment",
        ),
        ...bondFaults(service, bondedBy, keys),
      ];
    }),
  ];
}

function derivedFaults(system: Derived, at: Keys): readonly Fault[] {
  const { source } = system;
  const isOdd = source.controlTransformer === true && source.kind !== "transformer";
  const keys = [...at, "source", "controlTransformer"];
  return [
    ...systemFaults(system, at),
    ...racewayFaults(system, at, "derived"),
    ...(isOdd
      ? [fault("unknown-value", keys, "false", true, "only a transformer is a control transformer")]
      : []),
    ...(source.controlTransformer === true && !isOdd ? largeControlTransformer(system, at) : []),
  ];
}

function largeControlTransformer({ disconnects }: Derived, at: Keys): readonly Fault[] {
  const most = mostControlTransformerAmperes;
  const advice = `a transformer of at most 1000 VA gives no more than ${most} A at 10 V; leave controlTransformer out, or mend the rating`;
  return disconnects.flatMap(({ amperes }, i) =>
    amperes <= most
      ? []
      : [
          fault(
            "out-of-range",
            [...at, "disconnects", i, "amperes"],
            `at most ${most} A, of a control transformer`,
            amperes,
            advice,
          ),
        ],
  );
}

function systemFaults(system: Service | Derived, at: Keys): readonly Fault[] {
  const { grounding, connection, impedance, runs, electrodes } = system;
  const isNeutral = hasGroundedConductor(system);
  return [
    ...groundingFaults(grounding, connection, [...at, "grounding"]),
    ...eitherOr(grounding === "impedance", impedance, [...at, "impedance"], "the grounding impedance"),
    ...runs.flatMap(({ load }, i) =>
      load === undefined || isNeutral
        ? []
        : [
            fault(
              "unknown-key",
              [...at, "runs", i, "load"],
              "no load of a grounded conductor",
              load,
              "this system has no grounded conductor in its runs",
            ),
          ],
    ),
    ...runs.flatMap((run, i) => unevenRaceways(run, [...at, "runs", i])),
    ...ringFaults(electrodes, at),
  ];
}

/** A delta without neutral is grounded at a phase; only a wye has a neutral point for an impedance at hand, or a delta one derived. */
function groundingFaults(
  grounding: Service["grounding"],
  connection: Service["connection"],
  keys: Keys,
): readonly Fault[] {
  const allowed: Readonly<Record<Service["connection"], readonly string[]>> = {
    "three-phase-wye": ["solidly-grounded", "impedance", "ungrounded"],
    "single-phase-three-wire": ["solidly-grounded", "ungrounded"],
    "three-phase-delta": ["grounded-phase", "impedance", "ungrounded"],
    "high-leg-delta": ["solidly-grounded", "ungrounded"],
  };
  const fitting = allowed[connection];
  if (fitting.includes(grounding)) return [];
  const advice = `a ${connection} system is not grounded so`;
  return [fault("unknown-value", keys, oneOf(fitting), grounding, advice)];
}

function bondFaults(system: Service, bondedBy: string | undefined, at: Keys): readonly Fault[] {
  if (bondedBy !== "grounded-conductor" || hasGroundedConductor(system)) return [];
  const keys = [...at, "bondedBy"];
  return [fault("unknown-value", keys, '"jumper"', bondedBy, "this system has no grounded conductor")];
}

function unevenRaceways({ raceways, supply }: Service["runs"][number], at: Keys): readonly Fault[] {
  if (raceways === undefined) return [];
  const counts = setCountsOf(supply);
  if (counts.every((count) => count % raceways.count === 0)) return [];
  const expected = `sets that ${raceways.count} raceways share evenly`;
  const keys = [...at, "raceways", "count"];
  const advice = "give raceways that differ as runs of their own";
  return [fault("unlike-raceways", keys, expected, raceways.count, advice)];
}

function ringFaults(electrodes: readonly ElectrodeEntry[] | undefined, at: Keys): readonly Fault[] {
  return (electrodes ?? []).flatMap(({ kind, ringConductor, removable }, i) => [
    ...eitherOr(
      kind === "ring",
      ringConductor,
      [...at, "electrodes", i, "ringConductor"],
      "the size of the ring's conductor",
    ),
    ...(kind === "metal-water-pipe"
      ? []
      : eitherOr(false, removable, [...at, "electrodes", i, "removable"], "a metal water pipe")),
  ]);
}

function circuitFaults(circuit: Circuit, at: Keys): readonly Fault[] {
  const { wiring, raceways, racewayServes, conductors, increasedFrom } = circuit;
  const parallel = wiring === "parallel-raceways" || wiring === "parallel-cables";
  const keys = [...at, "raceways"];
  return [
    ...(parallel && raceways === undefined
      ? [fault("missing", keys, "the number of raceways or cables", raceways, "one conductor runs in each")]
      : []),
    ...(racewayServes === true && wiring !== "raceway" && wiring !== "parallel-raceways"
      ? [fault("unknown-value", [...at, "racewayServes"], "false", true, `no raceway runs with ${wiring}`)]
      : []),
    ...(wiring === "raceway" && raceways !== undefined && raceways > 1
      ? [fault("unknown-value", keys, "one raceway", raceways, "several are parallel-raceways")]
      : []),
    ...(increasedFrom !== undefined && conductors === undefined
      ? [
          fault(
            "missing",
            [...at, "conductors"],
            "the conductors as installed",
            conductors,
            "give them beside increasedFrom",
          ),
        ]
      : []),
    ...(increasedFrom !== undefined && conductors !== undefined
      ? unlikeMaterials(conductors, increasedFrom.conductors, [...at, "increasedFrom", "conductors"])
      : []),
  ];
}

function unlikeMaterials(
  installed: NonNullable<Circuit["conductors"]>,
  baseline: NonNullable<Circuit["conductors"]>,
  keys: Keys,
): readonly Fault[] {
  const all = [...conductorsOf(installed), ...conductorsOf(baseline)];
  if (new Set(all.map(({ material }) => columnOf(material))).size <= 1) return [];
  const expected = "conductors of the material that is installed";
  return [
    fault("unlike-materials", keys, expected, baseline, "areas of different materials are not in proportion"),
  ];
}

/** A building on a feeder takes its electrode conductor's size from the feeder's conductors. */
function buildingFaults(
  { circuit: id, onSingleBranchCircuit, electrodes = [] }: NonNullable<Installation["buildings"]>[number],
  { circuits = [] }: Installation,
  at: Keys,
): readonly Fault[] {
  const circuit = circuits.find((one) => one.id === id);
  if (onSingleBranchCircuit || electrodes.length === 0) return [];
  return lacksConductors(circuit, [...at, "circuit"], "the electrode conductor goes by them");
}

function metalFaults(installation: Installation, list: "piping" | "structuralMetal"): readonly Fault[] {
  const { derivedSystems = [], buildings = [], circuits = [] } = installation;
  const excused = new Set(
    derivedSystems.filter(({ source }) => source.controlTransformer === true).map(({ id }) => id),
  );
  const feeders = new Map(buildings.map(({ id, circuit }) => [id, circuit]));
  return (installation[list] ?? []).flatMap((one, i) => {
    if (!("of" in one)) return [];
    const owners = ownerIds(one);
    const feeding = owners.flatMap((owner) => feeders.get(owner) ?? []);
    return [
      ...(one.isElectrode === true && owners.some((owner) => excused.has(owner))
        ? [
            fault(
              "unknown-value",
              [list, i, "isElectrode"],
              "false",
              true,
              "a control transformer has no electrode conductor, so that metal of it is no electrode",
            ),
          ]
        : []),
      ...metalPartFaults(installation, one, [list, i]),
      ...feeding.flatMap((feeder) =>
        lacksConductors(
          circuits.find(({ id }) => id === feeder),
          [list, i, "of"],
          "the jumper goes by them",
        ),
      ),
    ];
  });
}

function lacksConductors(circuit: Circuit | undefined, keys: Keys, advice: string): readonly Fault[] {
  if (circuit === undefined || circuit.conductors !== undefined) return [];
  return [fault("missing", keys, `conductors of circuit "${circuit.id}"`, undefined, advice)];
}

/** Notes a member that is missing where it must be given, or given where it must not. */
function eitherOr(wanted: boolean, given: unknown, keys: Keys, what: string): readonly Fault[] {
  if (wanted === (given !== undefined)) return [];
  return wanted
    ? [fault("missing", keys, what, given, "give it")]
    : [fault("unknown-key", keys, `no such member, which is for ${what}`, given, "remove it")];
}
