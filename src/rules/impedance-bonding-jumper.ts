import type { ConductorSize, Material } from "../conductor/index.js";
import { areaOf } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import { type Code, readCode } from "../edition/index.js";
import { impedanceBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { impedanceJumperAtDisconnect } from "../edition/tables/sections.generated.js";
import { member, type Reader, readAll, readObject, readOneOf } from "../input/reader.js";
import type { NamedSizeStep } from "../sizing/index.js";
import { limited } from "../sizing/limits.js";
import type { Supply } from "../supply/index.js";
import { readSupply } from "../supply/read.js";
import { finish } from "./finish.js";
import { impedanceConductorFloor, readConductorMaterial } from "./impedance-grounding-conductor.js";
import { sizeCheckedJumper } from "./jumper.js";
import type { SizingResult } from "./result.js";

/** The jumper of an impedance-grounded system whose electrode conductor is connected at the impedance. */
export interface ImpedanceJumperAtImpedance {
  readonly code: Code;
  readonly electrodeConductorAt: "impedance";
  /** Ungrounded conductors of the service or of the derived system. */
  readonly supply: Supply;
  readonly jumper: { readonly material: Material };
}

/** The jumper of an impedance-grounded system whose electrode conductor is connected at the first disconnect. */
export interface ImpedanceJumperAtDisconnect {
  readonly code: Code;
  readonly electrodeConductorAt: "first-disconnect";
  /** Size of the conductor from the neutral point to the impedance. */
  readonly impedanceConductor: ConductorSize;
  readonly jumper: { readonly material: Material };
}

/** A jumper from the equipment grounding conductors of an impedance-grounded system to the impedance. */
export type ImpedanceJumperInput = ImpedanceJumperAtImpedance | ImpedanceJumperAtDisconnect;

/**
 * Sizes the unspliced jumper from the equipment grounding conductors to the grounded side of the impedance (250.36(E), (G)): by
 * the electrode conductor table if the electrode conductor is connected at the impedance, which knows no 12.5 percent; the size of
 * the conductor to the impedance if it is connected at the first disconnect.
 *
 * @param input - the code, where the electrode conductor is connected, and what that place asks for
 * @returns the size with its steps; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeImpedanceBondingJumper } from "bondmil";
 * const jumper = sizeImpedanceBondingJumper({
 *   code: { year: "2017" },
 *   electrodeConductorAt: "impedance",
 *   supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * ```
 */
export function sizeImpedanceBondingJumper(input: ImpedanceJumperInput): SizingResult {
  const read = readAll(input, readInput);
  const { code, jumper } = read;
  if (read.electrodeConductorAt === "impedance") {
    return sizeCheckedJumper(
      { role, policies: impedanceBondingJumperPolicies },
      { code, supply: read.supply, jumper },
    );
  }
  const size = read.impedanceConductor;
  const citation = impedanceJumperAtDisconnect[code.year];
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "other-conductor",
    size,
    requiredArea: areaOf(size),
    citation,
  };
  const floor = impedanceConductorFloor(code, jumper.material);
  return finish(code, () => ({
    role,
    code,
    material: jumper.material,
    steps: [step, floor],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, [], [floor]),
    citation,
  }));
}

const role = "impedance-bonding-jumper";

const places = ["impedance", "first-disconnect"] as const;
const keys = ["code", "electrodeConductorAt", "jumper"] as const;

function readInput(at: Reader): ImpedanceJumperInput | undefined {
  const place = member(at, "electrodeConductorAt");
  const own = place.value === "first-disconnect" ? "impedanceConductor" : "supply";
  // Without a known place either of the two may stand there.
  const known = places.some((one) => one === place.value) ? [own] : ["supply", "impedanceConductor"];
  if (!readObject(at, [...keys, ...known])) return undefined;
  const electrodeConductorAt = readOneOf(place, places);
  const code = readCode(member(at, "code"));
  const jumper = readConductorMaterial(member(at, "jumper"));
  if (electrodeConductorAt === "impedance") {
    const supply = readSupply(member(at, "supply"));
    return code && supply && jumper && { code, electrodeConductorAt, supply, jumper };
  }
  if (electrodeConductorAt === undefined) return undefined;
  const impedanceConductor = readSize(member(at, "impedanceConductor"));
  return code && impedanceConductor && jumper && { code, electrodeConductorAt, impedanceConductor, jumper };
}
