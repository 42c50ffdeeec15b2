import { areaOf, columnOf } from "../conductor/index.js";
import type { Code } from "../edition/index.js";
import { commonConductorOfDerivedSystems } from "../edition/tables/named-sizes.generated.js";
import { commonDerivedExceptionExists } from "../edition/tables/placements.generated.js";
import { groundingElectrodeConductorDerivedPolicies } from "../edition/tables/policies.generated.js";
import { commonDerivedException } from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import type { CapStep, NamedSizeStep } from "../sizing/index.js";
import { acting, limited } from "../sizing/limits.js";
import type { Decided } from "./decided.js";
import { electrodeCap, electrodeCautions } from "./electrode.js";
import { finish } from "./finish.js";
import {
  type CommonDerivedConductorInput,
  readCommonDerivedInput,
} from "./grounding-electrode-conductor-input.js";
import type { SizingResult } from "./result.js";

/**
 * Sizes the common grounding electrode conductor of several separately derived systems: a fixed 3/0 AWG copper or 250 kcmil
 * aluminum, whatever the systems (250.30(A)(6)); from 2020 not above the largest size for its electrodes, where all that are present
 * have one. The taps are sized as those of one system.
 *
 * @param input - the code, the conductor's material, and the electrodes that are present
 * @returns the size with its steps; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeCommonConductorOfDerivedSystems } from "bondmil";
 * const common = sizeCommonConductorOfDerivedSystems({
 *   code: { year: "2020" },
 *   conductor: { material: "copper" },
 *   electrodes: [{ kind: "structural-metal" }],
 * });
 * common.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * ```
 */
export function sizeCommonConductorOfDerivedSystems(input: CommonDerivedConductorInput): SizingResult {
  const read = readAll(input, readCommonDerivedInput);
  return finish(read.code, (code) => {
    const { conductor, electrodes } = read;
    const decided = decide(code, read);
    return {
      ...decided,
      policies: groundingElectrodeConductorDerivedPolicies,
      cautions: electrodeCautions(code, role, electrodes, conductor.material),
    };
  });
}

const role = "grounding-electrode-conductor";

function decide(code: Code, { conductor: { material }, electrodes }: CommonDerivedConductorInput): Decided {
  const { year } = code;
  const named = commonConductorOfDerivedSystems[year];
  const size = named[columnOf(material)] ?? named.copper;
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "code",
    size,
    requiredArea: areaOf(size),
    citation: named.citation,
  };
  const ceiling = commonDerivedExceptionExists[year] ? electrodeCap(code, role, electrodes, material) : null;
  const caps: readonly CapStep[] =
    ceiling === null ? [] : [{ ...ceiling, citation: commonDerivedException[year] }];
  return {
    role,
    code,
    material,
    steps: [step, ...acting(caps, step.requiredArea)],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, caps, []),
    citation: named.citation,
  };
}
