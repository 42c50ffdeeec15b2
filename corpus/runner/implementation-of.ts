import type {
  Code,
  InputError,
  Role,
  SizingResult,
  sizeCommonConductorOfDerivedSystems,
  sizeElectrodeBondingJumper,
  sizeElectrodeRacewayBondingJumper,
  sizeEquipmentBondingJumper,
  sizeEquipmentGroundingConductor,
  sizeGroundedConductor,
  sizeGroundingElectrodeConductor,
  sizeImpedanceBondingJumper,
  sizeImpedanceGroundingConductor,
  sizeIntersystemBondingConductor,
  sizeMainBondingJumper,
  sizeOtherPipingBondingJumper,
  sizeStructuralMetalBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
  sizeWaterPipingBondingJumper,
} from "../../src/index.js";
import { checkFunctions } from "../read-arguments.js";
import type { Answer, Implementation, QuestionOf } from "./answer.js";
import type { CheckInputs, Uncoded } from "./check-input.js";

interface PackageFunctions {
  sizeCommonConductorOfDerivedSystems: typeof sizeCommonConductorOfDerivedSystems;
  sizeElectrodeBondingJumper: typeof sizeElectrodeBondingJumper;
  sizeElectrodeRacewayBondingJumper: typeof sizeElectrodeRacewayBondingJumper;
  sizeEquipmentBondingJumper: typeof sizeEquipmentBondingJumper;
  sizeEquipmentGroundingConductor: typeof sizeEquipmentGroundingConductor;
  sizeGroundedConductor: typeof sizeGroundedConductor;
  sizeGroundingElectrodeConductor: typeof sizeGroundingElectrodeConductor;
  sizeImpedanceBondingJumper: typeof sizeImpedanceBondingJumper;
  sizeImpedanceGroundingConductor: typeof sizeImpedanceGroundingConductor;
  sizeIntersystemBondingConductor: typeof sizeIntersystemBondingConductor;
  sizeMainBondingJumper: typeof sizeMainBondingJumper;
  sizeOtherPipingBondingJumper: typeof sizeOtherPipingBondingJumper;
  sizeStructuralMetalBondingJumper: typeof sizeStructuralMetalBondingJumper;
  sizeSupplySideBondingJumper: typeof sizeSupplySideBondingJumper;
  sizeSystemBondingJumper: typeof sizeSystemBondingJumper;
  sizeWaterPipingBondingJumper: typeof sizeWaterPipingBondingJumper;
}

const functionNames = [
  "sizeCommonConductorOfDerivedSystems",
  "sizeElectrodeBondingJumper",
  "sizeElectrodeRacewayBondingJumper",
  "sizeEquipmentBondingJumper",
  "sizeEquipmentGroundingConductor",
  "sizeGroundedConductor",
  "sizeGroundingElectrodeConductor",
  "sizeImpedanceBondingJumper",
  "sizeImpedanceGroundingConductor",
  "sizeIntersystemBondingConductor",
  "sizeMainBondingJumper",
  "sizeOtherPipingBondingJumper",
  "sizeStructuralMetalBondingJumper",
  "sizeSupplySideBondingJumper",
  "sizeSystemBondingJumper",
  "sizeWaterPipingBondingJumper",
] as const satisfies readonly (keyof PackageFunctions)[];

/** The functions that size a conductor, as the package `bondmil` has them. */
export type SizingFunctions = Readonly<PackageFunctions>;

/** The part of a result that a check speaks of. */
type CheckedResult = Pick<SizingResult, "outcome" | "requiredArea" | "steps">;

type Sizes = { readonly [R in Role]: (code: Code, input: CheckInputs[R]) => CheckedResult };

function sizesBy(functions: SizingFunctions): Sizes {
  return {
    "main-bonding-jumper": asked(functions.sizeMainBondingJumper),
    "system-bonding-jumper": asked(functions.sizeSystemBondingJumper),
    "supply-side-bonding-jumper": asked(functions.sizeSupplySideBondingJumper),
    "grounded-conductor": asked(functions.sizeGroundedConductor),
    "impedance-grounding-conductor": asked(functions.sizeImpedanceGroundingConductor),
    "impedance-bonding-jumper": asked(functions.sizeImpedanceBondingJumper),
    "equipment-grounding-conductor": asked(functions.sizeEquipmentGroundingConductor),
    "equipment-bonding-jumper": asked(functions.sizeEquipmentBondingJumper),
    "water-piping-bonding-jumper": asked(functions.sizeWaterPipingBondingJumper),
    "other-piping-bonding-jumper": asked(functions.sizeOtherPipingBondingJumper),
    "structural-metal-bonding-jumper": asked(functions.sizeStructuralMetalBondingJumper),
    "grounding-electrode-conductor": (code, input) => {
      if ("supply" in input) return functions.sizeGroundingElectrodeConductor({ ...input, code });
      const { conductor, electrodes } = input;
      return functions.sizeCommonConductorOfDerivedSystems({ code, conductor, electrodes });
    },
    "electrode-bonding-jumper": asked(functions.sizeElectrodeBondingJumper),
    "electrode-raceway-bonding-jumper": (code, input) =>
      atOneEnd(functions.sizeElectrodeRacewayBondingJumper({ ...input, code })),
    "intersystem-bonding-conductor": asked(functions.sizeIntersystemBondingConductor),
  };
}

/**
 * This library as an implementation that the corpus can be put to.
 *
 * @param functions - the sizing functions of the package; the whole of it will do
 * @returns what {@link runCorpus} asks
 * @throws `InputError` of `bondmil` naming every function that is missing
 *
 * @example
 * ```ts
 * import * as bondmil from "bondmil";
 * import { implementationOf, runCorpus } from "bondmil/corpus";
 *
 * const rows = runCorpus(implementationOf(bondmil), { role: "main-bonding-jumper" });
 * rows.filter(({ verdict }) => verdict !== "met"); // => []
 * ```
 */
export function implementationOf(functions: SizingFunctions): Implementation {
  checkFunctions(functions, functionNames);
  const sizes = sizesBy(functions);
  return (question) => {
    try {
      return answerOf(resultOf(sizes, question));
    } catch (error) {
      if (!isRefusal(error)) throw error;
      return { errors: error.issues.map(({ code }) => code) };
    }
  };
}

/** What the library throws at bad input, known by its form: the functions may come from another copy of the package. */
function isRefusal(error: unknown): error is InputError {
  return error instanceof Error && "issues" in error && Array.isArray(error.issues);
}

function resultOf<R extends Role>(sizes: Sizes, { role, edition, input }: QuestionOf<R>): CheckedResult {
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
