import { formatArea, fromSquareInches, toSquareInches, toSquareMillimeters } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { eighthUp, mulDivUp, mulExact } from "../../src/units/exact.js";

describe("unit factors", () => {
  it("has the circular mil of NIST SP 811, Appendix B: 5.067075 E-10 m2", () => {
    expect(toSquareMillimeters(1) / 1e6).toBeCloseTo(5.067075e-10, 16);
  });

  it("reproduces a published bar: 1/2 in. x 3/4 in. is 477,465 cmil, printed with pi/4 as 0.7854 as 477,463.7", () => {
    expect(fromSquareInches(0.375)).toBe(477464);
    expect(0.375e6 / 0.7854).toBeCloseTo(477463.7, 1);
  });

  it("agrees with the printed square millimeters of Chapter 9 Table 8 within their rounding", () => {
    const printed = {
      1620: 0.823,
      16510: 8.367,
      41740: 21.15,
      83690: 42.41,
      211600: 107.2,
      500000: 253,
      2000000: 1013,
    };
    for (const [area, mm2] of Object.entries(printed)) {
      expect(Math.abs(toSquareMillimeters(Number(area)) / mm2 - 1)).toBeLessThan(0.003);
    }
  });

  it("never credits a bar with metal that it does not have", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 20, noNaN: true }), (squareInches) => {
        expect(toSquareInches(fromSquareInches(squareInches))).toBeLessThanOrEqual(
          squareInches * (1 + 1e-12),
        );
      }),
    );
  });

  it("writes areas", () => {
    expect([
      formatArea(41740),
      formatArea(41740, "kcmil"),
      formatArea(41740, "mm2"),
      formatArea(41740, "in2"),
      formatArea(1_234_567),
    ]).toEqual(["41,740 cmil", "41.74 kcmil", "21.1 mm2", "0.033 in2", "1,234,567 cmil"]);
  });
});

describe("exact products", () => {
  it("refuses a product that doubles cannot hold", () => {
    expect(mulExact(94_906_265, 94_906_265)).toBe(Number(94_906_265n ** 2n));
    expect(() => mulExact(94_906_267, 94_906_267)).toThrow(RangeError);
  });

  it("rounds quotients up as BigInt does", () => {
    fc.assert(
      fc.property(
        fc.nat(94_000_000),
        fc.nat(94_000_000),
        fc.integer({ min: 1, max: 94_000_000 }),
        (a, b, c) => {
          const exact = (BigInt(a) * BigInt(b) + BigInt(c) - 1n) / BigInt(c);
          expect(mulDivUp(a, b, c)).toBe(Number(exact));
        },
      ),
    );
  });

  it("is not fooled where the ratio first would be: 29000 / 7000 x 7000", () => {
    expect(Math.ceil((29000 / 7000) * 7000)).toBe(29001);
    expect(mulDivUp(29000, 7000, 7000)).toBe(29000);
  });

  it("takes the smallest whole eighth that is enough", () => {
    fc.assert(
      fc.property(fc.nat(1e12), (total) => {
        const eighth = eighthUp(total);
        expect(8 * eighth >= total && 8 * (eighth - 1) < total).toBe(true);
      }),
    );
  });
});
