import {
  ampacityOf,
  currentCarryingConductors,
  deviceFor,
  dwellingConductor,
  type EditionYear,
  feederTap,
  InputError,
  metalMass,
  racewayFill,
  requiredByLoad,
  type SupplyCandidatesQuestion,
  smallestConductorFor,
  supplyCandidates,
  tableAmpacity,
  transformerCurrent,
  transformerSecondary,
  voltageDrop,
} from "../../../src/index.js";
import { type CapacityQuestion, racewayCapacity } from "./raceway-capacity.js";

type Ask = (edition: EditionYear, input: Readonly<Record<string, unknown>>) => object;

/** Hands an input that is not yet believed to a function, which checks it itself. */
const asking =
  <Q, A extends object>(ask: (question: Q) => A): Ask =>
  (edition, input) =>
    ask({ ...input, edition } as Q);

/** The questions of the files in `corpus/supply`, by the name of the file. */
export const questions: Readonly<Record<string, Ask>> = {
  candidates: (edition, input) =>
    supplyCandidates({ ...input, code: { year: edition } } as SupplyCandidatesQuestion),
  "feeder-tap": asking(feederTap),
  "transformer-secondary": asking(transformerSecondary),
  "metal-mass": (_, input) => metalMass(input as unknown as Parameters<typeof metalMass>[0]),
  "raceway-capacity": (edition, input) => racewayCapacity(edition, input as unknown as CapacityQuestion),
  "raceway-fill": asking(racewayFill),
  ampacity: asking(ampacityOf),
  "continuous-load": asking(requiredByLoad),
  "current-carrying": asking(currentCarryingConductors),
  device: asking(deviceFor),
  dwelling: asking(dwellingConductor),
  "smallest-conductor": asking((question: Parameters<typeof smallestConductorFor>[0]) => ({
    size: smallestConductorFor(question),
  })),
  "table-ampacity": asking(tableAmpacity),
  "transformer-current": (_, input) => ({
    amperes: transformerCurrent(input as unknown as Parameters<typeof transformerCurrent>[0]),
  }),
  "voltage-drop": asking(voltageDrop),
};

/** The answer to a question; a refusal is an answer with its codes. */
export function answerTo(
  question: string,
  edition: EditionYear,
  input: Readonly<Record<string, unknown>>,
): unknown {
  const ask = questions[question];
  if (ask === undefined) throw new TypeError(`no question has the name ${question}`);
  try {
    return ask(edition, input);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { errors: error.issues.map(({ code }) => code) };
  }
}
