import {
  areaOf,
  type Code,
  type ConductorSize,
  conductorSizes,
  type Electrode,
  type groundingElectrodeConductor,
  type Input,
  type Material,
  type Readings,
  type Supply,
} from "bondmil";
import fc from "fast-check";
import table from "../../tables/electrode-conductor.json" with { type: "json" };
import { material, supply, year } from "./arbitraries.js";

const ringSizes = conductorSizes.filter((one) => areaOf(one) >= areaOf("2 AWG"));
export const electrode: fc.Arbitrary<Electrode> = fc.oneof(
  fc
    .constantFrom(
      "rod" as const,
      "pipe" as const,
      "plate" as const,
      "concrete-encased" as const,
      "metal-water-pipe" as const,
      "structural-metal" as const,
      "other" as const,
    )
    .map((kind): Electrode => ({ kind })),
  fc.constantFrom(...ringSizes).map((conductor): Electrode => ({ kind: "ring", conductor })),
);
export const electrodes: fc.Arbitrary<readonly Electrode[]> = fc.array(electrode, {
  minLength: 1,
  maxLength: 4,
});
const readings: fc.Arbitrary<Partial<Readings>> = fc.record(
  {
    "electrode-ceiling-for-several": fc.constantFrom(
      "all-of-a-kind",
      "one-electrode-only",
      "largest-of-kinds",
    ),
    "electrode-ceiling-on-common-conductor": fc.constantFrom("applies", "table-only"),
    "copper-clad-to-rods": fc.constantFrom("not-named", "as-aluminum"),
  },
  { requiredKeys: [] },
);
export const code: fc.Arbitrary<Code> = fc.record({ year, readings }, { requiredKeys: ["year"] });
const kind = fc.constantFrom(
  { system: "service" } as const,
  { system: "service", part: "tap" } as const,
  { system: "service", part: "common" } as const,
  { system: "service", part: "common", fromDrop: true } as const,
  { system: "service", ungrounded: true } as const,
  { system: "separately-derived" } as const,
  { system: "separately-derived", part: "tap" } as const,
  { system: "building" } as const,
  { system: "building", part: "common" } as const,
);
/** One that is sized from its supply. */
type OfSupply = Extract<Input<typeof groundingElectrodeConductor>, { readonly supply: Supply }>;

export const asked: fc.Arbitrary<OfSupply> = fc
  .record({ code, supply, conductor: fc.record({ material }), electrodes, kind })
  .map(({ kind: one, ...input }) => ({ ...input, ...one }));

/** Circular mils by the table as a person reads it: entered by the supply's column, read in the conductor's own. */
export function byHand(area: number, supplied: Material, own: Material): number {
  const enters = supplied === "copper" ? 0 : 1;
  const reads = own === "copper" ? 2 : 3;
  const rows = table.blocks[0]?.rows ?? [];
  const row = rows.find((cells) => area <= endOf(cells[enters] ?? null));
  return endOf(row?.[reads] ?? null);
}

/** Circular mils of a cell; a row ends at 1100 kcmil, which is no conductor. */
function endOf(cell: string | null): number {
  if (cell === null) return Number.POSITIVE_INFINITY;
  return cell.endsWith("kcmil") ? 1000 * Number.parseInt(cell, 10) : areaOf(cell as ConductorSize);
}
