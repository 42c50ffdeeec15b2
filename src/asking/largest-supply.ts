import { areaOf, columnOf, type Material } from "../conductor/index.js";
import {
  type Citation,
  type Code,
  chosenReading,
  type EditionYear,
  type Evidence,
  otherReadings,
  type Policy,
  policyUnder,
  type Readings,
  type Role,
  readingsFor,
  weakestEvidence,
} from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import type { RoleBySupply } from "../roles/definition.js";
import { amendmentCautions, overruled } from "../rules/amendment-cautions.js";
import { amendmentsThatMatter } from "../rules/amendments-that-matter.js";
import type { Caution } from "../rules/caution.js";
import { amendedFloors, rowOfService } from "../rules/under-amendments.js";
import { floorFrom } from "../sizing/limits.js";
import type { Conductor } from "../supply/index.js";
import { checkRole } from "./check-role.js";
import { type Prepared, prepareChecked } from "./prepare.js";
import { type LargestSupplyInput, largestSupplyInputShape } from "./shape.generated.js";

/**
 * What ends the supply: `conductor-area`, one circular mil more requires a larger conductor; `assumed-conductors-decide-above`, the
 * conductor is enough through the table, and above it conductors of its own material are assumed, which an area does not tell;
 * `assumed-conductors-always-decide`, the same at any size; `conductor-below-every-row`, the conductor is too small for any supply;
 * `supply-does-not-decide`, it is enough for every supply: its table ends there, or an amendment gives it another basis.
 */
export type SupplyLimit =
  | "conductor-area"
  | "assumed-conductors-decide-above"
  | "assumed-conductors-always-decide"
  | "conductor-below-every-row"
  | "supply-does-not-decide";

/** An open reading that would change the largest supply. */
export interface LargestSupplyReading {
  /** Stable id. */
  readonly id: keyof Readings;
  /** The alternative that is in force. */
  readonly chosen: string;
  /** Circular mils under the other alternatives. */
  readonly otherwise: readonly {
    /** Another alternative. */
    readonly alternative: string;
    /** Circular mils under it; `null` where no supply can be told. */
    readonly largest: number | null;
  }[];
}

/** The largest supply that a conductor is enough for. Plain JSON, sharing nothing with the input. */
export interface LargestSupply {
  /** What the conductor is there for. */
  readonly role: Role;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The conductor. */
  readonly conductor: Conductor;
  /** Circular mils of the conductor. */
  readonly area: number;
  /** Material of the ungrounded conductors. */
  readonly supplyMaterial: Material;
  /** Circular mils of the sum that the rule names; `null` where no supply can be told. */
  readonly largest: number | null;
  /** What ends the supply. */
  readonly limit: SupplyLimit;
  /** Circular mils of conductor that the largest supply requires. */
  readonly requiredAtLargest: number | null;
  /** Circular mils of conductor that one circular mil more requires; `null` where assumed conductors would decide. */
  readonly requiredAbove: number | null;
  /** The rule that sends this conductor to its table. */
  readonly citation: Citation;
  /** Open readings that would change the answer. */
  readonly readings: readonly LargestSupplyReading[];
  /** Weakest evidence of the sentences and rows that could decide. */
  readonly evidence: Evidence;
  /** What amendments have to say. */
  readonly cautions: readonly Caution[];
}

/**
 * The other way round: the largest supply that a conductor is enough for, as for every smaller one. Found with the prepared sizing itself, so
 * that it cannot disagree with it: row edges, 12.5 percent, floors and caps are those of the role's plainest question: a supply-side
 * bonding jumper is one of a service, for all that there is; an electrode conductor the only one of a service, to electrodes that set no limit.
 *
 * Where the materials differ and assumed conductors would decide, an area alone does not decide: the result stops there and says so
 * in `limit`. Several sets are taken, for which assumed conductors count the soonest.
 *
 * @param role - a role that goes by its supply
 * @param input - the code, the conductor, and the material of the supply
 * @returns the largest sum in whole circular mils, what ends it, and what one circular mil more requires
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { largestSupply, mainBondingJumper } from "bondmil";
 * const found = largestSupply(mainBondingJumper, {
 *   code: { year: "2023" },
 *   conductor: { size: "4/0 AWG", material: "copper" },
 *   supplyMaterial: "copper",
 * });
 * found.largest; // => 1692800
 * found.limit; // => "conductor-area"
 * ```
 */
export function largestSupply(role: RoleBySupply, input: LargestSupplyInput): LargestSupply {
  checkRole(role, "supply");
  const read = readAll(input, (at) => readShape<LargestSupplyInput>(at, largestSupplyInputShape));
  const { code, conductor, supplyMaterial } = read;
  const { policies } = role;
  const policy = policyUnder(code, policies);
  const found = search(role, read);
  const largestUnder = (other: Code): number | null => search(role, { ...read, code: other }).largest;
  const sought = { code, role: role.id, material: conductor.material };
  const mattering = amendmentsThatMatter(sought, found.largest, largestUnder);
  return {
    role: role.id,
    edition: code.year,
    conductor,
    area: areaOf(conductor.size),
    supplyMaterial,
    ...found,
    citation: { ...policy.basis.rule },
    readings: readingsFor(code, policies).flatMap((id): LargestSupplyReading[] => {
      const otherwise = otherReadings(code, id).map((other) => ({
        alternative: other.alternative,
        largest: largestUnder(other.code),
      }));
      const matters = otherwise.some(({ largest }) => largest !== found.largest);
      return matters ? [{ id, chosen: chosenReading(code, id), otherwise }] : [];
    }),
    evidence: evidenceOf(policy, columnOf(conductor.material) !== columnOf(supplyMaterial)),
    cautions: [
      ...amendmentCautions(sought, mattering, []),
      ...overruled(code, (other) => largestUnder(other) !== found.largest),
    ],
  };
}

type Found = Pick<LargestSupply, "largest" | "limit" | "requiredAtLargest" | "requiredAbove">;

const severalSets = 2;

/** Circular mils; 12.5 percent of it is larger than any jumper. */
const beyondEverySupply = 1_000_000_000_000;

function search(
  { id, policies }: RoleBySupply,
  { code, conductor, supplyMaterial }: LargestSupplyInput,
): Found {
  const { size, material } = conductor;
  const prepared = prepareChecked({ policies }, { code, supplyMaterial, conductor: { material } });
  const area = areaOf(size);
  const { floor } = policyUnder(code, policies);
  const byService = rowOfService(code, id, material)?.row;
  const floors = [
    ...(byService === undefined ? [] : [byService, ...floorFrom(floor, columnOf(material))]),
    ...amendedFloors(code, id, material),
  ].map(({ requiredArea }) => requiredArea);
  const requiredFor = (supplyArea: number): number | null => {
    const byArea = byService === undefined ? requiredByArea(prepared, supplyArea) : 0;
    return byArea === null ? null : Math.max(byArea, ...floors);
  };
  const isEnough = (supplyArea: number): boolean => {
    const required = requiredFor(supplyArea);
    return required !== null && required <= area;
  };
  const unending = isEnough(beyondEverySupply);
  const largest = unending ? 0 : lastThatHolds(isEnough);
  const requiredAbove = requiredFor(largest + 1);
  if (unending)
    return { largest: null, limit: "supply-does-not-decide", requiredAtLargest: null, requiredAbove: null };
  return {
    largest: largest === 0 ? null : largest,
    limit: limitOf(largest, requiredAbove),
    requiredAtLargest: largest === 0 ? null : requiredFor(largest),
    requiredAbove,
  };
}

/** Circular mils required; `null` where the area alone does not decide. */
function requiredByArea(prepared: Prepared, area: number): number | null {
  if (prepared.kind === "by-area") return prepared.requiredArea(area);
  return prepared.needsAssumedArea(area, severalSets) ? null : prepared.requiredArea(area, 0, severalSets);
}

function limitOf(largest: number, requiredAbove: number | null): SupplyLimit {
  if (requiredAbove !== null) return largest === 0 ? "conductor-below-every-row" : "conductor-area";
  return largest === 0 ? "assumed-conductors-always-decide" : "assumed-conductors-decide-above";
}

/**
 * The last whole number below the first for which a condition fails; 0 if it never holds. An amended last row may require more than the
 * 12.5 percent just above it: doubling from 1 never skips that row, so the result stays below it.
 */
function lastThatHolds(holds: (area: number) => boolean): number {
  let below = 0;
  let above = 1;
  while (holds(above)) {
    below = above;
    above *= 2;
  }
  while (above - below > 1) {
    const middle = Math.floor((below + above) / 2);
    if (holds(middle)) below = middle;
    else above = middle;
  }
  return below;
}

function evidenceOf({ basis, cap }: Policy, materialsDiffer: boolean): Evidence {
  return weakestEvidence([
    ...[basis.rule, basis.sum, basis.row, basis.oneEighth].map((one) => one.evidence),
    ...(cap === "none" ? [] : [basis.cap.evidence]),
    ...(materialsDiffer ? [basis.otherMaterial.evidence] : []),
  ]);
}
