import { oneOf } from "../input/one-of.js";
import type { Installation } from "./document.js";
import type { ElectrodeEntry } from "./electrodes-of.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { hasGroundedConductor } from "./supplies.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type Building = NonNullable<Installation["buildings"]>[number];

/** Members that tell what is found on site, where they contradict what is drawn or belong to something else. */
export function coherenceOfFindings(installation: Installation): readonly Fault[] {
  const { services = [], derivedSystems = [], buildings = [] } = installation;
  return [
    ...services.flatMap((one, i) => [
      ...assemblyFaults(one, ["services", i]),
      ...runFaults(one, ["services", i]),
      ...unusedFaults(one, ["services", i]),
      ...electrodeFaults(one.electrodes, ["services", i]),
    ]),
    ...derivedSystems.flatMap((one, i) => [
      ...runFaults(one, ["derivedSystems", i]),
      ...electrodeFaults(one.electrodes, ["derivedSystems", i]),
    ]),
    ...buildings.flatMap((one, i) => [
      ...unusedFaults(one, ["buildings", i]),
      ...electrodeFaults(one.electrodes, ["buildings", i]),
    ]),
    ...connectionFaults(installation),
  ];
}

function assemblyFaults({ assembly, housing }: Service, at: Keys): readonly Fault[] {
  if (assembly === undefined || housing === "listed-assembly") return [];
  const expected = `no inside of an assembly beside housing "${housing}"`;
  const advice = 'leave it out, or make the housing "listed-assembly"';
  return [fault("unknown-key", [...at, "assembly"], expected, assembly, advice)];
}

function runFaults(system: Service | Derived, at: Keys): readonly Fault[] {
  return system.runs.flatMap(({ groundedConductors: drawn }, i): readonly Fault[] => {
    if (drawn === undefined) return [];
    const keys = [...at, "runs", i, "groundedConductors"];
    if (!hasGroundedConductor(system)) {
      const advice = "this system has no grounded conductor in its runs";
      return [fault("unknown-key", keys, "no grounded conductors", drawn, advice)];
    }
    if (drawn.existingUnderSupervision !== true || system.grounding !== "grounded-phase") return [];
    const advice = "the exception is for neutrals, and this grounded conductor is a phase";
    return [fault("unknown-value", [...keys, "existingUnderSupervision"], "false", true, advice)];
  });
}

function unusedFaults(
  { electrodesNotConnected: unused = [] }: Pick<Service | Building, "electrodesNotConnected">,
  at: Keys,
): readonly Fault[] {
  return unused.flatMap(({ kind, steelNotAccessible }, i) => {
    if (steelNotAccessible !== true || kind === "concrete-encased") return [];
    const keys = [...at, "electrodesNotConnected", i, "steelNotAccessible"];
    const advice = `the exception is for concrete-encased electrodes, and this one is "${kind}"`;
    return [fault("unknown-value", keys, "false", true, advice)];
  });
}

const measured: readonly ElectrodeEntry["kind"][] = ["rod", "pipe", "plate"];

function electrodeFaults(electrodes: readonly ElectrodeEntry[] = [], at: Keys): readonly Fault[] {
  return electrodes.flatMap(({ kind, ohms, ferrousRaceway, route }, i) => {
    const keys = [...at, "electrodes", i];
    const { protection } = route ?? {};
    const isOdd = ferrousRaceway === true && protection !== undefined && !ferrous.includes(protection);
    return [
      ...(ohms === undefined || measured.includes(kind)
        ? []
        : [
            fault(
              "unknown-key",
              [...keys, "ohms"],
              "no resistance on record",
              ohms,
              `it counts for a rod, pipe or plate only, and this electrode is "${kind}"; leave it out`,
            ),
          ]),
      ...(isOdd
        ? [
            fault(
              "unknown-value",
              [...keys, "route", "protection"],
              oneOf(ferrous),
              protection,
              "ferrousRaceway says that a ferrous raceway is around it; mend one of the two",
            ),
          ]
        : []),
    ];
  });
}

/** What a ferrous raceway can be. */
const ferrous: readonly string[] = [
  "rigid-metal",
  "intermediate-metal",
  "electrical-metallic-tubing",
  "cable-armor",
];

/** A system bonding jumper is no load-side connection: where it is, or may be, none can be added. */
function connectionFaults({ loadSideConnections = [], derivedSystems = [] }: Installation): readonly Fault[] {
  return loadSideConnections.flatMap(({ at }, i) => {
    const system = derivedSystems.find(({ disconnects }) => disconnects.some(({ id }) => id === at));
    if (system === undefined || system.jumperAt === "source") return [];
    const expected = `a disconnect of a derived system with jumperAt "source"`;
    const advice = `jumperAt "${system.jumperAt}" of "${system.id}" puts the system bonding jumper there; leave the connection out, or put the jumper at the source`;
    return [fault("unknown-value", ["loadSideConnections", i, "at"], expected, at, advice)];
  });
}
