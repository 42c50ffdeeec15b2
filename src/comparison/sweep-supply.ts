import { plainly } from "../asking/plainly.js";
import { size } from "../asking/size.js";
import { areaOf, type ConductorSize, type Material, standardSizes } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import { type EditionYear, editionYears } from "../edition/index.js";
import { member, optional, type Reader, readCount, readList } from "../input/reader.js";
import type { RoleBySupply } from "../roles/definition.js";
import { readMaterial } from "../supply/read.js";
import { mulExact } from "../units/exact.js";
import { answerOf, readEditions } from "./ask.js";
import { type Swept, type SweptEdition, sweptOf } from "./swept.js";

/** The supplies for which a role is sized, and under which editions. */
export interface SupplySweep {
  /** All editions by default. */
  readonly editions?: readonly EditionYear[];
  /** Material of the ungrounded conductors. */
  readonly supplyMaterial: Material;
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Sizes of the supply conductors; every standard size by default. */
  readonly sizes?: readonly ConductorSize[];
  /** Numbers of sets; 1 to 20 by default. */
  readonly counts?: readonly number[];
}

/** One supply under one edition. */
export interface SupplySweepRow extends SweptEdition, Swept {
  /** Number of sets. */
  readonly sets: number;
  /** Size of the ungrounded conductors. */
  readonly supplySize: ConductorSize;
  /** Material of the ungrounded conductors. */
  readonly supplyMaterial: Material;
  /** Circular mils of all sets. */
  readonly supplyArea: number;
  /** Material of the conductor to be sized. */
  readonly material: Material;
}

/** Members of {@link SupplySweep}. */
export const supplySweepKeys = ["editions", "supplyMaterial", "material", "sizes", "counts"] as const;

/** Checks a sweep of supplies. */
export function checkSupplySweep(at: Reader): void {
  readEditions(at);
  readMaterial(member(at, "supplyMaterial"));
  readMaterial(member(at, "material"));
  optional(member(at, "sizes"), (sizes) => readList(sizes, readSize, mostOfEach));
  optional(member(at, "counts"), (counts) => readList(counts, (one) => readCount(one, "sets"), mostOfEach));
}

/** One row for every supply in every edition, the request being checked. */
export function supplyRows<Input>(
  role: RoleBySupply,
  { editions = editionYears, supplyMaterial, material, sizes = standardSizes, counts = upTo20 }: SupplySweep,
  more: Partial<Input>,
): readonly SupplySweepRow[] {
  return sizes.flatMap((supplySize) =>
    counts.flatMap((sets) =>
      editions.map((edition): SupplySweepRow => {
        const supply = { sets: [{ count: sets, size: supplySize, material: supplyMaterial }] };
        const input = plainly(role, { code: { year: edition }, material, supply });
        const answer = answerOf((given: typeof input) => size(role, given), { ...input, ...more });
        const supplyArea = mulExact(sets, areaOf(supplySize));
        return { edition, sets, supplySize, supplyMaterial, supplyArea, material, ...sweptOf(answer) };
      }),
    ),
  );
}

/** Sizes, and counts, of one sweep: there is a row for every size with every count in every edition. */
const mostOfEach = 100;

const upTo20: readonly number[] = /* @__PURE__ */ Array.from({ length: 20 }, (_, place) => place + 1);
