import type { EditionYear } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import { InputError } from "../input/input-error.js";
import { identityOf } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import { fingerprintOf } from "./fingerprint.js";
import { arrangedAsFound } from "./installed/arranged.js";
import { type Besides, judgeBesides } from "./installed/besides.js";
import type { Check, CheckedConductor, CheckVerdict } from "./installed/checked.js";
import { type Context, contextOf, contextsOf } from "./installed/context.js";
import { coverageOf, coveringNothing, refusedEditions } from "./installed/coverage.js";
import { type CheckFinding, todoOf, todos } from "./installed/finding.js";
import { type Fault, faultMaker, movesTo, secondJumper } from "./installed/judge.js";
import { type FaultOf, judgeLine } from "./installed/judge-line.js";
import { isConnection, lineIndex } from "./installed/lines.js";
import { isOfOther, type Match, matchOf } from "./installed/match.js";
import { missingFault } from "./installed/missing.js";
import { mayBeNeedless, openFault } from "./installed/open-question.js";
import type { Purposed } from "./installed/purposed.js";
import { requiredOf } from "./installed/required.js";
import { furtherConnection, secondPurposeFault } from "./installed/second-purpose-fault.js";
import type { FoundConductor } from "./installed/shape.generated.js";
import { readInstallation } from "./read-installation.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";
import { scheduleOfRead } from "./schedule-of.js";

/**
 * Holds what was found of an installation against its schedule. What was found is told by its role, by what it serves and by its place. Of every
 * conductor all that is wrong is listed, each finding with what is required, by how much it is short and what can be done. What is lawful is no
 * finding: another lawful place, another material of sufficient area, parallel grounded conductors of 1/0 AWG and larger, bonding fittings or a
 * raceway where they may serve. What is forbidden in the installation itself stands in the schedule's violations.
 *
 * @param installation - the installation, with `installed`; {@link readInstallation} reads one from text
 * @returns what is to be done, and what every conductor comes to
 * @throws {@link InputError} listing everything that is wrong in the installation, and what was found without telling which conductor it is
 *
 * @example
 * ```ts
 * import { checkOf } from "bondmil";
 * const check = checkOf({
 *   format: 1,
 *   title: "Kiosk",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 *   piping: [{ id: "gas pipe", kind: "other", deviceAmperes: 20 }],
 *   installed: {
 *     found: [{ role: "equipment-grounding-conductor", of: "C1", name: "green wire", size: "10 AWG", material: "copper" }],
 *   },
 * });
 * check.findings.map(({ todo, kind, id, shortBy }) => [todo, kind, id, shortBy]);
 * // => [
 * //   ["replace", "short", "equipment-grounding-conductor C1", 6130],
 * //   ["install", "missing", "other-piping-bonding-jumper gas pipe", null],
 * // ]
 * ```
 */
export function checkOf(installation: Installation): Check {
  return checkOfRead(readInstallation(installation));
}

/** The check of an installation that was read. */
export function checkOfRead(read: Installation): Check {
  const { installed = {} } = read;
  const isListed =
    installed.rest !== undefined || (installed.found ?? []).length + (installed.asScheduled ?? []).length > 0;
  const installation = isListed ? arrangedAsFound(read) : read;
  const schedule = scheduleOfRead(installation);
  const judged = isListed ? judgedAll(installation, schedule) : [];
  const found = judged.flatMap(({ findings }) => findings);
  const findings = todos.flatMap((todo) => found.filter((one) => one.todo === todo));
  const conductors = judged.map(({ conductor }) => conductor);
  const arranged = (installation.derivedSystems ?? [])
    .filter((one, i) => one !== read.derivedSystems?.[i])
    .map(({ id }) => id);
  const fingerprint = fingerprintOf({ schedule: schedule.fingerprint, installed, findings, conductors });
  return { isListed, findings, conductors, schedule, arrangedAsFound: arranged, fingerprint };
}

interface Judged {
  readonly conductor: CheckedConductor;
  readonly findings: readonly CheckFinding[];
}

function judgedAll(installation: Installation, schedule: Schedule): readonly Judged[] {
  const own = contextOf(installation, schedule);
  const index = lineIndex(installation, schedule);
  const match = matchOf(installation, schedule, index);
  const contexts = contextsOf(own);
  const faults = [
    ...match.faults,
    ...refusedEditions(installation, contexts),
    ...coveringNothing(installation, schedule),
  ];
  if (faults.length > 0) throw new InputError(faults);
  const contextFor = (edition: EditionYear | undefined): Context => contexts(edition) ?? own;
  const purposes = purposesOfLines(match);
  const isCovered = coverageOf(installation);
  const lines = schedule.conductors.flatMap((line) => judgedLine(line, purposes.get(line) ?? []));
  const besides = match.matched.flatMap(({ purpose, lines: known }) =>
    known === null ? [judgedBesides(purpose)] : [],
  );
  return [...lines, ...besides];

  function judgedLine(line: ScheduledConductor, all: readonly Purposed[]): readonly Judged[] {
    const [first] = all;
    const isOther = isOfOther(line, match.begun);
    if (first === undefined) {
      if (line.quantity === 0 || isOther) return [];
      return [isCovered(line) && line.open === undefined ? ofLine(own, line, "as-scheduled") : missing(line)];
    }
    const context = contextFor(first.found.edition);
    if (isOther) {
      const second = isConnection(line.role)
        ? secondJumper(context)
        : faultMaker(requiredOf(line, line.result), line.result.citation)("wrong-place", {
            remedies: movesTo(line),
          });
      return [
        withFaults(
          context,
          line,
          all,
          all.map((purpose) => ({ fault: second, purpose, context })),
        ),
      ];
    }
    const { faults, reserve, required, isNeedless } = judgeLine(line, all, contextFor);
    const connections = all.flatMap((purpose) =>
      furtherConnection(contextFor(purpose.found.edition), purpose),
    );
    const seconds = all.flatMap((purpose) => secondPurposeFault(contextFor(purpose.found.edition), purpose));
    const everything = [...connections, ...seconds, ...faults];
    if (everything.length > 0) return [withFaults(context, line, all, everything, { reserve, required })];
    const verdict = isNeedless ? "not-required" : "as-required";
    return [ofLine(context, line, verdict, { found: all.map(({ found }) => found), reserve, required })];
  }

  function missing(line: ScheduledConductor): Judged {
    const isOpen = line.alternative !== undefined && !match.begun.has(line.system ?? "");
    const alternative = isOpen ? line.alternative : undefined;
    const fault =
      isCovered(line) || mayBeNeedless(line) ? openFault(line, "install") : missingFault(own, line);
    const { conductor } = ofLine(own, line, "with-findings", { required: fault.required });
    const finding = findingOf(own, conductor, fault, null);
    const extra = alternative === undefined ? {} : { alternative };
    return { conductor: { ...conductor, ...extra }, findings: [{ ...finding, ...extra }] };
  }

  function judgedBesides(purpose: Purposed): Judged {
    const context = contextFor(purpose.found.edition);
    const besides = judgeBesides(context, index, purpose);
    const conductor = besidesOf(context, purpose, besides);
    return {
      conductor,
      findings: "fault" in besides ? [findingOf(context, conductor, besides.fault, purpose.found)] : [],
    };
  }
}

/** What was found, by the conductor of the schedule that it is, in the arrangement that was begun. */
function purposesOfLines({ matched, begun }: Match): ReadonlyMap<ScheduledConductor, readonly Purposed[]> {
  const purposes = new Map<ScheduledConductor, Purposed[]>();
  for (const { purpose, lines } of matched) {
    const line = lines?.all.find((one) => !isOfOther(one, begun)) ?? lines?.all[0];
    if (line === undefined) continue;
    const known = purposes.get(line);
    if (known === undefined) purposes.set(line, [purpose]);
    else known.push(purpose);
  }
  return purposes;
}

function withFaults(
  context: Context,
  line: ScheduledConductor,
  all: readonly Purposed[],
  faults: readonly FaultOf[],
  parts: Partial<CheckedConductor> = {},
): Judged {
  const { conductor } = ofLine(context, line, "with-findings", {
    ...parts,
    found: all.map(({ found }) => found),
  });
  return {
    conductor,
    findings: faults.map(({ fault: one, purpose, context: by }) =>
      findingOf(by, conductor, one, purpose.found),
    ),
  };
}

function ofLine(
  { judgedBy }: Context,
  line: ScheduledConductor,
  verdict: CheckVerdict,
  parts: Partial<CheckedConductor> = {},
): Judged {
  const { citation, evidence } = line.result;
  const conductor: CheckedConductor = {
    id: line.id,
    identity: identityOf(line),
    verdict,
    found: [],
    required: requiredOf(line, line.result),
    reserve: null,
    citation,
    evidence,
    judgedBy,
    ...parts,
  };
  return { conductor, findings: [] };
}

function besidesOf(
  { judgedBy }: Context,
  { found, role, of, at }: Purposed,
  besides: Besides,
): CheckedConductor {
  const citation = "fault" in besides ? besides.fault.citation : besides.permitted;
  return {
    id: [found.name ?? role, at ?? of].filter((one) => one !== undefined).join(" at "),
    identity: null,
    verdict: "fault" in besides ? "with-findings" : "not-required",
    found: [found],
    required: null,
    reserve: null,
    citation,
    evidence: null,
    judgedBy,
  };
}

function findingOf(
  { judgedBy }: Context,
  { id, identity }: CheckedConductor,
  { kind, required, shortBy, more, citation, remedies }: Fault,
  found: FoundConductor | null,
): CheckFinding {
  return {
    todo: todoOf[kind],
    kind,
    id,
    identity,
    found,
    required,
    shortBy,
    more,
    citation,
    judgedBy,
    remedies,
  };
}

/** By what a check of installed conductors is known. */
export const checkMarks: Marks<Check> = {
  findings: "list",
  conductors: "list",
  schedule: "object",
};
