import {
  areaOf,
  assumedConductors,
  type ConductorColumn,
  type EditionYear,
  editionYears,
  type Input,
  type mainBondingJumper,
  prepare,
  type StandardSize,
  size,
  standardSizeFor,
  standardSizes,
  type TemperatureColumn,
} from "bondmil";
import { describe, expect, it } from "vitest";
import type { JumperRole } from "../roles/jumper/facts.js";
import { jumpers } from "./roles.js";

const columns: readonly ConductorColumn[] = ["copper", "aluminum"];
const mostSets = 20;
/** Coprime to the 20 counts and the 30 sizes, so that the sample meets all of them. */
const everyNth = 37;

interface Place {
  readonly role: JumperRole;
  readonly year: EditionYear;
  readonly supply: ConductorColumn;
  readonly jumper: ConductorColumn;
  readonly temperature: TemperatureColumn;
}

function inputFor(
  { year, supply, jumper, temperature }: Place,
  size: StandardSize,
  count: number,
): Input<typeof mainBondingJumper> {
  return {
    code: { year },
    supply: { sets: [{ count, size, material: supply }] },
    conductor: { material: jumper },
    temperature,
  };
}

/** Required areas by size and by number of sets, through the prepared path. */
function requiredAreas(place: Place): readonly (readonly number[])[] {
  const { role, year, supply, jumper, temperature } = place;
  const prepared = prepare(role, {
    code: { year },
    supplyMaterial: supply,
    conductor: { material: jumper },
  });
  return standardSizes.map((size) => {
    const own = areaOf(size);
    const [assumed] = assumedConductors({
      edition: year,
      supply: inputFor(place, size, 1).supply,
      material: jumper,
      temperature,
    });
    return Array.from({ length: mostSets }, (_, i) => {
      const count = i + 1;
      return prepared.kind === "by-area"
        ? prepared.requiredArea(count * own)
        : prepared.requiredArea(count * own, count * (assumed?.area ?? own), count);
    });
  });
}

/** Every place of the grid at 75 C, and the other temperature columns where conductors are replaced. */
const places: readonly Place[] = jumpers.flatMap((role) =>
  editionYears.flatMap((year) =>
    columns.flatMap((supply) =>
      columns.flatMap((jumper) =>
        (supply === jumper ? [75 as const] : [60 as const, 75 as const, 90 as const]).map((temperature) => ({
          role,
          year,
          supply,
          jumper,
          temperature,
        })),
      ),
    ),
  ),
);

describe("every size, 1 to 20 sets, both materials, every edition and role", () => {
  const areas = places.map((place) => ({ place, required: requiredAreas(place) }));
  const cells = areas.flatMap(({ place, required }) =>
    required.flatMap((byCount, i) =>
      byCount.map((area, n) => ({ place, size: standardSizes[i] ?? "18 AWG", count: n + 1, area })),
    ),
  );

  it("is a whole grid", () => {
    expect(standardSizes).toHaveLength(30);
    expect(cells).toHaveLength(jumpers.length * editionYears.length * 8 * 30 * mostSets);
  });

  it("agrees on the full path, every 37th cell", () => {
    const sample = cells.filter((_, i) => i % everyNth === 0);
    expect(sample.length).toBeGreaterThan(2500);
    const wrong = sample.flatMap(({ place, size: installed, count, area }) => {
      const result = size(place.role, inputFor(place, installed, count));
      const named = result.outcome.kind === "conductor" ? result.outcome.size : null;
      return result.requiredArea === area && named === standardSizeFor(area)
        ? []
        : [{ ...place, installed, count, area, full: result.requiredArea, named }];
    });
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it("never gets smaller with one more set", () => {
    const wrong = areas.flatMap(({ place, required }) =>
      required.flatMap((byCount, i) =>
        byCount.flatMap((area, n) =>
          n > 0 && area < (byCount[n - 1] ?? 0) ? [{ ...place, size: standardSizes[i], count: n + 1 }] : [],
        ),
      ),
    );
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it("never gets smaller with the next size up", () => {
    const wrong = areas.flatMap(({ place, required }) =>
      required.flatMap((byCount, i) =>
        byCount.flatMap((area, n) =>
          i > 0 && area < (required[i - 1]?.[n] ?? 0)
            ? [{ ...place, size: standardSizes[i], count: n + 1 }]
            : [],
        ),
      ),
    );
    expect(wrong.slice(0, 5)).toEqual([]);
  });
});
