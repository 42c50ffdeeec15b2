import { materials } from "bondmil";
import { type Dice, several } from "../dice.js";
import type { Building, Circuit, Generator, LoadSide } from "../parts.js";
import { drawElectrodes, drawUnused } from "./electrodes.js";
import { drawSets, drawSupply } from "./supplies.js";

/** A generator of either kind that is not separately derived. */
export function drawGenerator(dice: Dice, n: number, ends: readonly string[]): Generator {
  const integral = dice.chance(50);
  return {
    id: `N${n}`,
    supply: drawSupply(dice, { raceways: 1, phases: 3 }),
    to: dice.pick(["transfer switch", ...ends]),
    integralOvercurrentDevice: integral,
    ...(integral && { deviceAmperes: dice.pick([60, 225, 800]) }),
    ...(dice.chance(30) && { lengthFeet: 35 }),
  };
}

/** A circuit with every device, wiring and increase. */
export function drawCircuit(dice: Dice, n: number, from: string, to: string): Circuit {
  const wiring = dice.pick([
    ...(["raceway", "raceway", "parallel-raceways"] as const),
    ...(["parallel-cables", "tray-single-conductor", "tray-cable"] as const),
  ]);
  const several = wiring === "parallel-raceways" || wiring === "parallel-cables";
  const only = dice.pick(materials);
  const sets = () => ({ sets: drawSets(dice, { raceways: 1, phases: 3, only }) });
  const isGiven = dice.chance(80);
  return {
    id: `C${n}`,
    from,
    to,
    device: drawDevice(dice),
    ...(isGiven && { conductors: sets() }),
    ...(isGiven &&
      dice.chance(40) && {
        increasedFrom: {
          conductors: sets(),
          reason: dice.pick(["voltage-drop", "temperature-or-number", "other"] as const),
        },
      }),
    ...(isGiven && dice.chance(6) && { parallelException: "control-power" as const }),
    wiring,
    ...(several && { raceways: dice.between(1, 4) }),
    ...(dice.chance(30) && { lengthFeet: dice.pick([20, 90, 150]) }),
    ...(dice.chance(15) && { location: dice.pick(["roof", "pier"]) }),
    ...(/raceway/.test(wiring) && dice.chance(15) && { racewayServes: true }),
  };
}

function drawDevice(dice: Dice): Circuit["device"] {
  const amperes = dice.pick([15, 20, 30, 100, 110, 225, 400, 1000, 1200, 4000, 6000]);
  switch (dice.between(0, 5)) {
    case 0:
      return { motor: { kind: "inverse-time-or-fuse", deviceAmperes: amperes } };
    case 1:
      return { motor: { kind: "instantaneous-trip", dualElementFuseAmperes: amperes } };
    case 2:
      return { aheadOfFeeder: { amperes } };
    default:
      return { amperes };
  }
}

/** Circuits in a tree, each from a start or from an earlier one, and buildings on some of them. */
export function drawBranches(
  dice: Dice,
  starts: readonly string[],
  sources: readonly string[],
): { readonly circuits: Circuit[]; readonly buildings: Building[] } {
  const circuits: Circuit[] = [];
  const buildings: Building[] = [];
  for (const n of several(dice.pick([0, 0, 1, 2, 3]), (i) => i)) {
    const before = circuits.flatMap(({ id, to }) => (dice.chance(50) ? [id] : [to]));
    const from = dice.pick([...starts, ...before, ...buildings.map(({ id }) => id)]);
    const isFeeder = dice.chance(50);
    const building = `H${n}`;
    const free = sources.filter((one) => circuits.every(({ to }) => to !== one));
    const end = free[0] !== undefined && !isFeeder && dice.chance(30) ? free[0] : `panel ${n}`;
    const circuit = drawCircuit(dice, n, from, isFeeder && dice.chance(70) ? building : end);
    circuits.push(circuit);
    if (isFeeder) buildings.push(drawBuilding(dice, building, circuit));
  }
  return { circuits, buildings };
}

function drawBuilding(dice: Dice, id: string, { id: circuit, conductors }: Circuit): Building {
  const onSingleBranchCircuit = dice.chance(25);
  const hasElectrodes = (conductors !== undefined || onSingleBranchCircuit) && dice.chance(80);
  const electrodes = hasElectrodes ? drawElectrodes(dice, `${id}E`, [id]) : [];
  return {
    id,
    circuit,
    onSingleBranchCircuit,
    ...(dice.chance(6) && { electrodesNotConnected: drawUnused(dice, id) }),
    ...((hasElectrodes || dice.chance(50)) && { electrodes }),
  };
}

/** Connections of the grounded conductor to ground behind the circuits, with and without an exception. */
export function drawLoadSide(
  dice: Dice,
  circuits: readonly Circuit[],
  sources: readonly string[],
): LoadSide[] {
  const ends = [...new Set(circuits.map(({ to }) => to))].filter((to) => !sources.includes(to));
  return ends
    .filter(() => dice.chance(8))
    .map((at, i) => ({ id: `L${i}`, at, ...(dice.chance(60) && { exception: drawException(dice) }) }));
}

function drawException(dice: Dice): NonNullable<LoadSide["exception"]> {
  const groundedConductor = {
    size: dice.pick(["12 AWG", "10 AWG", "8 AWG", "3/0 AWG"] as const),
    material: dice.pick(materials),
  };
  switch (dice.between(0, 1)) {
    case 0:
      return {
        kind: "range-or-dryer",
        existingBranchCircuit: dice.chance(80),
        insulatedOrServiceCable: dice.chance(80),
        groundedConductor,
      };
    default:
      return {
        kind: "meter-enclosure",
        besideServiceDisconnect: dice.chance(80),
        groundFaultProtection: dice.chance(20),
        groundedConductor,
      };
  }
}
