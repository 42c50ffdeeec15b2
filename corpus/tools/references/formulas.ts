import { unit } from "mathjs";
import {
  areaOf,
  type EditionYear,
  fromSquareInches,
  standardSizes,
  tableAmpacity,
  toSquareInches,
  toSquareMillimeters,
} from "../../../src/index.js";
import { ampacityRatio } from "./heat-balance.js";
import type { Formula, Formulas, Gauge } from "./model.js";
import { heatOf } from "./quantities.js";

/** One value of the library beside the one that a formula gives. */
export interface Pair {
  readonly what: string;
  readonly library: number;
  readonly reference: number;
  /** Largest difference that rounding explains, in the unit of the values. */
  readonly rounding: number;
}

type Rows = {
  readonly [F in Formula]: (constants: Formulas[F], editions: readonly EditionYear[]) => readonly Pair[];
};

const metals = ["copper", "aluminum"] as const;

const rows: Rows = {
  "gauge-rounded-diameter": ({ diameterStep, ...gauge }) =>
    gaugeSizes.map(({ size, number }) => {
      const diameter = Math.round(diameterOf(gauge, number) / diameterStep) * diameterStep;
      const step = areaStep(gauge, areaOf(size));
      const reference = Math.round(diameter ** 2 / step) * step;
      return { what: size, library: areaOf(size), reference, rounding: 0 };
    }),
  "gauge-exact-diameter": (gauge) =>
    gaugeSizes.map(({ size, number }) => ({
      what: size,
      library: areaOf(size),
      reference: diameterOf(gauge, number) ** 2,
      rounding: areaStep(gauge, areaOf(size)) / 2,
    })),
  "kcmil-designation": () =>
    standardSizes
      .filter((size) => size.endsWith("kcmil"))
      .map((size) => ({
        what: size,
        library: areaOf(size),
        reference: Number.parseInt(size, 10) * 1000,
        rounding: 0,
      })),
  "library-of-units": () =>
    standardSizes.flatMap((size) => {
      const area = areaOf(size);
      const circle = unit((Math.PI / 4) * area, "mil^2");
      const squareInches = circle.toNumber("in^2");
      return [
        {
          what: `${size} in mm2`,
          library: toSquareMillimeters(area),
          reference: circle.toNumber("mm^2"),
          rounding: 0,
        },
        { what: `${size} in in2`, library: toSquareInches(area), reference: squareInches, rounding: 0 },
        // Whole circular mils, dropped to the one below.
        { what: `${size} from in2`, library: fromSquareInches(squareInches), reference: area, rounding: 1 },
      ];
    }),
  "ampacity-by-temperature": (constants, editions) =>
    editions.flatMap((year) =>
      metals.flatMap((metal) =>
        standardSizes.flatMap((size) =>
          ([60, 90] as const).flatMap((column) => {
            const { amperes: library } = tableAmpacity({
              edition: year,
              size,
              material: metal,
              temperature: column,
            });
            const { amperes: given } = tableAmpacity({
              edition: year,
              size,
              material: metal,
              temperature: 75,
            });
            if (library === null || given === null) return [];
            const { ambient, from } = constants;
            const ratio = ampacityRatio(
              { conductor: from, ambient },
              { conductor: column, ambient },
              constants[metal],
            );
            // Both the given ampacity and the one that follows are rounded.
            const rounding = constants.step / 2;
            return [
              { what: `${year} ${size} ${metal} ${column} C`, library, reference: given * ratio, rounding },
            ];
          }),
        ),
      ),
    ),
  "heat-capacity": (constants) =>
    metals.map((material) => ({
      what: material,
      library: heatOf({ material }).factor,
      reference: factorFromMetal(constants, material),
      rounding: 0,
    })),
};

/** Every pair of a formula. The cast rests on the schema, which fixes the constants of each. */
export function pairsOf(
  formula: Formula,
  constants: object,
  editions: readonly EditionYear[],
): readonly Pair[] {
  const of = rows[formula] as (constants: object, editions: readonly EditionYear[]) => readonly Pair[];
  return of(constants, editions);
}

/** Sizes of the gauge with their numbers: 18 AWG is 18, 1/0 AWG is 0, 4/0 AWG is -3. */
const gaugeSizes = standardSizes
  .filter((size) => size.endsWith("AWG"))
  .map((size) => {
    const first = Number.parseInt(size, 10);
    return { size, number: size.includes("/0") ? 1 - first : first };
  });

function diameterOf({ diameterOf36, ratio, steps }: Gauge, number: number): number {
  return diameterOf36 * ratio ** ((36 - number) / steps);
}

function areaStep({ smallAreaStep, largeAreaStep, largeFrom }: Gauge, area: number): number {
  return area < largeFrom ? smallAreaStep : largeAreaStep;
}

function factorFromMetal(constants: Formulas["heat-capacity"], metal: (typeof metals)[number]): number {
  const { resistivityAt20 } = constants;
  const [density, heat, coefficient, conductivity] =
    metal === "copper"
      ? [
          constants.copperDensity,
          constants.copperHeat,
          constants.copperCoefficientAt20,
          constants.copperConductivity,
        ]
      : [
          constants.aluminumDensity,
          constants.aluminumHeat,
          constants.aluminumCoefficientAt20,
          constants.aluminumConductivity,
        ];
  // 1 ohm mm2/m is 1e-6 ohm m; 1 mm2 is 1e-6 m2.
  const resistivity = (resistivityAt20 * 1e-6) / (conductivity / 100);
  const squareMetersPerCircularMil = toSquareMillimeters(1) * 1e-6;
  return ((Math.LN10 * density * heat) / (resistivity * coefficient)) * squareMetersPerCircularMil ** 2;
}
