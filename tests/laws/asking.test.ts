/* Laws of prepare, largestSupply and largestDevice: they agree with size on the plainest question of every role. */
import {
  type AnyRole,
  areaOf,
  assumedConductors,
  type Code,
  conductorSizes,
  editionYears,
  largestDevice,
  largestSupply,
  type Material,
  type Prepared,
  prepare,
  type SizingResult,
  size,
  standardSizes,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { type GridQuestion, gridOf } from "../../src/asking/grid.js";
import { plainly } from "../../src/asking/plainly.js";
import { ratingTable } from "../../src/rules/rating-table.js";
import { rolesByRating, rolesBySupply } from "./roles.js";

const columns = ["copper", "aluminum"] as const;
const severalSets = 2;

function fullPath(role: AnyRole, question: GridQuestion["question"]): SizingResult {
  return size(role, plainly(role, question));
}

describe.each(rolesBySupply)("asking of the $id", (role) => {
  const preparedFor = (code: Code, supplyMaterial: Material, material: Material) =>
    prepare(role, { code, supplyMaterial, conductor: { material } });

  it.each(editionYears)("prepared agrees with the full path over the whole grid in %s", (year) => {
    const code = { year };
    const paths = new Map<string, Prepared>(
      columns.flatMap((supplied) =>
        columns.map((own) => [`${supplied} ${own}`, preparedFor(code, supplied, own)] as const),
      ),
    );
    const grid = gridOf(role, code);
    const wrong = grid.filter(({ question }) => {
      const [set] = question.supply?.sets ?? [];
      if (set === undefined || "phases" in set) throw new Error("the grid has uniform sets");
      const path = paths.get(`${set.material} ${question.material}`);
      return (
        path === undefined ||
        byPrepared(path, code, set, question.material) !== fullPath(role, question).requiredArea
      );
    });
    expect(grid.length).toBeGreaterThan(2000);
    expect(wrong.map(({ name }) => name).slice(0, 5)).toEqual([]);
  });

  it.each(editionYears)(
    "the largest supply is the last that the prepared path lets a conductor have in %s",
    (year) => {
      const code = { year };
      for (const supplyMaterial of columns) {
        for (const material of columns) {
          const path = preparedFor(code, supplyMaterial, material);
          const isEnough = (installed: number, area: number): boolean =>
            !needsAssumed(path, area) && withoutAssumed(path, area) <= installed;
          for (const one of standardSizes) {
            const installed = areaOf(one);
            const { largest, limit } = largestSupply(role, {
              code,
              conductor: { size: one, material },
              supplyMaterial,
            });
            if (limit === "supply-does-not-decide") {
              expect(isEnough(installed, 2 ** 40)).toBe(true);
              continue;
            }
            if (largest !== null) expect(isEnough(installed, largest)).toBe(true);
            expect(isEnough(installed, (largest ?? 0) + 1)).toBe(false);
            expect(limit.startsWith("assumed-conductors")).toBe(needsAssumed(path, (largest ?? 0) + 1));
          }
        }
      }
    },
  );
});

function needsAssumed(path: Prepared, area: number): boolean {
  return path.kind === "by-assumed-area" && path.needsAssumedArea(area, severalSets);
}

function withoutAssumed(path: Prepared, area: number): number {
  return path.kind === "by-area" ? path.requiredArea(area) : path.requiredArea(area, 0, severalSets);
}

/** Circular mils by the prepared path, for so many sets of one conductor. */
function byPrepared(
  path: Prepared,
  { year }: Code,
  set: {
    readonly count: number;
    readonly size: (typeof conductorSizes)[number];
    readonly material: Material;
  },
  material: Material,
): number {
  const { count, size: one } = set;
  const installed = count * areaOf(one);
  if (path.kind === "by-area") return path.requiredArea(installed);
  if (!path.needsAssumedArea(installed, count)) return path.requiredArea(installed, 0, count);
  const [assumed] = assumedConductors({
    edition: year,
    supply: { sets: [{ ...set, count: 1 }] },
    material,
    temperature: 75,
  });
  return path.requiredArea(installed, count * (assumed?.area ?? areaOf(one)), count);
}

describe.each(rolesByRating)("asking of the $id", (role) => {
  it.each(editionYears)("prepared agrees with the full path over the whole grid in %s", (year) => {
    const code = { year };
    const grid = gridOf(role, code);
    const wrong = grid.filter(({ question: { amperes = 0, material } }) => {
      const { requiredArea } = prepare(role, { code, conductor: { material } });
      return requiredArea(amperes) !== fullPath(role, { code, material, amperes }).requiredArea;
    });
    expect(grid.length).toBeGreaterThan(30);
    expect(wrong.map(({ name }) => name)).toEqual([]);
  });

  it.each(editionYears)("the largest device has a row that is met, and the next row is not in %s", (year) => {
    const code = { year };
    const ends = ratingTable(code).rows.map(({ through }) => through);
    for (const material of columns) {
      const required = (amperes: number) => fullPath(role, { code, material, amperes }).requiredArea;
      for (const one of conductorSizes) {
        const { amperes, row, reserve } = largestDevice(role, { code, conductor: { size: one, material } });
        const met = ends.filter((end) => end <= (amperes ?? 0));
        const next = ends[met.length];
        expect(row.through).toBe(amperes ?? ends[0]);
        if (amperes !== null) {
          expect(ends).toContain(amperes);
          expect(required(amperes)).toBeLessThanOrEqual(areaOf(one));
        }
        if (next !== undefined) expect(required(next)).toBeGreaterThan(areaOf(one));
        expect(reserve?.area).toBe(amperes === null ? undefined : areaOf(one) - row.requiredArea);
      }
    }
  });
});
