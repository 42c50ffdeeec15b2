import {
  type Amendment,
  conductorSizes,
  electrodeKinds,
  materials,
  type Readings,
  roleIds,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { readingFacts } from "../../src/edition/tables/readings.generated.js";

/** An amendment without its citation. */
export type Uncited<A = Amendment> = A extends Amendment ? Omit<A, "citation"> : never;

const size = fc.constantFrom(...standardSizes);
const role = fc.constantFrom(...roleIds);
const supplyRows = ["2 AWG", "1/0 AWG", "3/0 AWG", "350 kcmil", "600 kcmil", "1100 kcmil", "last"];
const ratings = [15, 20, 60, 100, 200, 300, 400, 500, 600, 800];

const supplyCell = fc.record({
  kind: fc.constant("cell" as const),
  table: fc.constantFrom("electrode-conductor" as const, "bonding-conductor" as const),
  row: fc.constantFrom(...supplyRows),
  column: fc.constantFrom("copper" as const, "aluminum" as const),
  size: fc.constantFrom(...conductorSizes),
});
const ratingCell = fc.record({
  kind: fc.constant("cell" as const),
  table: fc.constant("equipment-grounding" as const),
  row: fc.constantFrom(...ratings),
  column: fc.constantFrom("copper" as const, "aluminum" as const),
  size,
});
const floor = fc.oneof(
  fc.record({ kind: fc.constant("floor" as const), role, copper: size, aluminum: size }),
  fc.record({ kind: fc.constant("floor" as const), role, copper: size }),
  fc.record({ kind: fc.constant("floor" as const), role, aluminum: size }),
);
const basis = fc.record(
  {
    kind: fc.constant("basis" as const),
    role,
    use: fc.constantFrom(
      "no-increase" as const,
      "no-electrode-ceiling" as const,
      "equipment-grounding-table" as const,
    ),
    electrode: fc.constantFrom(...electrodeKinds),
  },
  { requiredKeys: ["kind", "role", "use"] },
);
const ids = Object.keys(readingFacts) as (keyof Readings)[];
export const alternatives: readonly { readonly reading: keyof Readings; readonly alternative: string }[] =
  ids.flatMap((reading) =>
    Object.keys(readingFacts[reading].policy).map((alternative) => ({ reading, alternative })),
  );
const reading = fc.constantFrom(...alternatives).map((one) => ({ kind: "reading" as const, ...one }));
const material = fc.record(
  {
    kind: fc.constant("material" as const),
    role: fc.constantFrom(...roleIds, "every-role" as const),
    material: fc.constantFrom(...materials),
    allowedFrom: size,
  },
  { requiredKeys: ["kind", "role", "material"] },
);
const alwaysWire = fc.record({ kind: fc.constant("always-wire" as const), role });

/** An amendment of any kind, sensible or not. */
export const uncited: fc.Arbitrary<Uncited> = fc.oneof(
  supplyCell,
  ratingCell,
  floor,
  basis,
  reading,
  material,
  alwaysWire,
);

export const anyFloor: fc.Arbitrary<Uncited> = floor;

/** Each with a citation of its own, and the condition that is given. */
export function cited(list: readonly Uncited[], when?: Amendment["when"]): readonly Amendment[] {
  return list.map(
    (one, i) =>
      ({
        ...one,
        ...(when && { when }),
        citation: { jurisdiction: "Nowhere", section: `Sec. ${i}` },
      }) as Amendment,
  );
}

/** What no two amendments may share if each is to act for itself: a cell, a reading, a basis. */
export function placeOf(one: Uncited): string {
  switch (one.kind) {
    case "cell":
      return `${one.table} ${one.row} ${one.column}`;
    case "reading":
      return one.reading;
    case "basis":
      return one.use;
    default:
      return JSON.stringify(one);
  }
}
