import {
  areaOf,
  fromSquareInches,
  type ShortTimeWithstand,
  shortTimeWithstand,
  toSquareInches,
  toSquareMillimeters,
  transformerCurrent,
} from "../../../src/index.js";
import { ampacityRatio } from "./heat-balance.js";
import type { Quantity, Questions } from "./model.js";

type Answers = {
  readonly [Q in Quantity]: (ask: Questions[Q]["ask"], constants: Questions[Q]["constants"]) => number;
};
type Heated = Questions["amperes-per-circular-mil"]["ask"];
type HeatStep = Extract<ShortTimeWithstand["steps"][number], { kind: "heat" }>;
type OfMetal = Questions["withstand-factor"]["ask"];

const squareMillimetersPerCircularMil = toSquareMillimeters(1);
const metersPerInch = Math.sqrt(toSquareMillimeters(1) / toSquareInches(1)) / 1000;
const inchesPerMil = Math.sqrt((toSquareInches(1) * 4) / Math.PI);
const cyclesPerSecond = 60;

/** What the library says to each quantity, in the unit of the group. */
const answers: Answers = {
  area: ({ size }) => areaOf(size),
  "square-millimeters": ({ size }) => toSquareMillimeters(areaOf(size)),
  "si-factor": ({ unit }) =>
    ({
      "circular mil": squareMillimetersPerCircularMil / 1e6,
      mil: inchesPerMil * metersPerInch,
      inch: metersPerInch,
    })[unit],
  "circular-mils-of-bar": ({ width, thickness }) => fromSquareInches(width * thickness),
  "resistivity-per-circular-mil-foot": ({ resistivity }, { metersPerFoot }) =>
    (resistivity * metersPerFoot) / squareMillimetersPerCircularMil,
  resistance: ({ size }, { resistivityAt20, percentConductivity, coefficientAt75, stranding }) => {
    const at75 = resistivityAt20 / (percentConductivity / 100) / (1 + coefficientAt75 * (20 - 75));
    return (1000 * at75 * stranding) / toSquareMillimeters(areaOf(size));
  },
  // Not of the library: the equation by which its columns are judged.
  "ambient-factor": ({ column, ambient }, constants) =>
    ampacityRatio({ conductor: column, ambient: constants.ambient }, { conductor: column, ambient }, 0),
  "transformer-current": transformerCurrent,
  "temperature-coefficient": ({ material }, { reference }) => 1 / (heatOf({ material }).offset + reference),
  "withstand-factor": (ask) => heatOf(ask).factor,
  "withstand-offset": (ask) => heatOf(ask).offset,
  "metric-factor": (ask) => heatOf(ask).factor / squareMillimetersPerCircularMil ** 2,
  "metric-root-factor": (ask) => Math.sqrt(heatOf(ask).factor / Math.LN10) / squareMillimetersPerCircularMil,
  "amperes-per-circular-mil": amperesPerCircularMil,
  "amperes-per-square-millimeter": (ask) => amperesPerCircularMil(ask) / squareMillimetersPerCircularMil,
  "squared-amperes-per-square-millimeter": (ask) =>
    (amperesPerCircularMil(ask) / squareMillimetersPerCircularMil) ** 2,
  "circular-mils-per-ampere": ({ cycles, ...heated }) =>
    Math.sqrt(cycles / cyclesPerSecond) / amperesPerCircularMil(heated),
  "withstand-amperes": ({ cycles, size, ...heated }) =>
    Math.sqrt(withstandOf(heated, areaOf(size)).capacity / (cycles / cyclesPerSecond)),
  "withstand-capacity": ({ size, ...heated }) => withstandOf(heated, areaOf(size)).capacity,
  "withstand-area": ({ amperes, seconds, ...heated }) =>
    withstandOf(heated, 1, { amperes, seconds }).requiredArea / 1000,
};

/** Asks the library. The casts rest on the schema, which fixes question and constants of each quantity. */
export function answerTo(quantity: Quantity, ask: object, constants: object): number {
  const answer = answers[quantity] as (ask: object, constants: object) => number;
  return answer(ask, constants);
}

/** Factor and offset of the short-time withstand of a metal, as the library states them in its steps. */
export function heatOf({ material }: OfMetal): HeatStep {
  const { steps } = withstandOf({ material, initial: 75, final: 150 }, 1);
  const heat = steps.find((step) => step.kind === "heat");
  if (heat === undefined) throw new Error("a short-time withstand has no step of heat");
  return heat;
}

function amperesPerCircularMil(heated: Heated): number {
  return Math.sqrt(withstandOf(heated, 1).capacity);
}

function withstandOf(
  { material, initial, final }: Heated,
  areaCircularMils: number,
  fault: Parameters<typeof shortTimeWithstand>[0]["fault"] = { letThrough: 1 },
): ShortTimeWithstand {
  return shortTimeWithstand({
    conductor: { areaCircularMils, material },
    temperatures: { initial, final },
    fault,
  });
}
