import { areaOf, columnOf } from "../conductor/index.js";
import {
  type Amendment,
  amendmentsInForce,
  type Citation,
  type Code,
  citeAmendment,
  type ElectrodeKind,
  holds,
  type Role,
} from "../edition/index.js";
import type { FloorStep, RatingRowStep } from "../sizing/index.js";
import { floorStep } from "../sizing/limits.js";
import { amendmentsThatMatter } from "./amendments-that-matter.js";
import type { Caution, CautionCode } from "./caution.js";
import type { Decided } from "./decided.js";
import { equipmentGroundingArea } from "./rating-table.js";

/** Decides under a code, lays its amendments over the decision, and says what has to be said of them. */
export function withAmendments(code: Code, decideUnder: (code: Code) => Decided): Decided {
  const decided = underAmendments(decideUnder(code));
  const { role, material, steps, requiredArea, cautions = [] } = decided;
  const requiredUnder = (other: Code): number =>
    underAmendments({ ...decideUnder(other), code: other }).requiredArea;
  const matter = amendmentsThatMatter(code, requiredArea, requiredUnder);
  const cited = new Set(steps.map(({ citation }) => citation.section));
  const said = amendmentCautions(code, role, material, matter).filter(
    ({ code: what, section }) => what !== "amended" || section === null || !cited.has(section),
  );
  return { ...decided, cautions: [...cautions, ...said] };
}

/** Lays the amendments in force over a decision: another basis, and floors. */
export function underAmendments(decided: Decided): Decided {
  const based = onOtherBasis(decided);
  return [...floorsOf(based), ...materialFloors(based)].reduce(underFloor, based);
}

/** What the amendments of a role have to say, and others that matter to its answer. */
export function amendmentCautions(
  code: Code,
  role: Role,
  material: Decided["material"],
  matter: readonly Amendment[] = [],
): readonly Caution[] {
  return (code.amendments ?? [])
    .filter((one) => matter.includes(one) || concerns(one, role, material))
    .map((one) => ({ code: cautionCodeOf(one, code), section: citeAmendment(one) }));
}

/** Whether an amendment in force requires a wire for a role. */
export function isAlwaysWire(code: Code, role: Role): boolean {
  return amendmentsInForce(code, "always-wire").some((one) => one.role === role);
}

/** Whether an amendment in force lifts the increase in proportion from a role. */
export function isWithoutIncrease(code: Code, role: Role): boolean {
  return amendmentsInForce(code, "basis").some((one) => one.role === role && one.use === "no-increase");
}

/** Whether an amendment in force lifts the ceiling that a kind of electrode sets. */
export function isWithoutCeiling(code: Code, electrode: ElectrodeKind): boolean {
  return amendmentsInForce(code, "basis").some(
    (one) => one.use === "no-electrode-ceiling" && (one.electrode ?? electrode) === electrode,
  );
}

function onOtherBasis(decided: Decided): Decided {
  const { code, role, material } = decided;
  const amperes = code.circumstances?.serviceAmperes;
  const basis = amendmentsInForce(code, "basis")
    .filter((one) => one.role === role && one.use === "equipment-grounding-table")
    .at(-1);
  if (basis === undefined || amperes === undefined) return decided;
  const { step, requiredArea } = equipmentGroundingArea(code, amperes, columnOf(material));
  const row: RatingRowStep = { ...step, citation: citationOf(basis) };
  return { ...decided, steps: [row], governs: row.kind, requiredArea, citation: row.citation, readings: [] };
}

function floorsOf({ code, role, material }: Decided): readonly FloorStep[] {
  return amendmentsInForce(code, "floor").flatMap((one) => {
    const size = one.role === role ? one[columnOf(material)] : undefined;
    return size === undefined ? [] : [floorStep(size, citationOf(one), "amendment")];
  });
}

/** A material that is allowed from a size up has that size as its floor. */
function materialFloors({ code, role, material }: Decided): readonly FloorStep[] {
  return amendmentsInForce(code, "material").flatMap((one) => {
    const concerned = (one.role === role || one.role === "every-role") && one.material === material;
    return concerned && one.allowedFrom !== undefined
      ? [floorStep(one.allowedFrom, citationOf(one), "amendment")]
      : [];
  });
}

function underFloor(decided: Decided, floor: FloorStep): Decided {
  const steps = [...decided.steps, floor];
  if (floor.requiredArea <= decided.requiredArea) return { ...decided, steps };
  return { ...decided, steps, governs: "floor", requiredArea: areaOf(floor.size) };
}

function cautionCodeOf(amendment: Amendment, code: Code): CautionCode {
  const met = holds(amendment, code.circumstances);
  if (met === "unknown") return "amendment-condition-unknown";
  if (met === "no") return "amendment-condition-not-met";
  if (amendment.kind === "always-wire") return "always-wire";
  if (amendment.kind === "material" && amendment.allowedFrom === undefined) return "material-forbidden";
  const needsRating = amendment.kind === "basis" && amendment.use === "equipment-grounding-table";
  return needsRating && code.circumstances?.serviceAmperes === undefined
    ? "amendment-condition-unknown"
    : "amended";
}

/** Whether an amendment is of a role. Cells and readings are of none; whether they matter shows in the answer. */
function concerns(amendment: Amendment, role: Role, material: Decided["material"]): boolean {
  switch (amendment.kind) {
    case "cell":
    case "reading":
      return false;
    case "material":
      return amendment.material === material && (amendment.role === role || amendment.role === "every-role");
    default:
      return amendment.role === role;
  }
}

function citationOf(amendment: Amendment): Citation {
  return { section: citeAmendment(amendment), evidence: "single" };
}
