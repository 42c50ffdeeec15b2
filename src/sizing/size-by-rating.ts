import { areaOf, type ConductorColumn } from "../conductor/index.js";
import { type Citation, citeAsAmended, type RatingPolicy, type RatingTable } from "../edition/index.js";
import type { Supply } from "../supply/index.js";
import { columnOfSupply, conductorsOf, ownArea, sumOf } from "../supply/sums.js";
import { mulDivUp } from "../units/exact.js";
import { acting, floorFrom, limited } from "./limits.js";
import type { SizedArea } from "./size-by-supply.js";
import type { CapStep, FloorStep, IncreaseStep, RatingRowStep, SumStep } from "./step.js";

/** What the kernel needs: a table, a policy, the rating of the device, and what is known of the circuit. */
export interface RatingSizing {
  readonly table: RatingTable;
  readonly policy: RatingPolicy;
  /** Amperes that enter the table; not above its last row. */
  readonly amperes: number;
  readonly read: ConductorColumn;
  /** Ungrounded conductors of the circuit as installed. */
  readonly installed?: Supply | undefined;
  /** Ungrounded conductors that an increase is counted from; absent where no increase counts. */
  readonly baseline?: Supply | undefined;
  /** The sentence that limits the size, where it is not that of the policy. */
  readonly capCitation?: Citation | undefined;
  /** Further floors that the rule brings along. */
  readonly floors?: readonly FloorStep[] | undefined;
}

/** Sizes a conductor from the rating of its overcurrent device: row, increase in proportion, cap, floors. */
export function sizeByRating(sizing: RatingSizing): SizedArea {
  const { policy, read, installed } = sizing;
  const row = ratingRowStep(sizing.table, sizing.amperes, read);
  const increase = increaseStep(sizing, row.requiredArea);
  const { requiredArea, kind: governs } = increase ?? row;
  const caps = capSteps(sizing);
  const acted = acting(caps, requiredArea);
  const capped = limited({ requiredArea, governs }, caps, []);
  const floors = [...floorFrom(policy.floor, read), ...(sizing.floors ?? [])].filter(
    (floor) => floor.requiredArea > capped.requiredArea,
  );
  const least = limited(capped, [], floors);
  const showsSum = installed !== undefined && (increase !== null || acted.length > 0);
  return {
    steps: [
      ...(showsSum ? [installedSum(installed, acted[0]?.citation ?? policy.basis.increase)] : []),
      row,
      ...(increase === null ? [] : [increase]),
      ...acted,
      ...floors,
    ],
    requiredArea: least.requiredArea,
    governs: least.governs,
  };
}

/** The row of a rating, with the evidence of its own cell. A rating between two rows takes the next. */
export function ratingRowStep(table: RatingTable, amperes: number, read: ConductorColumn): RatingRowStep {
  const row = table.rows.find(({ through }) => amperes <= through);
  if (row === undefined) throw new TypeError(`${table.number} has no row for ${amperes} A`);
  const size = row[read];
  const cell = `${row.through} ${read}`;
  return {
    kind: "rating-row",
    amperes,
    through: row.through,
    read,
    size,
    requiredArea: areaOf(size),
    citation: citeAsAmended(
      { section: table.number, evidence: table.cells[cell] ?? table.evidence },
      table.amended?.[cell],
    ),
  };
}

/** Circular mils of a circuit's ungrounded conductors, a parallel set taken as one. */
export function circuitArea(supply: Supply): number {
  return sumOf(supply, "corresponding");
}

function increaseStep({ policy, installed, baseline }: RatingSizing, area: number): IncreaseStep | null {
  if (installed === undefined || baseline === undefined) return null;
  const installedArea = circuitArea(installed);
  const baselineArea = circuitArea(baseline);
  if (installedArea <= baselineArea) return null;
  const requiredArea = mulDivUp(area, installedArea, baselineArea);
  return {
    kind: "increase",
    area,
    installedArea,
    baselineArea,
    requiredArea,
    citation: policy.basis.increase,
  };
}

function capSteps({ policy, read, installed, capCitation }: RatingSizing): readonly CapStep[] {
  if (installed === undefined || policy.cap === "none" || columnOfSupply(installed) !== read) return [];
  const requiredArea =
    policy.cap === "set" ? circuitArea(installed) : Math.max(...conductorsOf(installed).map(ownArea));
  const citation = capCitation ?? policy.basis.cap;
  return [{ kind: "cap", why: "circuit-conductors", requiredArea, citation }];
}

function installedSum(supply: Supply, citation: Citation): SumStep {
  const column = columnOfSupply(supply);
  return { kind: "sum", rule: "corresponding", supply, column, area: circuitArea(supply), citation };
}
