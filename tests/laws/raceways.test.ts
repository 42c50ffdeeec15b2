import {
  type ConductorSize,
  compareSizes,
  editionYears,
  InputError,
  type RacewayFillQuestion,
  type RacewayKind,
  racewayFill,
  type TradeSize,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { insulatedConductorDimensions } from "../../src/edition/tables/insulated-conductor-dimensions.generated.js";
import { boresOf, holdIn, smallestBore } from "../../src/engineering/raceway-fill/trade-sizes.js";

const kinds: readonly RacewayKind[] = [
  "electrical-metallic-tubing",
  "intermediate-metal",
  "rigid-metal",
  "pvc-schedule-40",
  "pvc-schedule-80",
];
const sizes = insulatedConductorDimensions["2023"].rows
  .filter(({ thhn }) => thhn !== null)
  .map(({ size }) => size)
  .filter((size) => compareSizes(size, "500 kcmil") <= 0);

const entry = fc.record({
  count: fc.integer({ min: 1, max: 6 }),
  size: fc.constantFrom(...sizes),
  insulation: fc.constantFrom("THHN", "XHHW-2", "THW", "RHW-2"),
} as const);
const place = {
  edition: fc.constantFrom(...editionYears),
  raceway: fc.constantFrom(...kinds),
  nipple: fc.boolean(),
};
const question = fc.record({ ...place, conductors: fc.array(entry, { minLength: 1, maxLength: 4 }) });

/** Place of the smallest trade size; beyond the last where none takes them. */
function needed(asked: RacewayFillQuestion): number {
  const known = boresOf(asked.edition, asked.raceway).map(({ tradeSize }) => tradeSize);
  try {
    return known.indexOf(racewayFill(asked).smallestTradeSize);
  } catch (error) {
    if (error instanceof InputError) return known.length;
    throw error;
  }
}

const countOf = ({ conductors }: Pick<RacewayFillQuestion, "conductors">): number =>
  conductors.reduce((sum, { count }) => sum + count, 0);

describe("what a raceway holds", () => {
  it("never needs a smaller raceway for one more conductor, but that a third may be filled closer than two", () => {
    fc.assert(
      fc.property(question, entry, (asked, { count: _, ...one }) => {
        const more = { ...asked, conductors: [...asked.conductors, { ...one, count: 1 }] };
        if (countOf(asked) === 2 && !asked.nipple) return;
        expect(needed(more)).toBeGreaterThanOrEqual(needed(asked));
      }),
    );
    const two: RacewayFillQuestion = {
      edition: "2023",
      raceway: "electrical-metallic-tubing",
      conductors: [{ count: 2, size: "400 kcmil", insulation: "THHN" }],
    };
    const third = { count: 1, size: "14 AWG", insulation: "THHN" } as const;
    expect(needed({ ...two, conductors: [...two.conductors, third] })).toBeLessThan(needed(two));
  });

  it("never needs a smaller raceway for a larger conductor", () => {
    fc.assert(
      fc.property(question, fc.constantFrom(...sizes), ({ conductors: [first], ...asked }, other) => {
        if (first === undefined) return;
        const [small, large] = [first.size, other].sort(compareSizes) as [ConductorSize, ConductorSize];
        const withSize = (size: ConductorSize) => needed({ ...asked, conductors: [{ ...first, size }] });
        expect(withSize(large)).toBeGreaterThanOrEqual(withSize(small));
      }),
    );
  });

  it("fits in its smallest trade size and every larger one, and in no smaller one", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const known = boresOf(asked.edition, asked.raceway).map(({ tradeSize }) => tradeSize);
        const smallest = needed(asked);
        if (smallest === known.length) return;
        const fits = (tradeSize: TradeSize) => racewayFill({ ...asked, tradeSize }).fits;
        expect(known.map(fits)).toEqual(known.map((_, i) => i >= smallest));
      }),
    );
  });

  it("needs no larger raceway in a nipple", () => {
    fc.assert(
      fc.property(question, (asked) => {
        expect(needed({ ...asked, nipple: true })).toBeLessThanOrEqual(needed({ ...asked, nipple: false }));
      }),
    );
  });

  it("does not hang on how conductors are listed, or in which order", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const each = asked.conductors
          .flatMap(({ count, ...one }) => Array.from({ length: count }, () => ({ ...one, count: 1 })))
          .reverse();
        expect(needed({ ...asked, conductors: each })).toBe(needed(asked));
      }),
    );
  });

  it("says of what is added what the whole question says", () => {
    fc.assert(
      fc.property(question, entry, (asked, added) => {
        const whole = needed({ ...asked, conductors: [...asked.conductors, added] });
        expect(needed({ ...asked, added: [added] })).toBe(whole);
      }),
    );
  });
});

describe("the printed areas of raceways", () => {
  it("rise with the trade size, and are the parts of the whole that their columns name", () => {
    for (const edition of editionYears) {
      for (const kind of kinds) {
        const bores = boresOf(edition, kind);
        bores.forEach(({ area, one, two, more, sixty, diameter }, i) => {
          const before = bores[i - 1];
          if (before !== undefined) expect(area).toBeGreaterThan(before.area);
          for (const [part, percent] of [
            [one, 53],
            [two, 31],
            [more, 40],
            [sixty, 60],
          ] as const)
            expect(Math.abs(part - (area * percent) / 100)).toBeLessThanOrEqual(10);
          expect(Math.abs(area / 10_000 / ((Math.PI / 4) * diameter ** 2) - 1)).toBeLessThan(0.003);
        });
      }
    }
  });

  it("are held by no number that is not whole", () => {
    fc.assert(
      fc.property(
        fc.record(place),
        fc.array(
          fc.record({ count: fc.integer({ min: 1, max: 100 }), area: fc.integer({ min: 1, max: 9000 }) }),
          {
            minLength: 1,
            maxLength: 3,
          },
        ),
        ({ edition, raceway, nipple }, conductors) => {
          const bore = smallestBore(edition, raceway, conductors, nipple);
          if (bore === null) return;
          expect(Number.isInteger(holdIn(edition, bore, conductors, nipple).permitted)).toBe(true);
        },
      ),
    );
  });
});
