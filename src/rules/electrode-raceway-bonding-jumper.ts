import { areaOf, compareSizes, type Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { electrodeRaceway } from "../edition/tables/sections.generated.js";
import { member, type Reader, readAll, readFlag, readList, readObject } from "../input/reader.js";
import type { NamedSizeStep } from "../sizing/index.js";
import type { Conductor } from "../supply/index.js";
import { readConductor } from "../supply/read.js";
import { finish, notRequired } from "./finish.js";
import { readConductorMaterial } from "./impedance-grounding-conductor.js";
import { sameSizeInAluminum } from "./jumper-cautions.js";
import type { SizingResult } from "./result.js";

/** A jumper that bonds the end of a metal raceway around grounding electrode conductors. */
export interface ElectrodeRacewayInput {
  readonly code: Code;
  /** Whether the raceway, armor or enclosure is ferrous: only then must both ends be bonded. */
  readonly ferrous: boolean;
  /** The grounding electrode conductors inside, as installed. */
  readonly enclosed: readonly Conductor[];
  readonly jumper: { readonly material: Material };
}

/**
 * Sizes the jumper that bonds each end of a ferrous metal raceway to the grounding electrode conductor inside (250.64(E)): at least
 * the largest conductor enclosed, as installed, so that an oversized conductor takes its jumper along. One at each end.
 *
 * @param input - the code, the raceway's metal, the conductors enclosed, and the jumper's material
 * @returns the size, two of them; or why none is required
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeElectrodeRacewayBondingJumper } from "bondmil";
 * const jumper = sizeElectrodeRacewayBondingJumper({
 *   code: { year: "2023" },
 *   ferrous: true,
 *   enclosed: [{ size: "4 AWG", material: "copper" }],
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "4 AWG", quantity: 2 }
 * ```
 */
export function sizeElectrodeRacewayBondingJumper(input: ElectrodeRacewayInput): SizingResult {
  const { code, ferrous, enclosed, jumper } = readAll(input, readInput);
  const { year } = code;
  const { material } = jumper;
  const citation = electrodeRaceway[year];
  if (!ferrous) return notRequired(role, code, material, "nonferrous-raceway", citation);
  const { size } = enclosed.reduce((so, one) => (compareSizes(one.size, so.size) > 0 ? one : so));
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "other-conductor",
    size,
    requiredArea: areaOf(size),
    citation,
  };
  return finish(code, () => ({
    role,
    code,
    material,
    steps: [step],
    governs: step.kind,
    requiredArea: step.requiredArea,
    quantity: 2,
    citation,
    cautions: sameSizeInAluminum(material, enclosed, citation),
  }));
}

const role = "electrode-raceway-bonding-jumper";

function readInput(at: Reader): ElectrodeRacewayInput | undefined {
  if (!readObject(at, ["code", "ferrous", "enclosed", "jumper"])) return undefined;
  const code = readCode(member(at, "code"));
  const ferrous = readFlag(member(at, "ferrous"), "whether the raceway is of ferrous metal");
  const enclosed = readList(member(at, "enclosed"), readConductor);
  const jumper = readConductorMaterial(member(at, "jumper"));
  if (code === undefined || ferrous === undefined || enclosed === undefined || jumper === undefined)
    return undefined;
  return { code, ferrous, enclosed, jumper };
}
