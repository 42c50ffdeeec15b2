import type { Citation, CitedEvidence } from "../edition/index.js";
import type { Caution } from "../rules/caution.js";
import type { ReadingUsed } from "../rules/result.js";
import type { Change, ChangeKind, ChangeSubject, ComparedResult, Effect } from "./comparison.js";
import { type Fact, factsOf } from "./facts.js";

/**
 * What differs between two results for the same input, and why. The steps are what decided, so they are what is compared: a number
 * that follows from another one that changed is not a change of its own.
 */
export function changesBetween(before: ComparedResult, after: ComparedResult): readonly Change[] {
  const ruled = [...outcomeChange(before, after), ...factChanges(before, after)];
  const rules = withAreaExplained(before, after, ruled);
  return [
    ...rules,
    ...readingChanges(readingsOf(before), readingsOf(after)),
    ...cautionChanges(before.cautions, after.cautions),
    ...plainChange("name", nameOf(before), nameOf(after)),
    ...plainChange("evidence", evidenceOf(before), evidenceOf(after)),
  ];
}

/** Whether a change is one of the rules themselves, and not of places, names or of what is known of them. */
export function isOfRules({ kind }: Change): boolean {
  return kind === "value" || kind === "policy";
}

/** Whether two changes are about the same thing. */
export function isAbout(one: Change, other: Change): boolean {
  return one.what === other.what && one.of === other.of;
}

/** What became of the required area. */
export function effectOf(before: ComparedResult, after: ComparedResult): Effect {
  const [areaBefore, areaAfter] = [areaIn(before), areaIn(after)];
  if ((areaBefore === null) !== (areaAfter === null)) return "other-outcome";
  if (areaBefore === null || areaAfter === null) return "same";
  if (areaAfter > areaBefore) return "larger";
  return areaAfter < areaBefore ? "smaller" : "same";
}

/** How an outcome is called in a change. */
export function outcomeName({ outcome }: ComparedResult): string {
  return outcome.kind === "not-required" ? `not-required: ${outcome.why}` : outcome.kind;
}

/** Area that a result requires, in circular mils (of a tray in square inches); `null` where it requires none. */
function areaIn(result: ComparedResult): number | null {
  if ("steps" in result) return result.outcome.kind === "not-required" ? null : result.requiredArea;
  return result.outcome.kind === "permitted" ? result.outcome.least.squareInches : null;
}

/** Conductor and area only are one outcome: which of them it is follows from the area. */
function outcomeChange(before: ComparedResult, after: ComparedResult): readonly Change[] {
  const plain = (result: ComparedResult): string =>
    result.outcome.kind === "area-only" ? "conductor" : outcomeName(result);
  if (plain(before) === plain(after)) return [];
  return [
    {
      kind: "policy",
      what: "outcome",
      of: null,
      before: outcomeName(before),
      after: outcomeName(after),
      ...citedIn(before.citation, after.citation),
    },
  ];
}

function factChanges(before: ComparedResult, after: ComparedResult): readonly Change[] {
  const [old, now] = [factsOf(before), factsOf(after)];
  // Where one side requires nothing there are no steps to compare; the outcome says it all.
  if ((areaIn(before) === null) !== (areaIn(after) === null)) return [];
  const keys = [...new Set([...old.keys(), ...now.keys()])];
  const found = keys.flatMap((key) => {
    const [one, other] = [old.get(key), now.get(key)];
    if (one !== undefined && other !== undefined) return differenceOf(one, other);
    if (one !== undefined) return isHidden(one, after, now) ? [] : [presence(one, "gone")];
    return other === undefined || isHidden(other, before, old) ? [] : [presence(other, "new")];
  });
  return withFollowing(found);
}

interface Found {
  readonly change: Change;
  readonly follows: boolean;
}

/** A difference that follows from others is a matter of values where all of them are; another value under the same entry follows from none. */
function withFollowing(found: readonly Found[]): readonly Change[] {
  const own = found
    .filter(({ change, follows }) => !follows || change.kind === "value")
    .map(({ change }) => change);
  const onlyValues = own.some(({ kind }) => kind === "value") && !own.some(({ kind }) => kind === "policy");
  return found.map(({ change, follows }) => (follows && onlyValues ? { ...change, kind: "value" } : change));
}

/** What stands where the step or the rule stands that tells its place already. */
const toldWithItsStep: readonly ChangeSubject[] = [
  "quantity",
  "governs",
  "row-end",
  "threshold",
  "rating-row-end",
  "tray-area",
];

function differenceOf(one: Fact, other: Fact): readonly Found[] {
  const comparable = one.under === other.under;
  if (comparable && one.value !== other.value) return [changeOf(one, other, other.kind, other.follows)];
  const [before, after] = [one.cited.section, other.cited.section];
  if (before === after || toldWithItsStep.includes(one.what)) return [];
  const { change } = changeOf(one, other, "place");
  return [{ change: { ...change, before, after }, follows: false }];
}

function presence(fact: Fact, which: "gone" | "new"): Found {
  return which === "gone"
    ? changeOf(fact, null, "policy", fact.follows)
    : changeOf(null, fact, "policy", fact.follows);
}

/** Whether the missing fact may be in force on the other side all the same. */
function isHidden(fact: Fact, elsewhere: ComparedResult, facts: ReadonlyMap<string, Fact>): boolean {
  if (fact.shownOnlyIf === "it-is-used") return true;
  const { area = 0 } = fact;
  if (fact.shownOnlyIf === "it-limits") return area >= unlimitedArea(facts);
  // By the device, a floor is shown only where it decides.
  const byDevice = [...facts.values()].some(({ what }) => what === "rating-row");
  return fact.what === "floor" && byDevice && (areaIn(elsewhere) ?? 0) >= area;
}

/** What the rules require before caps and floors. */
function unlimitedArea(facts: ReadonlyMap<string, Fact>): number {
  const deciding = [...facts.values()].filter(({ what }) => what !== "cap" && what !== "floor");
  return Math.max(0, ...deciding.map(({ area = 0 }) => area));
}

function changeOf(
  before: Fact | null,
  after: Fact | null,
  kind: ChangeKind,
  follows: boolean | undefined = false,
): Found {
  const { what, of } = (after ?? before) as Fact;
  const change: Change = {
    kind,
    what,
    of,
    before: before?.value ?? null,
    after: after?.value ?? null,
    ...citedIn(before?.cited, after?.cited),
  };
  return { change, follows };
}

/** An area never changes without a reason: if no step tells it, the area itself is told. */
function withAreaExplained(
  before: ComparedResult,
  after: ComparedResult,
  changes: readonly Change[],
): readonly Change[] {
  const effect = effectOf(before, after);
  if (effect === "same" || changes.some(isOfRules)) return changes;
  const area: Change = {
    kind: "policy",
    what: "required-area",
    of: null,
    before: areaIn(before),
    after: areaIn(after),
    ...citedIn(before.citation, after.citation),
  };
  return [area, ...changes];
}

/** A reading that is open on one side only, or chosen otherwise. */
function readingChanges(before: readonly ReadingUsed[], after: readonly ReadingUsed[]): readonly Change[] {
  const ids = [...new Set([...before, ...after].map(({ id }) => id))];
  return ids.flatMap((id) => {
    const [old, now] = [before, after].map((used) => used.find((one) => one.id === id)?.chosen ?? null);
    return old === now ? [] : [plain("reading", "reading", id, old, now)];
  });
}

function cautionChanges(before: readonly Caution[], after: readonly Caution[]): readonly Change[] {
  const codes = [...new Set([...before, ...after].map(({ code }) => code))];
  return codes.flatMap((code): readonly Change[] => {
    const [old, now] = [before, after].map((list) => list.find((one) => one.code === code));
    const [sectionBefore, sectionAfter] = [old?.section ?? null, now?.section ?? null];
    const sections = { sectionBefore, sectionAfter };
    if (old === undefined || now === undefined) {
      const [gone, come] = [old?.code ?? null, now?.code ?? null];
      return [{ ...plain("caution", "caution", code, gone, come), ...sections }];
    }
    if (sectionBefore === sectionAfter) return [];
    return [{ ...plain("place", "caution", code, sectionBefore, sectionAfter), ...sections }];
  });
}

function plainChange(
  kind: "name" | "evidence",
  before: string | null,
  after: string | null,
): readonly Change[] {
  return before === after ? [] : [plain(kind, kind, null, before, after)];
}

function plain(
  kind: ChangeKind,
  what: Change["what"],
  of: string | null,
  before: string | null | undefined,
  after: string | null | undefined,
): Change {
  return {
    kind,
    what,
    of,
    before: before ?? null,
    after: after ?? null,
    ...citedIn(undefined, undefined),
  };
}

function readingsOf(result: ComparedResult): readonly ReadingUsed[] {
  return "readings" in result ? result.readings : [];
}

function nameOf(result: ComparedResult): string | null {
  return "name" in result ? result.name : null;
}

function evidenceOf(result: ComparedResult): CitedEvidence {
  return "evidence" in result ? result.evidence : result.citation.evidence;
}

/** The places behind a change, and what is known of them. */
export function citedIn(
  before: Citation | undefined,
  after: Citation | undefined,
): Pick<Change, "sectionBefore" | "sectionAfter" | "evidenceBefore" | "evidenceAfter"> {
  return {
    sectionBefore: before?.section ?? null,
    sectionAfter: after?.section ?? null,
    evidenceBefore: before?.evidence ?? null,
    evidenceAfter: after?.evidence ?? null,
  };
}
