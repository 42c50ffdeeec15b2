import { changesBetween, effectOf } from "../comparison/changes.js";
import type { Change, CodedInput, Effect } from "../comparison/comparison.js";
import { explainedByReadings } from "../comparison/explained-by-readings.js";
import { areaOf } from "../conductor/index.js";
import { editionYears } from "../edition/index.js";
import { InputError, type Issue } from "../input/input-error.js";
import { member, optional, type Reader, readAll, readList, readObject, readOneOf } from "../input/reader.js";
import type { SizingResult } from "../rules/result.js";
import { buildSchedule } from "./build-schedule.js";
import type {
  ComparedConductor,
  ComparedEntry,
  DrawingComparison,
  DrawingComparisonRequest,
  DrawingVariant,
} from "./drawing-comparison.js";
import { type ChangedDrawing, changedDrawings } from "./drawing-variants.js";
import { errorOf, fault } from "./fault.js";
import { readDrawing } from "./read-drawing.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";

/**
 * Puts a whole drawing side by side with itself: under several editions, as printed and as amended, under each other reading of an
 * open text, or with each other arrangement. Every conductor has an entry in every column, with what became of its required area and
 * why. An edition or arrangement that refuses the drawing keeps its column, with the issues.
 *
 * @param request - what to compare by, and the drawing
 * @returns the columns, and every conductor in each of them; plain JSON, areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the request or in the drawing as it is; `out-of-range` where there would be
 *   more than 100 columns
 *
 * @example
 * ```ts
 * import { compareDrawing } from "bondmil";
 * const { variants, conductors } = compareDrawing({
 *   by: "edition",
 *   years: ["2014", "2017", "2020"],
 *   drawing: {
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
 *         runs: [{ id: "R1", from: "vault", to: "MSB", supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] } }],
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
export function compareDrawing(request: DrawingComparisonRequest): DrawingComparison {
  readAll(request, checkRequest);
  const drawing = readDrawing(request.drawing);
  const against = request.by === "edition" ? "before" : "first";
  const changed = changedDrawings(drawing, request);
  if (changed.length > mostColumns) throw tooMany(request.by, changed.length);
  const columns = changed.map(columnOf);
  const pairs = columns.map((column, place) => ({ column, base: baseOf(columns, place, against) }));
  return {
    title: drawing.title,
    by: request.by,
    against,
    variants: pairs.map(({ column, base }, place) => variantOf(column, base, keyOf(column, place))),
    conductors: namesIn(columns).map((name) => compared(name, pairs)),
  };
}

/** Each column is a whole schedule, so that the cost of a comparison is that of the drawing times the columns. */
const mostColumns = 100;

function tooMany(by: DrawingComparisonRequest["by"], columns: number): InputError {
  const advice = "compare the services and derived systems in several drawings";
  return errorOf([
    fault("out-of-range", ["drawing"], `at most ${mostColumns} columns by ${by}`, columns, advice),
  ]);
}

interface Column extends ChangedDrawing {
  readonly schedule?: Schedule;
  /** Conductors of the schedule by their names. */
  readonly named: ReadonlyMap<string, ScheduledConductor>;
  readonly refused?: readonly Issue[];
  /** The conductors of this column under another code. */
  readonly under: (code: CodedInput["code"]) => ReadonlyMap<string, ScheduledConductor>;
}

interface Pair {
  readonly column: Column;
  readonly base: Column | undefined;
}

type Name = Pick<ScheduledConductor, "id" | "alternative">;

function columnOf({ change, drawing }: ChangedDrawing): Column {
  const built = new Map<string, Column["named"]>();
  const under: Column["under"] = (code) => {
    const key = JSON.stringify(code);
    const known = built.get(key) ?? byName(buildSchedule({ ...drawing, code }));
    built.set(key, known);
    return known;
  };
  try {
    const schedule = buildSchedule(drawing);
    return { change, drawing, under, schedule, named: byName(schedule) };
  } catch (error) {
    if (error instanceof InputError)
      return { change, drawing, under, named: new Map(), refused: error.issues };
    throw error;
  }
}

/** The column that another one is held against; a refused one is passed over. */
function baseOf(columns: readonly Column[], place: number, against: "before" | "first"): Column | undefined {
  const before = columns.slice(0, place).filter(({ schedule }) => schedule !== undefined);
  return against === "before" ? before.at(-1) : before[0];
}

/** Editions go by their year, everything else by a letter. */
function keyOf({ change }: Column, place: number): string {
  if (change.kind === "edition") return change.year;
  const letter = String.fromCharCode("A".charCodeAt(0) + (place % 26));
  return place < 26 ? letter : `${letter}${Math.floor(place / 26) + 1}`;
}

function variantOf(
  { change, drawing, schedule, refused = [] }: Column,
  base: Column | undefined,
  key: string,
): DrawingVariant {
  const edition = drawing.code.year;
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
function namesIn(columns: readonly Column[]): readonly Name[] {
  const all = columns.flatMap(({ schedule }) => schedule?.conductors ?? []);
  const names = new Map(
    all.map(({ id, alternative }) => [nameKey({ id, alternative }), { id, alternative }]),
  );
  return [...names.values()].map(({ id, alternative }) =>
    alternative === undefined ? { id } : { id, alternative },
  );
}

function compared(name: Name, pairs: readonly Pair[]): ComparedConductor {
  const entries = pairs.map((pair) => entryOf(name, pair));
  const some = entries.find(({ conductor }) => conductor !== null)?.conductor;
  if (!some) throw new TypeError("a name comes from a column that has it");
  const answered = entries.filter((_, i) => pairs[i]?.column.schedule !== undefined);
  const { role, result } = some;
  return {
    ...name,
    role,
    purpose: result.purpose,
    differs: new Set(answered.map(({ conductor }) => whatIsAsked(conductor))).size > 1,
    entries,
  };
}

function entryOf(name: Name, { column, base }: Pair): ComparedEntry {
  const conductor = column.named.get(nameKey(name)) ?? null;
  if (base === undefined) return { conductor, effect: "first", changes: [] };
  const before = base.named.get(nameKey(name)) ?? null;
  if (conductor === null || before === null) {
    const effect: Effect = conductor === before && column.schedule !== undefined ? "same" : "other-outcome";
    return { conductor, effect, changes: [] };
  }
  const changes = changesBetween(before.result, conductor.result);
  return {
    conductor,
    effect: effectOf(before.result, conductor.result),
    changes: column.change.kind === "edition" ? explained(name, base, column, changes) : changes,
  };
}

/** Of two editions, which changes only hang on how an open text is read. */
function explained(name: Name, before: Column, after: Column, changes: readonly Change[]): readonly Change[] {
  const dated = (column: Column) => {
    const { code } = column.schedule as Schedule;
    return { edition: code.year, input: { code, column }, result: sizeIn(name, { code, column }) };
  };
  return explainedByReadings((input) => sizeIn(name, input), dated(before), dated(after), changes);
}

interface AskedColumn extends CodedInput {
  readonly column: Column;
}

function sizeIn(name: Name, { code, column }: AskedColumn): SizingResult {
  const found = column.under(code).get(nameKey(name));
  if (found !== undefined) return found.result;
  throw errorOf([
    fault("dangling-reference", [], "a conductor of this schedule", name.id, "it is not drawn so"),
  ]);
}

function nameKey({
  id,
  alternative,
}: {
  readonly id: string;
  readonly alternative?: string | undefined;
}): string {
  return JSON.stringify([id, alternative]);
}

/** The first of each name, as a reader of the schedule meets it. */
function byName({ conductors }: Schedule): Column["named"] {
  return new Map(conductors.map((one) => [nameKey(one), one] as const).reverse());
}

function whatIsAsked(conductor: ScheduledConductor | null): string {
  if (conductor === null) return "";
  const { quantity, result } = conductor;
  const { outcome, material } = result;
  return JSON.stringify([quantity, material, outcome.kind === "not-required" ? outcome.kind : outcome]);
}

const comparedBy = ["edition", "amendment", "reading", "arrangement"] as const;

function checkRequest(at: Reader): object | undefined {
  if (!readObject(at, ["by", "drawing", "years", "amendments"])) return undefined;
  const by = readOneOf(member(at, "by"), comparedBy);
  const own = by === "edition" ? ["years"] : by === "amendment" ? ["amendments"] : [];
  if (by !== undefined) readObject(at, ["by", "drawing", ...own]);
  if (by === "edition") {
    optional(member(at, "years"), (years) =>
      readList(years, (year) => readOneOf(year, editionYears), mostColumns),
    );
  }
  if (by === "amendment")
    optional(member(at, "amendments"), (list) => readList(list, (one) => one.value as object));
  return at.value as object;
}
