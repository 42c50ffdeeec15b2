import { areaOf, columnOf, compareSizes } from "../conductor/index.js";
import { controlCircuitJumperLeast } from "../edition/tables/named-sizes.generated.js";
import { systemBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { member, optional, type Reader, readAll, readFlag, readObject } from "../input/reader.js";
import type { NamedSizeStep } from "../sizing/index.js";
import { floorStep, limited } from "../sizing/limits.js";
import { conductorsOf } from "../supply/sums.js";
import { finish } from "./finish.js";
import { type JumperRole, sizeCheckedJumper } from "./jumper.js";
import { type JumperInput, jumperKeys, readJumperMembers } from "./jumper-input.js";
import { type Prepared, type PreparedRequest, prepareJumper } from "./prepare.js";
import type { SizingResult } from "./result.js";

const systemBondingJumper: JumperRole = {
  role: "system-bonding-jumper",
  policies: systemBondingJumperPolicies,
};

/** A system bonding jumper to be sized. */
export interface SystemJumperInput extends JumperInput {
  /**
   * Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits: its jumper need only be as large as the
   * derived ungrounded conductors, not below 14 AWG copper.
   */
  readonly controlTransformer?: boolean;
}

/**
 * Sizes a system bonding jumper: the connection between the grounded conductor of a separately derived system and its
 * supply-side bonding jumper or equipment grounding conductors (250.28(D)(1); 250.28(D)(3) where the system feeds several
 * enclosures). For a jumper in an enclosure the supply is the feeder to it; for one at the source, all feeders together.
 *
 * @param input - the code, the derived ungrounded conductors, and the jumper's material and form
 * @returns the size, or the area for a bus, with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeSystemBondingJumper } from "bondmil";
 * const jumper = sizeSystemBondingJumper({
 *   code: { year: "2020" },
 *   supply: { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] },
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "2 AWG", quantity: 1 }
 * ```
 */
export function sizeSystemBondingJumper(input: SystemJumperInput): SizingResult {
  const { controlTransformer = false, ...jumper } = readAll(input, readInput);
  return controlTransformer ? ofControlTransformer(jumper) : sizeCheckedJumper(systemBondingJumper, jumper);
}

/** As large as the derived ungrounded conductors, not below the least size that the exception names. */
function ofControlTransformer({ code, supply, jumper }: JumperInput): SizingResult {
  const least = controlCircuitJumperLeast[code.year];
  const { citation } = least;
  const size =
    conductorsOf(supply)
      .map((one) => one.size)
      .sort(compareSizes)
      .at(-1) ?? least.copper;
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "other-conductor",
    size,
    requiredArea: areaOf(size),
    citation,
  };
  const named = least[columnOf(jumper.material)];
  const floors = named === null ? [] : [floorStep(named, citation, "least-size")];
  return finish(code, () => ({
    role: systemBondingJumper.role,
    code,
    material: jumper.material,
    form: jumper.form ?? "wire",
    steps: [step, ...floors],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, [], floors),
    citation,
  }));
}

function readInput(at: Reader): SystemJumperInput | undefined {
  if (!readObject(at, [...jumperKeys, "controlTransformer"])) return undefined;
  const jumper = readJumperMembers(at);
  const controlTransformer = optional(member(at, "controlTransformer"), (one) =>
    readFlag(one, "whether the source is a small control transformer"),
  );
  return jumper && { ...jumper, ...(controlTransformer === undefined ? {} : { controlTransformer }) };
}

/**
 * Prepares the sizing of a system bonding jumper for a loop: the same kernel, area in, required area out, without steps.
 *
 * @param request - the code and the materials
 * @returns a function of areas in circular mils; where the materials differ it also wants the assumed area
 * @throws {@link InputError} listing everything that is wrong in the request
 *
 * @example
 * ```ts
 * import { prepareSystemBondingJumper } from "bondmil";
 * const prepared = prepareSystemBondingJumper({ code: { year: "2023" }, supply: "copper", jumper: "copper" });
 * prepared.kind === "by-area" && prepared.requiredArea(1800000); // => 225000
 * ```
 */
export function prepareSystemBondingJumper(request: PreparedRequest): Prepared {
  return prepareJumper(systemBondingJumper, request);
}
