import { areaOf, type ConductorSize, type Material, standardSizes } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import { type EditionYear, editionYears } from "../edition/index.js";
import { member, optional, readCount, readList } from "../input/reader.js";
import type { JumperInput } from "../rules/jumper-input.js";
import type { SizingResult } from "../rules/result.js";
import { readMaterial } from "../supply/read.js";
import { mulExact } from "../units/exact.js";
import { ask, checkRequest, readYears } from "./ask.js";
import { type Swept, type SweptEdition, sweptOf } from "./swept.js";

/** Which supplies a sizing function is asked for, and under which editions. */
export interface SupplySweepRequest {
  /** A sizing function; one with another input is wrapped, so that it takes the supply and the jumper from this. */
  readonly size: (input: JumperInput) => SizingResult;
  /** All editions unless told. */
  readonly years?: readonly EditionYear[];
  /** Material of the supply. */
  readonly material: Material;
  readonly jumperMaterial: Material;
  /** Sizes of the supply conductors; every standard size unless told. */
  readonly sizes?: readonly ConductorSize[];
  /** Numbers of sets; 1 to 20 unless told. */
  readonly counts?: readonly number[];
}

/** One supply under one edition. */
export interface SupplySweepRow extends SweptEdition, Swept {
  /** Number of sets. */
  readonly sets: number;
  readonly supplySize: ConductorSize;
  readonly supplyMaterial: Material;
  /** Circular mils of all sets. */
  readonly supplyArea: number;
  readonly jumperMaterial: Material;
}

/**
 * Sizes a conductor for many supplies under many editions, as rows: supplies in the order of the sizes and then of the sets, and for
 * each supply the editions one below the other. Every row comes from the full path, with what governs, its section and evidence.
 *
 * @param request - a sizing function, the materials, and which sizes, sets and editions
 * @returns flat rows, for JSON or for {@link rowsToCsv}; areas in circular mils
 * @throws {@link InputError} if the request is wrong; what an edition refuses is a row that says so
 *
 * @example
 * ```ts
 * import { sizeStructuralMetalBondingJumper, sweepSupplyArea } from "bondmil";
 * const rows = sweepSupplyArea({
 *   size: ({ code, supply, jumper }) => sizeStructuralMetalBondingJumper({ code, of: "service", supply, jumper }),
 *   years: ["2014", "2017", "2020"],
 *   material: "copper",
 *   jumperMaterial: "copper",
 *   sizes: ["600 kcmil"],
 *   counts: [1, 4],
 * });
 * rows.map(({ sets, edition, size }) => [sets, edition, size]);
 * // => [
 * //   [1, "2014", "1/0 AWG"], [1, "2017", "1/0 AWG"], [1, "2020", "1/0 AWG"],
 * //   [4, "2014", "3/0 AWG"], [4, "2017", "300 kcmil"], [4, "2020", "3/0 AWG"],
 * // ]
 * ```
 */
export function sweepSupplyArea(request: SupplySweepRequest): readonly SupplySweepRow[] {
  checkRequest(request, ["size", "years", "material", "jumperMaterial", "sizes", "counts"], (at) => {
    readYears(at);
    readMaterial(member(at, "material"));
    readMaterial(member(at, "jumperMaterial"));
    optional(member(at, "sizes"), (sizes) => readList(sizes, readSize, mostOfEach));
    optional(member(at, "counts"), (counts) => readList(counts, (one) => readCount(one, "sets"), mostOfEach));
  });
  const {
    size,
    years = editionYears,
    material,
    jumperMaterial,
    sizes = standardSizes,
    counts = upTo20,
  } = request;
  return sizes.flatMap((supplySize) =>
    counts.flatMap((sets) =>
      years.map((edition): SupplySweepRow => {
        const answer = ask(size, {
          code: { year: edition },
          supply: { sets: [{ count: sets, size: supplySize, material }] },
          jumper: { material: jumperMaterial },
        });
        return {
          edition,
          sets,
          supplySize,
          supplyMaterial: material,
          supplyArea: mulExact(sets, areaOf(supplySize)),
          jumperMaterial,
          ...sweptOf(answer),
        };
      }),
    ),
  );
}

/** Sizes, and counts, of one sweep: there is a row for every size with every count in every edition. */
const mostOfEach = 100;

const upTo20: readonly number[] = /* @__PURE__ */ Array.from({ length: 20 }, (_, place) => place + 1);
