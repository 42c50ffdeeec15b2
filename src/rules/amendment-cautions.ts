import { columnOf } from "../conductor/index.js";
import {
  type Amendment,
  type Code,
  citeAmendment,
  holds,
  otherThan,
  overruledReadings,
  type Role,
} from "../edition/index.js";
import type { Step } from "../sizing/index.js";
import { amendmentsThatMatter, canTouch, type Mattering, type Sought } from "./amendments-that-matter.js";
import type { Caution, CautionCode } from "./caution.js";
import { type Decided, saying } from "./decided.js";
import { isAmended, isLaidOver, underAmendments } from "./under-amendments.js";

/** Decides under a code, lays its amendments over the decision, and says what has to be said of them. */
export function withAmendments<Id extends Role>(
  code: Code,
  decideUnder: (code: Code) => Decided<Id>,
): Decided<Id> {
  const own = decideUnder(code);
  if (!isAmended(code)) return own;
  const decided = underAmendments(own);
  const { facts, material, steps, citation, requiredArea } = decided;
  const sought = { code, role: facts.role, material };
  const mattering = amendmentsThatMatter(sought, requiredArea, (other, differsIn) =>
    isLaidOver(differsIn)
      ? underAmendments({ ...own, code: other }).requiredArea
      : areaUnder(other, decideUnder),
  );
  const cited = [citation, ...steps.map((step: Step) => step.citation)].map(({ section }) => section);
  return saying(decided, () => [
    ...amendmentCautions(sought, mattering, cited),
    ...overruled(code, (other) => areaUnder(other, decideUnder) !== requiredArea),
  ]);
}

/** Circular mils that a decision requires under a code, with its amendments. */
export function areaUnder(code: Code, decideUnder: (code: Code) => Decided): number {
  const decided = decideUnder(code);
  return isAmended(code) ? underAmendments({ ...decided, code }).requiredArea : decided.requiredArea;
}

/** What amendments have to say of a result that cites these sections. */
export function amendmentCautions(
  sought: Sought,
  mattering: Mattering,
  cited: readonly string[],
): readonly Caution[] {
  return said(sought.code, (one) => cautionOf(one, sought, mattering, cited));
}

/** What amendments have to say where no conductor is required, so that none of them acts. */
export function idleCautions(sought: Sought): readonly Caution[] {
  const { code } = sought;
  return said(code, (one) =>
    concerns(one, sought) ? (openCondition(one, code) ?? "amendment-without-effect") : null,
  );
}

/**
 * Whether anything in a code beyond its edition could have to do with a role and a material. Where nothing has, every answer is that of
 * the edition as printed.
 */
export function isAmendedFor(sought: Sought): boolean {
  const { amendments = [], readings = {} } = sought.code;
  return (
    Object.keys(readings).length > 0 ||
    amendments.some((one) => canTouch(one, sought) || concerns(one, sought))
  );
}

/** Readings that the code chooses in vain, where the chosen alternative would make a difference. */
export function overruled(code: Code, differsUnder: (code: Code) => boolean): readonly Caution[] {
  return overruledReadings(code).flatMap(({ id, by }): Caution[] => {
    const amendments = (code.amendments ?? []).filter((one) => one.kind !== "reading" || one.reading !== id);
    return differsUnder(otherThan(code, `without enforced ${id}`, () => ({ ...code, amendments })))
      ? [{ code: "enforced-reading-overrules-chosen", section: citeAmendment(by) }]
      : [];
  });
}

function said({ amendments = [] }: Code, codeOf: (one: Amendment) => CautionCode | null): readonly Caution[] {
  return amendments.flatMap((one): Caution[] => {
    const code = codeOf(one);
    return code === null ? [] : [{ code, section: citeAmendment(one) }];
  });
}

function cautionOf(
  one: Amendment,
  sought: Sought,
  { acting, superseded }: Mattering,
  cited: readonly string[],
): CautionCode | null {
  const isOfRole = concerns(one, sought);
  const open = openCondition(one, sought.code);
  if (open !== null) return isOfRole || acting.includes(one) ? open : null;
  if (superseded.includes(one)) return "amendment-superseded";
  if (isOfRole && one.kind === "always-wire") return "always-wire";
  if (isOfRole && one.kind === "material" && one.allowedFrom === undefined) return "material-forbidden";
  const isCited = cited.some((section) => cites(section, one));
  if (acting.includes(one)) return isCited ? null : "amended";
  if (!isOfRole || (isCited && isShown(one, sought))) return null;
  return "amendment-without-effect";
}

/** Whether an amendment does not apply, or not for all that is known; `null` where it does. */
function openCondition(one: Amendment, { circumstances }: Code): CautionCode | null {
  const met = holds(one, circumstances);
  if (met === "no") return "amendment-condition-not-met";
  const needsRating = one.kind === "basis" && one.use === "equipment-grounding-table";
  const isUnknown = met === "unknown" || (needsRating && circumstances?.serviceAmperes === undefined);
  return isUnknown ? "amendment-condition-unknown" : null;
}

/** Whether an amendment stands among the steps of a result, also where it does not decide. */
function isShown(one: Amendment, { material }: Sought): boolean {
  return isLaidOver(one) && (one.kind !== "floor" || one[columnOf(material)] !== undefined);
}

function cites(section: string, one: Amendment): boolean {
  const cited = citeAmendment(one);
  return section === cited || section.endsWith(` as amended by ${cited}`);
}

/** Whether an amendment is of a role. Cells and readings are of none; whether they matter shows in the result. */
function concerns(one: Amendment, { role, material }: Sought): boolean {
  switch (one.kind) {
    case "cell":
    case "reading":
      return false;
    case "material":
      return one.material === material && (one.role === role || one.role === "every-role");
    default:
      return one.role === role;
  }
}
