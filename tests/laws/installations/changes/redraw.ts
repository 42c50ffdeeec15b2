import type { Installation } from "bondmil";
import { type DrawnSet, type Run, racewaysOf, type System } from "../parts.js";
import { systemsOf } from "./within.js";

/** Every run of several raceways as so many runs of one raceway each. */
export function runByRun(installation: Installation): Installation {
  return eachSystem(installation, (system) => ({ runs: system.runs.flatMap(inSingleRaceways) }));
}

function inSingleRaceways(run: Run): readonly Run[] {
  const { count, kind } = racewaysOf(run);
  const { supply } = run;
  if (count === 1 || !("sets" in supply)) return [run];
  const sets = supply.sets.map((set) => ({ ...set, count: set.count / count }));
  return Array.from({ length: count }, (_, i) => ({
    ...run,
    id: `${run.id} part ${i + 1}`,
    supply: { sets },
    raceways: { count: 1, kind },
    ...(run.load && { load: { ...run.load, amperes: run.load.amperes / count } }),
  }));
}

/** Every entry of n sets as n entries, and those whose phases are alike as uniform sets. */
export function setBySet(installation: Installation): Installation {
  return eachSystem(installation, (system) => ({
    runs: system.runs.map((run) => {
      const { supply } = run;
      if (!("sets" in supply) || racewaysOf(run).count > 1) return run;
      const sets = supply.sets.flatMap((set) =>
        Array.from({ length: Math.min(set.count, 3) }, (_, i) => ({
          ...uniform(set),
          count: i === 0 ? set.count - Math.min(set.count, 3) + 1 : 1,
        })),
      );
      return sets.length > 20 ? run : { ...run, supply: { sets } };
    }),
  }));
}

function uniform(set: DrawnSet): DrawnSet {
  if (!("phases" in set)) return set;
  const [first] = set.phases;
  const isAlike = set.phases.every((one) => JSON.stringify(one) === JSON.stringify(first));
  return first && isAlike ? { count: set.count, ...first } : set;
}

/** Every uniform set of a system with its phases written out. */
export function phaseByPhase(installation: Installation): Installation {
  return eachSystem(installation, (system) => {
    const sets = system.runs.flatMap(({ supply }) => ("sets" in supply ? supply.sets : []));
    const phases = Math.max(1, ...sets.map((set) => ("phases" in set ? set.phases.length : 1)));
    const written = (set: DrawnSet): DrawnSet => {
      if ("phases" in set) return set;
      const { count, ...conductor } = set;
      return { count, phases: new Array(phases).fill(conductor) };
    };
    return {
      runs: system.runs.map((run) =>
        "sets" in run.supply ? { ...run, supply: { sets: run.supply.sets.map(written) } } : run,
      ),
    };
  });
}

function eachSystem(
  installation: Installation,
  change: (system: System) => { readonly runs: Run[] },
): Installation {
  return systemsOf(installation).reduce((so, _, i) => {
    const one = systemsOf(so)[i];
    return one === undefined ? so : one.put(change(one.system));
  }, installation);
}
