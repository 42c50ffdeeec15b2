import { plainly } from "../asking/plainly.js";
import { size } from "../asking/size.js";
import { areaOf, type ConductorSize, type Material, standardSizes } from "../conductor/index.js";
import { editionYears } from "../edition/index.js";
import type { RoleBySupply } from "../roles/definition.js";
import { mulExact } from "../units/exact.js";
import { answerOf } from "./ask.js";
import type { SupplySweep } from "./shape.generated.js";
import { type Swept, type SweptEdition, sweptOf } from "./swept.js";

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

/** One row for every supply in every edition, the request being checked. */
export function supplyRows(
  role: RoleBySupply,
  {
    editions = editionYears,
    supplyMaterial,
    material,
    sizes = standardSizes,
    counts = upTo20,
    with: more = {},
  }: SupplySweep,
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

const upTo20: readonly number[] = /* @__PURE__ */ Array.from({ length: 20 }, (_, place) => place + 1);
