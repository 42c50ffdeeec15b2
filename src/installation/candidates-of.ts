import type { SupplyCandidates } from "../candidates/candidate.js";
import { candidatesFor, type SupplyCandidatesQuestion } from "../candidates/supply-candidates.js";
import type { EditionYear } from "../edition/index.js";
import { InputError, type Issue } from "../input/input-error.js";
import { readShape } from "../input/read-shape.js";
import { placeIn, wholeOf } from "../input/reader.js";
import type { Electrode } from "../rules/electrode.js";
import type { Installation } from "./document.js";
import { electrodesOf } from "./electrodes-of.js";
import { dataOf, examine } from "./examine.js";
import { installationShape } from "./shape.generated.js";
import { type DrawnRun, hasGroundedConductor } from "./supplies.js";

/** The candidates of one run whose conductors are yet to be chosen. */
export interface RunCandidates {
  /** Id of the run. */
  readonly run: string;
  /** The lawful ways to supply it. */
  readonly candidates: SupplyCandidates;
}

/** The candidates of every run whose conductors are yet to be chosen. Plain JSON, sharing nothing with the installation. */
export interface InstallationCandidates {
  /** Tells the members of the union apart. */
  readonly kind: "installation-candidates";
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The runs, in the order of the installation; none where all conductors are chosen. */
  readonly runs: readonly RunCandidates[];
}

/**
 * The candidates for every run of an installation that gives a load in place of its conductors: by the code, the system, the materials and the
 * electrodes of the installation. One of them is then chosen and its sets are written in the run; a schedule waits until then.
 *
 * @param installation - an installation, as data or as JSON text, some of whose runs give `supply.toChoose`
 * @returns the candidates of each such run
 * @throws {@link InputError} listing everything that is wrong in the installation, and runs that nothing within their limits can supply
 *
 * @example
 * ```ts
 * import { candidatesOf } from "bondmil";
 * const { runs } = candidatesOf({
 *   format: 1,
 *   title: "Barn",
 *   code: { year: "2020" },
 *   materials: { bondingJumpers: "copper", groundedConductors: "copper", electrodeConductors: "copper", equipmentGrounding: "copper" },
 *   services: [
 *     {
 *       id: "S1",
 *       grounding: "solidly-grounded",
 *       connection: "single-phase-three-wire",
 *       utility: { id: "pole", outdoorTransformer: true },
 *       runs: [
 *         {
 *           id: "R1",
 *           from: "pole",
 *           to: "D1",
 *           supply: {
 *             toChoose: {
 *               load: { continuous: 0, other: 180 },
 *               device: 200,
 *               conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
 *               place: { location: "wet" },
 *               limits: { mostSets: 1 },
 *             },
 *           },
 *           raceways: { count: 1, kind: "nonmetallic" },
 *         },
 *       ],
 *       disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 200 }],
 *       housing: "separate-enclosures",
 *       electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
 *     },
 *   ],
 * });
 * runs.map(({ run, candidates }) => [run, candidates.candidates.filter((one) => one.smallestSize).map(({ size }) => size)]);
 * // => [["R1", ["3/0 AWG", "4/0 AWG"]]]
 * ```
 */
export function candidatesOf(installation: Installation | string): InstallationCandidates {
  const { data, faults } = dataOf(installation);
  if (faults.length > 0) throw new InputError(faults);
  const issues: Issue[] = [];
  const whole = wholeOf(data, issues);
  const read = readShape<Installation>(whole, installationShape);
  if (read === undefined) throw new InputError(issues);
  const runs = openRuns(read).flatMap((open): RunCandidates[] => {
    const at = placeIn(whole, open.keys, open.question);
    const candidates = candidatesFor({ ...at, value: open.question }, open.question);
    return candidates === undefined ? [] : [{ run: open.run.id, candidates }];
  });
  if (issues.length > 0) throw new InputError(issues);
  const chosen = withFirst(read, new Map(runs.map(({ run, candidates }) => [run, candidates])));
  const examined = examine(chosen);
  if (examined.faults !== null) throw new InputError(examined.faults);
  return { kind: "installation-candidates", edition: read.code.year, runs };
}

type System =
  | NonNullable<Installation["services"]>[number]
  | NonNullable<Installation["derivedSystems"]>[number];

interface OpenRun {
  readonly run: DrawnRun;
  readonly keys: readonly (string | number)[];
  readonly question: SupplyCandidatesQuestion;
}

function openRuns(installation: Installation): readonly OpenRun[] {
  const { services = [], derivedSystems = [] } = installation;
  const of = (list: "services" | "derivedSystems", systems: readonly System[]): readonly OpenRun[] =>
    systems.flatMap((system, i) =>
      system.runs.flatMap((run, n): OpenRun[] => {
        const { toChoose } = run.supply;
        if (toChoose === undefined) return [];
        const kind = list === "services" ? "service" : "separately-derived";
        const keys = [list, i, "runs", n, "supply", "toChoose"];
        return [{ run, keys, question: questionOf(installation, kind, system, run, toChoose) }];
      }),
    );
  return [...of("services", services), ...of("derivedSystems", derivedSystems)];
}

type ToChoose = NonNullable<DrawnRun["supply"]["toChoose"]>;

function questionOf(
  installation: Installation,
  kind: "service" | "separately-derived",
  system: System,
  run: DrawnRun,
  { groundedConductorCarriesCurrent = false, ...conditions }: ToChoose,
): SupplyCandidatesQuestion {
  const { code, materials } = installation;
  const isPhase = system.grounding === "grounded-phase";
  const electrodes = electrodesIn(installation, system);
  const material = run.materials?.bondingJumpers ?? materials.bondingJumpers;
  return {
    code,
    system: {
      kind,
      ungrounded: system.connection === "single-phase-three-wire" || isPhase ? 2 : 3,
      ...(hasGroundedConductor(system) && {
        grounded: {
          currentCarrying: groundedConductorCarriesCurrent || isPhase,
          ...(run.load !== undefined && !isPhase && { loadAmperes: run.load.amperes }),
        },
      }),
      ...(electrodes.length > 0 && { electrodes }),
    },
    bonding: { material: material === "copper" ? "copper" : "aluminum" },
    ...conditions,
  };
}

/** The electrodes that the conductor serves, as its role takes them. */
function electrodesIn(
  installation: Installation,
  system: System,
): NonNullable<SupplyCandidatesQuestion["system"]["electrodes"]> {
  return electrodesOf(installation, system).flatMap(({ kind, ringConductor }): Electrode[] => {
    if (kind !== "ring") return [{ kind }];
    return ringConductor === undefined ? [] : [{ kind, conductor: ringConductor }];
  });
}

/** The installation with the first candidate in place of each load, so that all else in it can be examined. */
function withFirst(installation: Installation, found: ReadonlyMap<string, SupplyCandidates>): Installation {
  const chosen = <S extends System>(system: S): S => ({
    ...system,
    runs: system.runs.map((run) => {
      const first = found.get(run.id)?.candidates[0];
      if (first === undefined) return run;
      const { raceways } = run;
      const count = first.sets / first.setsInRaceway;
      const one = { ...run, supply: first.supply };
      return raceways === undefined ? one : { ...one, raceways: { ...raceways, count } };
    }),
  });
  const { services, derivedSystems } = installation;
  return {
    ...installation,
    ...(services !== undefined && { services: services.map(chosen) }),
    ...(derivedSystems !== undefined && { derivedSystems: derivedSystems.map(chosen) }),
  };
}
