import { type ConductorSize, conductorSizes, type Installation } from "bondmil";
import type { Dice } from "../dice.js";
import { drawElectrode } from "../drawn/electrodes.js";
import { endOf } from "../electrodes.js";
import { type DrawnSet, type Run, racewaysOf, type System } from "../parts.js";
import type { Change } from "./change.js";
import { at, systemsOf } from "./within.js";

/** Every way to enlarge an installation by one conductor, set, run, disconnect or electrode. */
export function enlargements(installation: Installation, dice: Dice): readonly Change[] {
  return [
    ...systemsOf(installation)
      .filter(isFree)
      .flatMap(({ system, put }) => [
        ...system.runs.flatMap((run, i) => [
          ...ofSets(run, (changed) => put({ runs: at(system.runs, i, () => changed) })),
          furtherRun(system, run, put),
        ]),
        ...furtherDisconnects(system, put),
        furtherElectrode(dice, system, put),
      ]),
    ...ofCircuits(installation),
    ...ofBuildings(installation, dice),
  ];
}

/** A control transformer has no more conductors than its 1000 VA can feed. */
function isFree({ system }: { readonly system: System }): boolean {
  return !("source" in system) || system.source.controlTransformer !== true;
}

function ofSets(run: Run, put: (changed: Run) => Installation): readonly Change[] {
  const { id, supply } = run;
  if (!("sets" in supply)) return [];
  const { sets } = supply;
  const further = { count: racewaysOf(run).count, size: "4/0 AWG" as const, material: "copper" as const };
  const withSets = (changed: DrawnSet[]): Installation => put({ ...run, supply: { sets: changed } });
  return [
    ...sets.flatMap((set, i) =>
      largerSets(set).map((larger) => ({
        what: `a larger conductor in ${id}`,
        installation: withSets(at(sets, i, () => larger)),
      })),
    ),
    { what: `a further set in ${id}`, installation: withSets([...sets, further]) },
  ];
}

/** A set with its conductors, or one of its phases, one size larger. */
function largerSets(set: DrawnSet): readonly DrawnSet[] {
  if (set.phases === undefined) return larger(set.size).map((size) => ({ ...set, size }));
  return set.phases.flatMap((phase, i) =>
    phase === null
      ? []
      : larger(phase.size).map((size) => ({ ...set, phases: at(set.phases, i, () => ({ ...phase, size })) })),
  );
}

function larger(size: ConductorSize): readonly ConductorSize[] {
  return conductorSizes.slice(conductorSizes.indexOf(size) + 1).slice(0, 1);
}

function furtherRun(system: System, run: Run, put: (parts: Partial<System>) => Installation): Change {
  const twin: Run = { ...run, id: `${run.id} twin` };
  return {
    what: `a further run beside ${run.id}`,
    installation: put({ runs: [...system.runs, twin] } as Partial<System>),
  };
}

/** A disconnect like the last one, supplied from where that is. */
function furtherDisconnects(
  system: System,
  put: (parts: Partial<System>) => Installation,
): readonly Change[] {
  const { disconnects, runs } = system;
  const last = disconnects.at(-1);
  const run = runs.find(({ to }) => to === last?.id);
  if (last === undefined || run === undefined) return [];
  const twin = { ...last, id: `${last.id} twin` };
  const parts = {
    disconnects: [...disconnects, twin],
    runs: [...runs, { ...run, id: `${run.id} twin`, to: twin.id }],
  };
  return [{ what: `a further disconnect beside ${last.id}`, installation: put(parts as Partial<System>) }];
}

function furtherElectrode(dice: Dice, system: System, put: (parts: Partial<System>) => Installation): Change {
  const { id, electrodes = [], disconnects } = system;
  const starts = [...electrodes.map((one) => one.from), ...electrodes.map(endOf), disconnects[0]?.id ?? ""];
  const one = drawElectrode(dice, `${id} further`, dice.pick(starts));
  return {
    what: `a further electrode from ${one.from}`,
    installation: put({ electrodes: [...electrodes, one] }),
  };
}

/** Circuits with larger conductors or a further set, of their own material. */
function ofCircuits(installation: Installation): readonly Change[] {
  const circuits = installation.circuits ?? [];
  return circuits.flatMap(({ id, conductors }, i) => {
    const [first] = conductors?.sets ?? [];
    if (conductors === undefined || first === undefined) return [];
    const put = (sets: DrawnSet[]): Installation => ({
      ...installation,
      circuits: at(circuits, i, (one) => ({ ...one, conductors: { sets } })),
    });
    return [
      ...largerSets(first).map((set) => ({
        what: `a larger conductor in ${id}`,
        installation: put(at(conductors.sets, 0, () => set)),
      })),
      { what: `a further set in ${id}`, installation: put([...conductors.sets, first]) },
    ];
  });
}

function ofBuildings(installation: Installation, dice: Dice): readonly Change[] {
  const buildings = installation.buildings ?? [];
  return buildings.flatMap(({ id, electrodes = [], onSingleBranchCircuit }, i) => {
    if (electrodes.length === 0 || onSingleBranchCircuit) return [];
    const one = drawElectrode(dice, `${id} further`, dice.pick([id, ...electrodes.map(endOf)]));
    const put = at(buildings, i, (building) => ({ ...building, electrodes: [...electrodes, one] }));
    return [
      { what: `a further electrode from ${one.from}`, installation: { ...installation, buildings: put } },
    ];
  });
}
