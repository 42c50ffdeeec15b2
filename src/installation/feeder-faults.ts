import type { ChosenConductors } from "../supply/shape.generated.js";
import { circuitOf } from "./building-supply.js";
import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { originsOf } from "./origins.js";

type Building = NonNullable<Installation["buildings"]>[number];

/** Feeders with grounded conductors, the buildings behind them, and jumpers on the load side that contradict themselves. */
export function feederFaults(installation: Installation): readonly Fault[] {
  const {
    circuits = [],
    buildings = [],
    generators = [],
    derivedSystems = [],
    loadSideJumpers = [],
  } = installation;
  const originOf = originsOf(installation);
  return [
    ...circuits.flatMap(({ from, groundedConductor: drawn, conductors, raceways }, i) => {
      if (drawn === undefined) return [];
      const at = ["circuits", i];
      const grounding = originOf(from)?.grounding;
      return [
        ...(grounding === "ungrounded" || grounding === "impedance" ? [withoutNeutral(drawn, at)] : []),
        ...(conductors === undefined ? [lacksConductors(at)] : uneven(conductors, raceways, at)),
      ];
    }),
    ...generators.flatMap(({ supply, raceways }, i) => uneven(supply, raceways, ["generators", i])),
    ...derivedSystems.flatMap(({ source, runs }, i) =>
      source.deviceAmperes === undefined
        ? []
        : runs.flatMap(({ racewayJumpers }, n) =>
            racewayJumpers === undefined ? [] : [needless(racewayJumpers, ["derivedSystems", i, "runs", n])],
          ),
    ),
    ...buildings.flatMap((one, i) => buildingFaults(installation, one, ["buildings", i])),
    ...loadSideJumpers.flatMap(({ placed, lengthFeet }, i) =>
      placed === "outside" && lengthFeet === undefined
        ? [
            fault(
              "missing",
              ["loadSideJumpers", i, "lengthFeet"],
              "the length of a jumper outside",
              lengthFeet,
              "how long it may be is limited; give it",
            ),
          ]
        : [],
    ),
  ];
}

function withoutNeutral(drawn: unknown, at: Keys): Fault {
  const advice = "the system that it comes from has none; remove it, or mend the grounding of that system";
  return fault("unknown-key", [...at, "groundedConductor"], "no grounded conductor", drawn, advice);
}

function lacksConductors(at: Keys): Fault {
  const expected = "the ungrounded conductors that the grounded one runs with";
  return fault("missing", [...at, "conductors"], expected, undefined, "give them beside groundedConductor");
}

function needless(how: string, at: Keys): Fault {
  const expected = "no supply-side jumper of raceways behind the device of the source";
  return fault("unknown-key", [...at, "racewayJumpers"], expected, how, "remove it");
}

function uneven(
  supply: ChosenConductors | NonNullable<Installation["generators"]>[number]["supply"],
  raceways: number | undefined,
  at: Keys,
): readonly Fault[] {
  if (raceways === undefined) return [];
  const counts = "sets" in supply ? supply.sets.map(({ count }) => count) : [supply.forLoad.sets];
  if (counts.every((count) => count % raceways === 0)) return [];
  const expected = `sets that ${raceways} raceways share evenly`;
  return [fault("unlike-raceways", [...at, "raceways"], expected, raceways, "mend the sets or the raceways")];
}

function buildingFaults(installation: Installation, building: Building, at: Keys): readonly Fault[] {
  const { circuit, disconnect, existingGroundedConductor: existing, onSingleBranchCircuit } = building;
  const feeder = circuitOf(installation, building);
  const both = circuit !== undefined && disconnect !== undefined;
  const branch = [...at, "onSingleBranchCircuit"];
  return [
    ...(circuit === undefined && disconnect === undefined
      ? [
          fault(
            "missing",
            [...at, "circuit"],
            "circuit or disconnect",
            circuit,
            "say what supplies the building",
          ),
        ]
      : []),
    ...(both
      ? [
          fault(
            "unknown-key",
            [...at, "disconnect"],
            "one of circuit and disconnect",
            disconnect,
            `circuit "${circuit}" supplies it already; remove one of the two`,
          ),
        ]
      : []),
    ...(onSingleBranchCircuit && circuit === undefined && disconnect !== undefined
      ? [fault("unknown-value", branch, "false", true, "a derived system is no branch circuit")]
      : []),
    ...(existing !== undefined && onSingleBranchCircuit
      ? [
          fault(
            "unknown-value",
            branch,
            "false",
            true,
            "only a branch circuit with an equipment grounding conductor spares a building its electrodes",
          ),
        ]
      : []),
    ...(existing !== undefined && circuit === undefined
      ? [
          fault(
            "unknown-key",
            [...at, "existingGroundedConductor"],
            "no such member, which is for a building on a circuit",
            existing,
            "remove it",
          ),
        ]
      : []),
    ...(existing !== undefined && feeder !== undefined && feeder.groundedConductor === undefined
      ? [
          fault(
            "missing",
            [...at, "existingGroundedConductor"],
            `the grounded conductor of circuit "${feeder.id}"`,
            undefined,
            "give groundedConductor of the circuit, which is to be the fault path",
          ),
        ]
      : []),
  ];
}
