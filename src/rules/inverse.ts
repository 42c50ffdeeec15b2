import { areaOf, columnOf, type Material } from "../conductor/index.js";
import {
  type Citation,
  type Code,
  chosenReading,
  type EditionYear,
  type Evidence,
  otherReadings,
  type Policy,
  type PolicySet,
  policyUnder,
  type Readings,
  type Role,
  readCode,
  readingsFor,
  weakestEvidence,
} from "../edition/index.js";
import {
  groundingElectrodeConductorServicePolicies,
  mainBondingJumperPolicies,
  supplySideBondingJumperPolicies,
  systemBondingJumperPolicies,
} from "../edition/tables/policies.generated.js";
import { member, type Reader, readAll, readObject, readOneOf } from "../input/reader.js";
import { floorFrom } from "../sizing/limits.js";
import { readMaterial } from "../supply/read.js";
import { amendmentCautions, overruled } from "./amendment-cautions.js";
import { amendmentsThatMatter } from "./amendments-that-matter.js";
import type { Caution } from "./caution.js";
import { type Prepared, prepareChecked } from "./prepare.js";
import { type InstalledConductor, readInstalled } from "./reserve.js";
import { amendedFloors, rowOfService } from "./under-amendments.js";

/** Conductors that are sized from the area of their supply and nothing else. */
export type SupplyJumperRole = Extract<
  Role,
  | "main-bonding-jumper"
  | "system-bonding-jumper"
  | "supply-side-bonding-jumper"
  | "grounding-electrode-conductor"
>;

/** A jumper that is there, and the supply that is asked for. */
export interface LargestSupplyInput {
  readonly code: Code;
  /**
   * A supply-side bonding jumper is taken as one of a service, for all that there is; an electrode conductor as the only one of a
   * service, to electrodes that set no limit.
   */
  readonly role: SupplyJumperRole;
  readonly jumper: InstalledConductor;
  /** The one material of the supply. */
  readonly supplyMaterial: Material;
}

/**
 * What ends the supply: `jumper-area`, one circular mil more asks for a larger jumper; `assumed-conductors-decide-above`, the
 * jumper is enough through the table, and above it conductors of its own material are assumed, which an area does not tell;
 * `assumed-conductors-always-decide`, the same at any size; `jumper-below-every-row`, the jumper is too small for any supply;
 * `supply-does-not-decide`, it is enough for every supply: its table ends there, or an amendment gives it another basis.
 */
export type SupplyLimit =
  | "jumper-area"
  | "assumed-conductors-decide-above"
  | "assumed-conductors-always-decide"
  | "jumper-below-every-row"
  | "supply-does-not-decide";

/** An open reading that would change the answer. */
export interface LargestSupplyReading {
  readonly id: keyof Readings;
  readonly chosen: string;
  /** Circular mils under the other alternatives. */
  readonly otherwise: readonly { readonly alternative: string; readonly largest: number | null }[];
}

/** The largest supply that a jumper is enough for. Plain JSON, sharing nothing with the input. */
export interface LargestSupply {
  readonly role: SupplyJumperRole;
  readonly edition: EditionYear;
  readonly jumper: InstalledConductor;
  /** Circular mils of the jumper. */
  readonly jumperArea: number;
  readonly supplyMaterial: Material;
  /** Circular mils of the sum that the rule names; `null` where no supply can be told. */
  readonly largest: number | null;
  readonly limit: SupplyLimit;
  /** Circular mils of jumper that the largest supply requires. */
  readonly requiredAtLargest: number | null;
  /** Circular mils of jumper that one circular mil more requires; `null` where assumed conductors would decide. */
  readonly requiredAbove: number | null;
  /** The rule that sends this jumper to its table. */
  readonly citation: Citation;
  readonly readings: readonly LargestSupplyReading[];
  /** Weakest evidence of the sentences and rows that could decide. */
  readonly evidence: Evidence;
  /** What amendments have to say. */
  readonly cautions: readonly Caution[];
}

const policySets: Readonly<Record<SupplyJumperRole, PolicySet>> = {
  "main-bonding-jumper": mainBondingJumperPolicies,
  "system-bonding-jumper": systemBondingJumperPolicies,
  "supply-side-bonding-jumper": supplySideBondingJumperPolicies,
  "grounding-electrode-conductor": groundingElectrodeConductorServicePolicies,
};

const supplyJumperRoles = /* @__PURE__ */ Object.keys(policySets) as readonly SupplyJumperRole[];

/**
 * The other way round: the largest supply that a jumper is enough for, as for every smaller one. Found with the prepared sizing itself, so that it cannot
 * disagree with it: row edges, one eighth, floors and caps are those of the role (250.28(D), 250.102(C)).
 *
 * Where the materials differ and assumed conductors would decide, an area alone gives no answer: the result stops there and says so
 * in `limit`. Several sets are taken, for which assumed conductors count the soonest.
 *
 * @param input - the code, the role, the jumper, and the material of the supply
 * @returns the largest sum in whole circular mils, what ends it, and what one circular mil more requires
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { largestSupplyFor } from "bondmil";
 * const found = largestSupplyFor({
 *   code: { year: "2023" },
 *   role: "main-bonding-jumper",
 *   jumper: { size: "4/0 AWG", material: "copper" },
 *   supplyMaterial: "copper",
 * });
 * found.largest; // => 1692800
 * found.limit; // => "jumper-area"
 * ```
 */
export function largestSupplyFor(input: LargestSupplyInput): LargestSupply {
  const read = readAll(input, readInput);
  const { code, role, jumper, supplyMaterial } = read;
  const policies = policySets[role];
  const policy = policyUnder(code, policies);
  const found = search(read);
  const largestUnder = (other: Code): number | null => search({ ...read, code: other }).largest;
  const sought = { code, role, material: jumper.material };
  const mattering = amendmentsThatMatter(sought, found.largest, largestUnder);
  return {
    role,
    edition: code.year,
    jumper,
    jumperArea: areaOf(jumper.size),
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
    evidence: evidenceOf(policy, columnOf(jumper.material) !== columnOf(supplyMaterial)),
    cautions: [
      ...amendmentCautions(sought, mattering, []),
      ...overruled(code, (other) => largestUnder(other) !== found.largest),
    ],
  };
}

type Found = Pick<LargestSupply, "largest" | "limit" | "requiredAtLargest" | "requiredAbove">;

const severalSets = 2;

/** Circular mils; one eighth of it is larger than any jumper. */
const beyondEverySupply = 2 ** 40;

function search({ code, role, jumper, supplyMaterial }: LargestSupplyInput): Found {
  const { material } = jumper;
  const policies = policySets[role];
  const prepared = prepareChecked({ role, policies }, { code, supply: supplyMaterial, jumper: material });
  const jumperArea = areaOf(jumper.size);
  const { floor } = policyUnder(code, policies);
  const byService = rowOfService(code, role, material)?.row;
  const floors = [
    ...(byService === undefined ? [] : [byService, ...floorFrom(floor, columnOf(material))]),
    ...amendedFloors(code, role, material),
  ].map(({ requiredArea }) => requiredArea);
  const requiredFor = (area: number): number | null => {
    const byArea = byService === undefined ? requiredByArea(prepared, area) : 0;
    return byArea === null ? null : Math.max(byArea, ...floors);
  };
  const isEnough = (area: number): boolean => {
    const required = requiredFor(area);
    return required !== null && required <= jumperArea;
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
  if (requiredAbove !== null) return largest === 0 ? "jumper-below-every-row" : "jumper-area";
  return largest === 0 ? "assumed-conductors-always-decide" : "assumed-conductors-decide-above";
}

/**
 * The last whole number below the first for which a condition fails; 0 if it never holds. An amended last row may ask for more than the
 * one eighth just above it: doubling from 1 never skips that row, so the answer stays below it.
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

function readInput(at: Reader): LargestSupplyInput | undefined {
  if (!readObject(at, ["code", "role", "jumper", "supplyMaterial"])) return undefined;
  const code = readCode(member(at, "code"));
  const role = readOneOf(member(at, "role"), supplyJumperRoles);
  const jumper = readInstalled(member(at, "jumper"));
  const supplyMaterial = readMaterial(member(at, "supplyMaterial"));
  return code && role && jumper && supplyMaterial && { code, role, jumper, supplyMaterial };
}
