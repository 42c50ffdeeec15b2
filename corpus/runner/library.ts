import * as bondmil from "../../src/index.js";
import { type Code, InputError, type Role, type SizingResult } from "../../src/index.js";
import type { Answer, Implementation, QuestionOf } from "./answer.js";
import type { CheckInputs, Uncoded } from "./check-input.js";

/** The part of a result that a check speaks of. */
type CheckedResult = Pick<SizingResult, "outcome" | "requiredArea" | "steps">;

type Sizes = { readonly [R in Role]: (code: Code, input: CheckInputs[R]) => CheckedResult };

const sizes: Sizes = {
  "main-bonding-jumper": asked(bondmil.sizeMainBondingJumper),
  "system-bonding-jumper": asked(bondmil.sizeSystemBondingJumper),
  "supply-side-bonding-jumper": asked(bondmil.sizeSupplySideBondingJumper),
  "grounded-conductor": asked(bondmil.sizeGroundedConductor),
  "impedance-grounding-conductor": asked(bondmil.sizeImpedanceGroundingConductor),
  "impedance-bonding-jumper": asked(bondmil.sizeImpedanceBondingJumper),
  "equipment-grounding-conductor": asked(bondmil.sizeEquipmentGroundingConductor),
  "equipment-bonding-jumper": asked(bondmil.sizeEquipmentBondingJumper),
  "water-piping-bonding-jumper": asked(bondmil.sizeWaterPipingBondingJumper),
  "other-piping-bonding-jumper": asked(bondmil.sizeOtherPipingBondingJumper),
  "structural-metal-bonding-jumper": asked(bondmil.sizeStructuralMetalBondingJumper),
  "grounding-electrode-conductor": (code, input) => {
    if ("supply" in input) return bondmil.sizeGroundingElectrodeConductor({ ...input, code });
    const { conductor, electrodes } = input;
    return bondmil.sizeCommonConductorOfDerivedSystems({ code, conductor, electrodes });
  },
  "electrode-bonding-jumper": asked(bondmil.sizeElectrodeBondingJumper),
  "electrode-raceway-bonding-jumper": (code, input) =>
    atOneEnd(bondmil.sizeElectrodeRacewayBondingJumper({ ...input, code })),
  "intersystem-bonding-conductor": asked(bondmil.sizeIntersystemBondingConductor),
};

/** This library, as an implementation that the corpus can be put to. */
export const library: Implementation = (question) => {
  try {
    return answerOf(resultOf(question));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { errors: error.issues.map((issue) => issue.code) };
  }
};

function resultOf<R extends Role>({ role, edition, input }: QuestionOf<R>): CheckedResult {
  return sizes[role]({ year: edition }, input);
}

function answerOf({ outcome, requiredArea, steps }: CheckedResult): Answer {
  const figures = {
    requiredArea,
    sum: steps.find((step) => step.kind === "sum")?.area ?? null,
    assumedSum: steps.find((step) => step.kind === "assumed")?.area ?? null,
  };
  return outcome.kind === "conductor"
    ? { size: outcome.size, quantity: outcome.quantity, ...figures }
    : { outcome: outcome.kind, ...figures };
}

/** An input and its code, put together again. The compiler cannot see that nothing else was left out. */
function asked<Input extends { readonly code: Code }>(
  size: (input: Input) => CheckedResult,
): (code: Code, input: Uncoded<Input>) => CheckedResult {
  return (code, input) => size({ ...input, code } as unknown as Input);
}

/** A raceway is bonded at both ends; a check speaks of the jumper at one of them. */
function atOneEnd(result: CheckedResult): CheckedResult {
  const { outcome } = result;
  return outcome.kind === "conductor" && outcome.quantity === 2
    ? { ...result, outcome: { ...outcome, quantity: 1 } }
    : result;
}
