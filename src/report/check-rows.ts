import { endWords } from "../installation/conductor-words.js";
import type { Check, CheckedConductor } from "../installation/installed/checked.js";
import type { CheckFinding } from "../installation/installed/finding.js";
import { remedyWords } from "./words/check-words.js";
import { codedCautions, codedViolations } from "./words/coded.js";
import { placedCautions } from "./words/schedule-words.js";

/** A finding, or a conductor without any, as one flat row. */
export type CheckRow = {
  readonly todo: string | null;
  readonly finding: string | null;
  readonly id: string;
  readonly verdict: string;
  /** Where arrangements are compared and none is begun, the one that it belongs to. */
  readonly alternative: string | null;
  /** What it is called where it was found. */
  readonly name: string | null;
  readonly foundQuantity: number | null;
  readonly foundSize: string | null;
  /** Circular mils of a bus. */
  readonly foundBusArea: number | null;
  readonly foundInstead: string | null;
  readonly foundMaterial: string | null;
  readonly foundAt: string | null;
  readonly requiredQuantity: number | null;
  readonly requiredSize: string | null;
  readonly requiredMaterial: string | null;
  readonly requiredFrom: string | null;
  readonly requiredTo: string | null;
  /** Circular mils of one conductor. */
  readonly requiredArea: number | null;
  /** Circular mils of one conductor. */
  readonly shortBy: number | null;
  /** How many more are required. */
  readonly more: number | null;
  /** Circular mils of one conductor; negative where it is short. */
  readonly reserve: number | null;
  readonly section: string | null;
  /** In words, with semicolons between. */
  readonly remedies: string;
  readonly evidence: string | null;
  /** The edition that judges it. */
  readonly edition: string;
  /** `installation` or `conductor`: whose edition that is. */
  readonly editionOf: string;
  /** What is forbidden or missing in what is drawn, as code, section and places, with semicolons between. */
  readonly notPermitted: string;
  /** Cautions on what is drawn and required, as code, section and place, with semicolons between. */
  readonly cautions: string;
  readonly fingerprint: string;
};

/** A check as flat rows: the findings first, then the conductors that have none; one that says so where nothing is listed. */
export function rowsOfCheck({
  isListed,
  findings,
  conductors,
  schedule,
  fingerprint,
}: Check): readonly CheckRow[] {
  const byId = new Map(conductors.map((one) => [keyOf(one), one]));
  const rest = conductors.filter(({ verdict }) => verdict !== "with-findings");
  const rows = isListed
    ? [...findings.map((one) => rowOf(byId.get(keyOf(one)), one)), ...rest.map((one) => rowOf(one, null))]
    : [nothingListed(schedule)];
  const cautions = placedCautions(schedule).flatMap(({ at, ...one }) =>
    at.map((place) => ({ ...one, at: place })),
  );
  const ofAll = {
    notPermitted: codedViolations(schedule.violations),
    cautions: codedCautions(cautions),
    fingerprint,
  };
  return rows.map((row) => ({ ...row, ...ofAll }));
}

/** A row without what is said of the whole check. */
type OwnRow = Omit<CheckRow, "notPermitted" | "cautions" | "fingerprint">;

function keyOf({ id, alternative }: Pick<CheckedConductor, "id" | "alternative">): string {
  return JSON.stringify([id, alternative]);
}

function nothingListed({ edition }: Check["schedule"]): OwnRow {
  const judgedBy = { edition, of: "installation" } as const;
  const nothing = { id: "", identity: null, found: [], required: null, reserve: null, citation: null };
  const row = rowOf({ ...nothing, evidence: null, judgedBy, verdict: "not-required" }, null);
  return { ...row, verdict: "nothing-listed" };
}

function rowOf(conductor: CheckedConductor | undefined, finding: CheckFinding | null): OwnRow {
  const of = finding ?? conductor;
  if (of === undefined) throw new TypeError("a row is of a finding or of a conductor");
  const found = finding === null ? conductor?.found[0] : finding.found;
  const { required } = of;
  const isCounted = found !== null && found !== undefined && found.instead === undefined;
  return {
    todo: finding?.todo ?? null,
    finding: finding?.kind ?? null,
    id: of.id,
    verdict: conductor?.verdict ?? "with-findings",
    alternative: of.alternative ?? null,
    name: found?.name ?? null,
    foundQuantity: isCounted ? (found.quantity ?? 1) : null,
    foundSize: found?.size ?? null,
    foundBusArea: found?.busArea ?? null,
    foundInstead: found?.instead ?? null,
    foundMaterial: found?.material ?? null,
    foundAt: found?.at ?? null,
    requiredQuantity: required?.quantity ?? null,
    requiredSize: required?.size ?? null,
    requiredMaterial: required?.material ?? null,
    requiredFrom: required ? endWords(required.from) : null,
    requiredTo: required ? endWords(required.to) : null,
    requiredArea: required?.requiredArea ?? null,
    shortBy: finding?.shortBy ?? null,
    more: finding?.more ?? null,
    reserve: conductor?.reserve ?? null,
    section: of.citation?.section ?? null,
    remedies: (finding?.remedies ?? []).map(remedyWords).join("; "),
    evidence: conductor?.evidence ?? null,
    edition: of.judgedBy.edition,
    editionOf: of.judgedBy.of,
  };
}
