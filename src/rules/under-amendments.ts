import { columnOf, type Material } from "../conductor/index.js";
import {
  type Amendment,
  amendmentsInForce,
  type BasisAmendment,
  type Citation,
  type Code,
  citeAmendment,
  type Role,
} from "../edition/index.js";
import type { FloorStep, Governing, RatingRowStep, Step } from "../sizing/index.js";
import { floorStep, limited } from "../sizing/limits.js";
import type { CautionCode } from "./caution.js";
import type { Decided } from "./decided.js";
import { equipmentGroundingArea, largestRating } from "./rating-table.js";

/** Lays the amendments in force over a decision: another basis, and floors. */
export function underAmendments<Id extends Role>(decided: Decided<Id>): Decided<Id> {
  if (!isAmended(decided.code)) return decided;
  const based = onOtherBasis(decided);
  const floors = amendedFloors(based.code, based.facts.role, based.material);
  const { requiredArea, governs } = limited(based, [], floors);
  return { ...based, steps: [...based.steps, ...floors], requiredArea, governs };
}

/** Whether a code has amendments at all. */
export function isAmended({ amendments = [] }: Code): boolean {
  return amendments.length > 0;
}

/** Whether an amendment is only laid over what the edition decides, so that the decision itself is the same without it. */
export function isLaidOver(amendment: Amendment): boolean {
  const { kind } = amendment;
  const isTable = kind === "basis" && amendment.use === "equipment-grounding-table";
  return isTable || kind === "floor" || kind === "material" || kind === "always-wire";
}

/** The floors that amendments in force set: minimum sizes of a role, and sizes from which a material is allowed. */
export function amendedFloors(code: Code, role: Role, material: Material): readonly FloorStep[] {
  const least = amendmentsInForce(code, "floor").flatMap((one) => {
    const size = one.role === role ? one[columnOf(material)] : undefined;
    return size === undefined ? [] : [floorStep(size, citationOf(one), "amendment")];
  });
  const allowed = amendmentsInForce(code, "material").flatMap((one) => {
    const concerned = (one.role === role || one.role === "every-role") && one.material === material;
    return concerned && one.allowedFrom !== undefined
      ? [floorStep(one.allowedFrom, citationOf(one), "amendment")]
      : [];
  });
  return [...least, ...allowed];
}

/** The row by the rating of the service that an amendment in force puts in place of a role's own table; `null` where none does. */
export function rowOfService(
  code: Code,
  role: Role,
  material: Material,
): { readonly basis: BasisAmendment; readonly row: RatingRowStep } | null {
  const amperes = code.circumstances?.serviceAmperes;
  const basis = amendmentsInForce(code, "basis")
    .filter((one) => one.role === role && one.use === "equipment-grounding-table")
    .at(-1);
  if (basis === undefined || amperes === undefined || amperes > largestRating(code)) return null;
  return { basis, row: equipmentGroundingArea(code, amperes, columnOf(material)).step };
}

/**
 * What a table of supply areas has required, its limits among it, makes room for the row by the rating of the service; what else requires
 * something stays beside it: the load, the device of a re-bonded building, minimum sizes.
 */
function onOtherBasis<Id extends Role>(decided: Decided<Id>): Decided<Id> {
  const { code, facts, material, steps, cautions } = decided;
  const other = steps.some(({ kind }) => kind === "row" || kind === "one-eighth")
    ? rowOfService(code, facts.role, material)
    : null;
  if (other === null) return decided;
  const beside = steps.filter(isBesideTable);
  const governing = beside.reduce<BesideTable>(
    (so, step) => (step.requiredArea > so.requiredArea ? step : so),
    other.row,
  );
  return {
    ...decided,
    steps: [other.row, ...beside],
    governs: governing.kind,
    requiredArea: governing.requiredArea,
    citation: citationOf(other.basis),
    cautions: () => (cautions?.() ?? []).filter((one) => !ofTheTable.includes(one.code)),
  };
}

type BesideTable = Extract<Step, { readonly kind: Governing }>;

function isBesideTable(step: Step): step is BesideTable {
  return step.kind === "floor" ? step.why !== "last-row" : step.kind === "load" || step.kind === "rating-row";
}

/** What is said of the way through a table of supply areas. */
const ofTheTable: readonly CautionCode[] = [
  "assumed-conductors",
  "no-single-conductor-of-equal-ampacity",
  "mixed-supply-materials",
  "no-cap-across-materials",
  "cap-applied",
  "single-conductor-above-threshold",
  "conductors-required-for-load",
  "electrode-limit-not-for-material",
];

function citationOf(amendment: Amendment): Citation {
  return { section: citeAmendment(amendment), evidence: "vouched" };
}
