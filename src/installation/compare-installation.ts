import { changesBetween, effectOf } from "../comparison/changes.js";
import type { Change, CodedInput, Effect } from "../comparison/comparison.js";
import { explainedByReadings } from "../comparison/explained-by-readings.js";
import { areaOf } from "../conductor/index.js";
import { InputError, type Issue } from "../input/input-error.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import type { SizingResult } from "../rules/result.js";
import { type ConductorIdentity, identityOf, idOf, keyOf } from "./conductor-identity.js";
import { fault } from "./fault.js";
import type {
  ComparedConductor,
  ComparedEntry,
  InstallationComparison,
  InstallationVariant,
} from "./installation-comparison.js";
import { type ChangedInstallation, changedInstallations } from "./installation-variants.js";
import {
  type InstallationComparisonRequest,
  installationComparisonRequestShape,
} from "./questions/shape.generated.js";
import { readInstallation } from "./read-installation.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";
import { plainScheduleOf, scheduleOf } from "./schedule-of.js";

/**
 * Puts an installation side by side with itself: under several editions, as printed and as amended, under each other reading of an
 * open text, or with each other arrangement. Every conductor has an entry in every column, with what became of its required area and
 * why. An edition or arrangement that refuses the installation keeps its column, with the issues.
 *
 * @param request - what to compare over, and the installation
 * @returns the columns, and every conductor in each of them; plain JSON, areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the request or in the installation as it is; `out-of-range` where there would be
 *   more than 100 columns
 *
 * @example
 * ```ts
 * import { compareInstallation } from "bondmil";
 * const { variants, conductors } = compareInstallation({
 *   over: "editions",
 *   editions: ["2014", "2017", "2020"],
 *   installation: {
 *     format: 1,
 *     title: "Press hall",
 *     code: { year: "2020" },
 *     materials: {
 *       bondingJumpers: "copper",
 *       groundedConductors: "copper",
 *       electrodeConductors: "copper",
 *       equipmentGrounding: "copper",
 *     },
 *     services: [
 *       {
 *         id: "S1",
 *         grounding: "solidly-grounded",
 *         connection: "three-phase-wye",
 *         utility: { id: "vault", outdoorTransformer: false },
 *         runs: [{ id: "R1", from: "vault", to: "MSB", supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] }, raceways: { count: 6, kind: "nonmetallic" } }],
 *         disconnects: [{ id: "MSB", designation: "service-disconnect", amperes: 2000 }],
 *         housing: "separate-enclosures",
 *       },
 *     ],
 *     piping: [{ id: "cold water", of: "S1", kind: "water" }],
 *   },
 * });
 * variants.map(({ key }) => key); // => ["2014", "2017", "2020"]
 * const [pipe] = conductors.filter(({ differs }) => differs);
 * pipe?.id; // => "water-piping-bonding-jumper cold water"
 * pipe?.entries.map(({ conductor, effect }) => [conductor?.result.requiredArea, effect]);
 * // => [[167800, "first"], [375000, "larger"], [167800, "smaller"]]
 * ```
 */
export function compareInstallation(request: InstallationComparisonRequest): InstallationComparison {
  const read = readAll(request, (at) =>
    readShape<InstallationComparisonRequest>(at, installationComparisonRequestShape),
  );
  const installation = readInstallation(read.installation);
  const against = read.over === "editions" ? "before" : "first";
  const changed = changedInstallations(installation, read);
  if (changed.length > mostColumns) throw tooMany(read.over, changed.length);
  const columns = changed.map(columnOf);
  const pairs = columns.map((column, place) => ({ column, base: baseOf(columns, place, against) }));
  return {
    title: installation.title,
    over: read.over,
    against,
    variants: pairs.map(({ column, base }, place) => variantOf(column, base, columnKey(column, place))),
    conductors: conductorsIn(columns).map((one) => compared(one, pairs)),
  };
}

/** Each column is a whole schedule, so that the cost of a comparison is that of the installation times the columns. */
const mostColumns = 100;

function tooMany(over: InstallationComparisonRequest["over"], columns: number): InputError {
  const advice = "compare the services and derived systems in several installations";
  return new InputError([
    fault("out-of-range", ["installation"], `at most ${mostColumns} columns over ${over}`, columns, advice),
  ]);
}

interface Column extends ChangedInstallation {
  readonly schedule?: Schedule;
  /** Conductors of the schedule by the keys of their identities. */
  readonly named: ReadonlyMap<string, ScheduledConductor>;
  readonly refused?: readonly Issue[];
  /** The conductors of this column under another code. */
  readonly under: (code: CodedInput["code"]) => ReadonlyMap<string, ScheduledConductor>;
}

interface Pair {
  readonly column: Column;
  readonly base: Column | undefined;
}

function columnOf({ change, installation }: ChangedInstallation): Column {
  const built = new Map<string, Column["named"]>();
  const under: Column["under"] = (code) => {
    const key = JSON.stringify(code);
    const known = built.get(key) ?? byKey(plainScheduleOf(readInstallation({ ...installation, code })));
    built.set(key, known);
    return known;
  };
  try {
    const schedule = scheduleOf(installation);
    return { change, installation, under, schedule, named: byKey(schedule) };
  } catch (error) {
    if (error instanceof InputError)
      return { change, installation, under, named: new Map(), refused: error.issues };
    throw error;
  }
}

/** The column that another one is held against; a refused one is passed over. */
function baseOf(columns: readonly Column[], place: number, against: "before" | "first"): Column | undefined {
  const before = columns.slice(0, place).filter(({ schedule }) => schedule !== undefined);
  return against === "before" ? before.at(-1) : before[0];
}

/** Editions go by their year, everything else by a letter. */
function columnKey({ change }: Column, place: number): string {
  if (change.kind === "edition") return change.year;
  const letter = String.fromCharCode("A".charCodeAt(0) + (place % 26));
  return place < 26 ? letter : `${letter}${Math.floor(place / 26) + 1}`;
}

function variantOf(
  { change, installation, schedule, refused = [] }: Column,
  base: Column | undefined,
  key: string,
): InstallationVariant {
  const edition = installation.code.year;
  if (schedule === undefined) return { key, change, edition, refused };
  const { fingerprint, totals, conductors, violations, cautions } = schedule;
  return {
    key,
    change,
    edition,
    fingerprint,
    totalArea: conductors
      .filter(({ alternative }) => alternative === undefined)
      .reduce((sum, one) => sum + areaIn(one), 0),
    totals,
    violations,
    newViolations: newIn(violations, base?.schedule?.violations),
    newCautions: newIn(cautions, base?.schedule?.cautions ?? cautions),
  };
}

/** What is not in another list. */
function newIn<T>(list: readonly T[], before: readonly T[] = []): readonly T[] {
  const known = new Set(before.map((one) => JSON.stringify(one)));
  return list.filter((one) => !known.has(JSON.stringify(one)));
}

function areaIn({ quantity, result: { outcome, requiredArea } }: ScheduledConductor): number {
  return quantity * (outcome.kind === "conductor" ? areaOf(outcome.size) : requiredArea);
}

/** Every conductor that any column has, in the order in which they are met. */
function conductorsIn(columns: readonly Column[]): readonly ConductorIdentity[] {
  const all = columns.flatMap(({ schedule }) => schedule?.conductors ?? []);
  return [...new Map(all.map((one) => [keyOf(one), identityOf(one)])).values()];
}

function compared(who: ConductorIdentity, pairs: readonly Pair[]): ComparedConductor {
  const entries = pairs.map((pair) => entryOf(who, pair));
  const some = entries.find(({ conductor }) => conductor !== null)?.conductor;
  if (!some) throw new TypeError("a conductor comes from a column that has it");
  const answered = entries.filter((_, i) => pairs[i]?.column.schedule !== undefined);
  return {
    id: idOf(who),
    ...who,
    purpose: some.result.purpose,
    differs: new Set(answered.map(({ conductor }) => whatIsAsked(conductor))).size > 1,
    entries,
  };
}

function entryOf(who: ConductorIdentity, { column, base }: Pair): ComparedEntry {
  const conductor = column.named.get(keyOf(who)) ?? null;
  if (base === undefined) return { conductor, effect: "first", changes: [] };
  const before = base.named.get(keyOf(who)) ?? null;
  if (conductor === null || before === null) {
    const effect: Effect = conductor === before && column.schedule !== undefined ? "same" : "other-outcome";
    return { conductor, effect, changes: [] };
  }
  const changes = changesBetween(before.result, conductor.result);
  return {
    conductor,
    effect: effectOn(before, conductor),
    changes: column.change.kind === "edition" ? explained(who, base, column, changes) : changes,
  };
}

/** What becomes of the metal of all conductors of a line: five small ones may be more than one large. */
function effectOn(before: ScheduledConductor, after: ScheduledConductor): Effect {
  const effect = effectOf(before.result, after.result);
  if (effect === "other-outcome") return effect;
  const more = areaIn(after) - areaIn(before);
  return more === 0 ? "same" : more > 0 ? "larger" : "smaller";
}

/** Of two editions, which changes only hang on how an open text is read. */
function explained(
  who: ConductorIdentity,
  before: Column,
  after: Column,
  changes: readonly Change[],
): readonly Change[] {
  const dated = (column: Column) => {
    const { code } = column.schedule as Schedule;
    return { edition: code.year, input: { code, column }, result: sizeIn(who, { code, column }) };
  };
  return explainedByReadings((input) => sizeIn(who, input), dated(before), dated(after), changes);
}

interface AskedColumn extends CodedInput {
  readonly column: Column;
}

function sizeIn(who: ConductorIdentity, { code, column }: AskedColumn): SizingResult {
  const found = column.under(code).get(keyOf(who));
  if (found !== undefined) return found.result;
  throw new InputError([
    fault("dangling-reference", [], "a conductor of this schedule", idOf(who), "it is not drawn so"),
  ]);
}

/** The first of each, as a reader of the schedule meets it. */
function byKey({ conductors }: Pick<Schedule, "conductors">): Column["named"] {
  return new Map(conductors.map((one) => [keyOf(one), one] as const).reverse());
}

function whatIsAsked(conductor: ScheduledConductor | null): string {
  if (conductor === null) return "";
  const { quantity, result } = conductor;
  const { outcome, material } = result;
  return JSON.stringify([quantity, material, outcome.kind === "not-required" ? outcome.kind : outcome]);
}
