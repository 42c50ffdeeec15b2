import type { TemperatureColumn } from "../ampacity/index.js";
import {
  areaOf,
  type ConductorColumn,
  columnOf,
  type Material,
  standardSizeFor,
} from "../conductor/index.js";
import { type Citation, citeAsAmended, type Policy, type SupplyAreaTable } from "../edition/index.js";
import { isAlike } from "../supply/equal-ampacity.js";
import type { AssumedConductor, Conductor, Supply } from "../supply/index.js";
import { columnOfSupply, countSets, ownArea, sumOf } from "../supply/sums.js";
import { decidedBy } from "./assumption.js";
import { capStep, floorStep, limited, type Required } from "./limits.js";
import {
  type AreaRule,
  areaByRule,
  capArea,
  hasLastRowFloor,
  type InstalledArea,
  rowFor,
} from "./required-area.js";
import type {
  AssumedStep,
  CapStep,
  FloorStep,
  OneEighthStep,
  RowStep,
  StandardSizeStep,
  Step,
  SumStep,
} from "./step.js";

/** What the kernel needs: a table, a policy, a supply, and the material of the conductor to be sized. */
export interface SupplySizing {
  readonly table: SupplyAreaTable;
  readonly policy: Policy;
  readonly supply: Supply;
  readonly material: Material;
  readonly temperature: TemperatureColumn;
  /** Conductors of the sized material in place of the installed ones; called only if they are needed. */
  readonly assume: () => readonly AssumedConductor[];
  /** Further caps that the rule brings along. */
  readonly caps?: readonly CapStep[] | undefined;
}

/** A required area with the steps that led to it. */
export interface SizedArea extends Required {
  readonly steps: readonly Step[];
}

/** Sizes a conductor from the ungrounded supply conductors: sum, assumed conductors, row or 12.5 percent, caps, floors. */
export function sizeBySupply(sizing: SupplySizing): SizedArea {
  const { table, policy, supply, material } = sizing;
  const read = columnOf(material);
  const rule: AreaRule = { table, policy, read };
  const installed = installedArea(supply, policy);
  const { column } = installed;
  const entered = column === "mixed" ? read : column;
  const by = decidedBy(policy.otherMaterial, table, installed, read);

  const assumed = by === "installed" ? null : assumedStep(sizing);
  const parts = column === "mixed" ? partsOf(supply, policy) : none;
  const ways: Way[] = [];
  if (by !== "assumed") ways.push({ before: null, decides: ruleStep(rule, entered, installed.area) });
  if (assumed !== null) ways.push({ before: assumed, decides: ruleStep(rule, read, assumed.area) });
  for (const part of parts) {
    if (decidedBy(policy.otherMaterial, table, part, read) === "assumed") continue;
    ways.push({ before: sumStep(sizing, part), decides: ruleStep(rule, part.column, part.area) });
  }
  const deciding = largestOf(ways);

  const cap = capArea(rule, installed);
  const caps: CapStep[] = [];
  if (Number.isFinite(cap)) caps.push(ungroundedCap(cap, policy.basis.cap));
  if (policy.ceiling !== null) caps.push(capStep(policy.ceiling, read));
  for (const further of sizing.caps ?? none) caps.push(further);
  const atTableEnd =
    (column !== "mixed" && hasLastRowFloor(rule, entered, installed.area)) ||
    (assumed !== null && hasLastRowFloor(rule, read, assumed.area)) ||
    parts.some((part) => hasLastRowFloor(rule, part.column, part.area));
  const floors: FloorStep[] = [];
  if (table.last !== null && atTableEnd) {
    floors.push(floorStep(table.last[read], citationOfRow(rule, "last"), "last-row"));
  }
  if (policy.floor !== null) floors.push(floorStep(policy.floor[read], policy.floor.citation, "least-size"));
  const { decides } = deciding;
  const limits = limited({ requiredArea: decides.requiredArea, governs: decides.kind }, caps, floors);

  const steps: Step[] = [sumStep(sizing, installed)];
  for (const way of ways) {
    // The sum of one metal of a mixed supply is shown only where it decides.
    if (way !== deciding && way.before?.kind === "sum") continue;
    if (way.before !== null) steps.push(way.before);
    steps.push(way.decides);
  }
  // A cap that lies above what is required says nothing.
  for (const one of caps) if (one.requiredArea < decides.requiredArea) steps.push(one);
  for (const one of floors) steps.push(one);
  return { steps, requiredArea: limits.requiredArea, governs: limits.governs };
}

const none: readonly never[] = [];

/** One way to a required area: what comes before the rule, and the row or 12.5 percent that decides. */
interface Way {
  readonly before: AssumedStep | SumStep | null;
  readonly decides: RowStep | OneEighthStep;
}

interface Part extends Pick<InstalledArea, "area" | "sets"> {
  readonly column: ConductorColumn;
}

/**
 * The conductors of each metal in a supply of both. A supply never requires less than a part of it alone would, which
 * replacing every conductor by an assumed one cannot promise where the table's two columns do not run alike.
 */
function partsOf(supply: Supply, policy: Policy): readonly Part[] {
  return (["copper", "aluminum"] as const).map((column) => {
    const own = (one: Conductor): number => (columnOf(one.material) === column ? ownArea(one) : 0);
    const area = sumOf(supply, policy.sum, own);
    return { column, area, sets: countSets(supply) };
  });
}

/** The one place where a required area becomes a size. */
export function standardSizeStep(requiredArea: number, citation: Citation): StandardSizeStep | null {
  const size = standardSizeFor(requiredArea);
  return size === null ? null : { kind: "standard-size", requiredArea, size, area: areaOf(size), citation };
}

/** What the rules of area ask of a supply. */
export function installedArea(supply: Supply, policy: Policy): InstalledArea {
  return {
    column: columnOfSupply(supply),
    area: sumOf(supply, policy.sum),
    largest: sumOf(supply, "largest-conductor"),
    sets: countSets(supply),
  };
}

function sumStep(
  { policy, supply }: SupplySizing,
  { column, area }: Pick<InstalledArea, "column" | "area">,
): SumStep {
  return { kind: "sum", rule: policy.sum, supply, column, area, citation: policy.basis.sum };
}

function assumedStep({ policy, supply, temperature, assume }: SupplySizing): AssumedStep {
  const conductors = assume();
  const area = sumOf(
    supply,
    policy.sum,
    (one) => conductors.find(({ installed }) => isAlike(installed, one))?.area ?? ownArea(one),
  );
  return { kind: "assumed", temperature, conductors, area, citation: policy.basis.otherMaterial };
}

function ruleStep(rule: AreaRule, entered: ConductorColumn, area: number): RowStep | OneEighthStep {
  const { table, policy, read } = rule;
  const requiredArea = areaByRule(rule, entered, area);
  const row = rowFor(table, entered, area);
  const size = row?.[read] ?? table.last?.[read];
  if (size === undefined || (row === undefined && policy.oneEighth)) {
    const threshold = table.threshold[entered];
    return { kind: "one-eighth", entered, area, threshold, requiredArea, citation: policy.basis.oneEighth };
  }
  const index = row === undefined ? table.rows.length : table.rows.indexOf(row);
  return {
    kind: "row",
    entered,
    area,
    over: table.rows[index - 1]?.through[entered] ?? null,
    through: row?.through[entered] ?? null,
    read,
    size,
    requiredArea,
    citation: citationOfRow(rule, row === undefined ? "last" : index),
  };
}

/** Where a row stands, with the evidence of its own cell. */
function citationOfRow({ table, policy, read }: AreaRule, place: number | "last"): Citation {
  const cell = `${place} ${read}`;
  const evidence = table.cells?.[cell];
  const { section } = policy.basis.row;
  return citeAsAmended({ section, evidence: evidence ?? policy.basis.row.evidence }, table.amended?.[cell]);
}

function largestOf(ways: readonly Way[]): Way {
  let largest = ways[0];
  if (largest === undefined) throw new TypeError("neither the installed nor assumed conductors decide");
  for (const way of ways) {
    if (way.decides.requiredArea > largest.decides.requiredArea) largest = way;
  }
  return largest;
}

function ungroundedCap(requiredArea: number, citation: Citation): CapStep {
  return { kind: "cap", why: "ungrounded-conductors", requiredArea, citation };
}
