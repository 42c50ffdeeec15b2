import type { Installation } from "bondmil";
import type { Dice } from "../dice.js";
import { type Building, type Circuit, type Derived, isGrounded } from "../parts.js";
import { drawElectrodes } from "./electrodes.js";

const noneOfThem = {
  equipmentGroundingConductor: false,
  continuousMetalPath: false,
  groundFaultProtection: false,
} as const;

/** The breaker on a set, the jumper that its factory fitted, and the transfer switch that it feeds. */
export function withSourceDevice(dice: Dice, system: Derived): Derived {
  const { source } = system;
  if (source.controlTransformer === true) return system;
  const hasDevice = dice.chance(20);
  return {
    ...system,
    source: {
      ...source,
      ...(hasDevice && { deviceAmperes: dice.pick([60, 400, 1200]) }),
      ...(source.kind === "generator" &&
        dice.chance(30) && { factoryJumper: dice.pick(["in-place", "removed"] as const) }),
    },
    runs: hasDevice ? system.runs.map(({ racewayJumpers: _, ...run }) => run) : system.runs,
  };
}

/** Grounded conductors of feeders, transfer switches, buildings of derived systems and on re-bonded feeders, jumpers on the load side. */
export function withSources(dice: Dice, drawn: Installation): Installation {
  const { generators = [], derivedSystems = [], circuits = [], buildings = [] } = drawn;
  const owns = derivedSystems.map((system) =>
    system.source.kind === "generator" && dice.chance(40) ? { ...system, transferSwitch: "ATS own" } : system,
  );
  const transferSwitches = [
    ...(generators.some(({ to }) => to === "transfer switch")
      ? [{ id: "transfer switch", groundedConductor: "carried-through" } as const]
      : []),
    ...(owns.some(({ transferSwitch }) => transferSwitch !== undefined)
      ? [{ id: "ATS own", groundedConductor: dice.pick(["switched", "none"] as const) }]
      : []),
  ];
  const feeders = circuits.map((one) =>
    hasNeutral(drawn, one) && dice.chance(40) ? withNeutral(dice, one) : one,
  );
  const rebonded = buildings.map((one) => {
    const feeder = feeders.find(({ id }) => id === one.circuit);
    const may = feeder?.groundedConductor !== undefined && !one.onSingleBranchCircuit;
    return may && dice.chance(30)
      ? { ...one, existingGroundedConductor: { ...noneOfThem, groundFaultProtection: dice.chance(30) } }
      : one;
  });
  return {
    ...drawn,
    ...(drawn.derivedSystems && { derivedSystems: owns }),
    ...(drawn.circuits && { circuits: feeders }),
    ...(transferSwitches.length > 0 && { transferSwitches }),
    ...(drawn.buildings && { buildings: [...rebonded, ...ofDerived(dice, owns)] }),
    ...(circuits.length > 0 && dice.chance(20) && { loadSideJumpers: drawJumpers(dice, circuits) }),
  };
}

function ofDerived(dice: Dice, [first]: readonly Derived[]): readonly Building[] {
  const disconnect = first?.disconnects[0]?.id;
  if (disconnect === undefined || first?.source.controlTransformer === true || !dice.chance(20)) return [];
  const electrodes = drawElectrodes(dice, "HXE", ["HX"]);
  return [{ id: "HX", disconnect, onSingleBranchCircuit: false, electrodes }];
}

/** Whether the system that a circuit comes from is known to have a grounded conductor, or is beyond the edge of the drawing. */
function hasNeutral(drawn: Installation, { from, conductors, raceways = 1 }: Circuit): boolean {
  const { circuits = [], services = [], derivedSystems = [], buildings = [] } = drawn;
  if (conductors === undefined || conductors.sets.some(({ count }) => count % raceways !== 0)) return false;
  const own = derivedSystems.find(({ source }) => source.id === from && source.deviceAmperes !== undefined);
  const system =
    own ??
    [...services, ...derivedSystems].find(({ disconnects }) => disconnects.some(({ id }) => id === from));
  if (system !== undefined) return isGrounded(system);
  const feeder = buildings.find(({ id }) => id === from)?.circuit;
  const before = circuits.find(({ id, to }) => id === from || to === from || id === feeder);
  return before === undefined || (before.id !== from && before.from === from)
    ? true
    : hasNeutral(drawn, {
        ...before,
        conductors,
        raceways: 1,
      });
}

function withNeutral(dice: Dice, circuit: Circuit): Circuit {
  const load = { amperes: dice.pick([10, 60, 100]), circuitAmperes: dice.pick([100, 400]) };
  return { ...circuit, groundedConductor: dice.chance(50) ? { load } : {} };
}

function drawJumpers(dice: Dice, circuits: readonly Circuit[]): NonNullable<Installation["loadSideJumpers"]> {
  const isOutside = dice.chance(50);
  return [
    {
      id: "J0",
      circuits: circuits.slice(0, dice.between(1, 2)).map(({ id }) => id),
      from: "box",
      to: "machine",
      placed: isOutside ? "outside" : "inside",
      ...((isOutside || dice.chance(50)) && { lengthFeet: dice.pick([4, 9]) }),
      ...(dice.chance(40) && {
        flexibleConduit: {
          kind: dice.pick(["flexible-metal-conduit", "liquidtight-flexible-metal-conduit"] as const),
          tradeSize: dice.pick(["1/2", "1", "2"] as const),
          flexesInUse: dice.chance(30),
          lengthFeet: dice.pick([3, 8]),
        },
      }),
    },
  ];
}
