import { areaOf, type Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { supplementalRodCeiling } from "../edition/tables/named-sizes.generated.js";
import { electrodeBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { member, optional, type Reader, readAll, readFlag, readObject } from "../input/reader.js";
import type { CapStep } from "../sizing/index.js";
import type { Supply } from "../supply/index.js";
import { readSupply } from "../supply/read.js";
import { isWithoutCeiling } from "./amendment-effects.js";
import type { Decided } from "./decided.js";
import { type Electrode, electrodeCap, electrodeCautions, namedLimit } from "./electrode.js";
import { finish } from "./finish.js";
import { readElectrodes } from "./grounding-electrode-conductor-input.js";
import { readConductorMaterial } from "./impedance-grounding-conductor.js";
import { decideBySupply } from "./jumper.js";
import type { SizingResult } from "./result.js";

/** A bonding jumper that ties electrodes into one grounding electrode system. */
export interface ElectrodeJumperInput {
  readonly code: Code;
  /** The ungrounded conductors that size the grounding electrode conductor. */
  readonly supply: Supply;
  readonly jumper: { readonly material: Material };
  /** The electrodes that depend on this jumper: those beyond it, seen from the grounding electrode conductor. */
  readonly to: readonly Electrode[];
  /** Whether it is the sole connection to a supplemental rod, pipe or plate (250.53(E)). */
  readonly supplemental?: boolean;
}

/**
 * Sizes a bonding jumper between grounding electrodes (250.53(C)): as the grounding electrode conductor by Table 250.66, with the
 * sizes that it need not exceed for the electrodes beyond it, and for a supplemental rod, pipe or plate (250.53(E)).
 *
 * @param input - the code, the supply, the jumper's material, and the electrodes beyond it
 * @returns the size with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeElectrodeBondingJumper } from "bondmil";
 * const jumper = sizeElectrodeBondingJumper({
 *   code: { year: "2017" },
 *   supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
 *   jumper: { material: "copper" },
 *   to: [{ kind: "concrete-encased" }],
 * });
 * jumper.outcome; // => { kind: "conductor", size: "4 AWG", quantity: 1 }
 * ```
 */
export function sizeElectrodeBondingJumper(input: ElectrodeJumperInput): SizingResult {
  const read = readAll(input, readInput);
  return finish(read.code, (code) => decide({ ...read, code }));
}

const role = "electrode-bonding-jumper";

function decide(input: ElectrodeJumperInput): Decided {
  const { code, jumper, to } = input;
  const decided = decideSize(input);
  const cautions = electrodeCautions(code, role, to, jumper.material);
  return { ...decided, cautions: [...(decided.cautions ?? []), ...cautions] };
}

function decideSize(input: ElectrodeJumperInput): Decided {
  const { code, supply, jumper, to, supplemental = false } = input;
  const sole = supplemental ? supplementalCap(code, to, jumper.material) : null;
  const cap = sole ?? electrodeCap(code, role, to, jumper.material);
  const caps = cap === null ? [] : [cap];
  return decideBySupply({ role, policies: electrodeBondingJumperPolicies, caps }, { code, supply, jumper });
}

/** The limit for the sole connection to one supplemental rod, pipe or plate; several of them follow 250.66(A). */
function supplementalCap(code: Code, to: readonly Electrode[], material: Material): CapStep | null {
  const named = supplementalRodCeiling[code.year];
  const size = namedLimit(code, named, material);
  const [only, ...others] = to;
  const isRod = only !== undefined && ["rod", "pipe", "plate"].includes(only.kind);
  return isRod && others.length === 0 && size !== null && !isWithoutCeiling(code, role, only.kind)
    ? { kind: "cap", why: "electrode", requiredArea: areaOf(size), citation: named.citation }
    : null;
}

function readInput(at: Reader): ElectrodeJumperInput | undefined {
  if (!readObject(at, ["code", "supply", "jumper", "to", "supplemental"])) return undefined;
  const code = readCode(member(at, "code"));
  const supply = readSupply(member(at, "supply"));
  const jumper = readConductorMaterial(member(at, "jumper"));
  const to = readElectrodes(member(at, "to"), code?.year);
  const supplemental = optional(member(at, "supplemental"), (one) =>
    readFlag(one, "whether the electrodes beyond it are supplemental"),
  );
  if (code === undefined || supply === undefined || jumper === undefined || to === undefined)
    return undefined;
  return { code, supply, jumper, to, ...(supplemental === undefined ? {} : { supplemental }) };
}
