import type { TemperatureColumn } from "../ampacity/index.js";
import type { Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { member, optional, type Reader, readObject, readOneOf } from "../input/reader.js";
import { readColumn } from "../supply/for-load.js";
import type { Supply } from "../supply/index.js";
import { readMaterial, readSupply } from "../supply/read.js";
import type { ConductorForm } from "./result.js";

/** The jumper to be sized. */
export interface JumperRequest {
  readonly material: Material;
  /** A wire unless told; a bus gets an area instead of a size. */
  readonly form?: ConductorForm;
}

/** A bonding jumper to be sized from the ungrounded conductors of its supply. */
export interface JumperInput {
  readonly code: Code;
  /** The ungrounded conductors that the jumper answers to. */
  readonly supply: Supply;
  readonly jumper: JumperRequest;
  /** Temperature column in which conductors of another material are matched; 75 C unless told. */
  readonly temperature?: TemperatureColumn;
}

const conductorForms: readonly ConductorForm[] = ["wire", "bus"];

/** Keys of {@link JumperInput}. */
export const jumperKeys = ["code", "supply", "jumper", "temperature"] as const;

/** Checks the input of a jumper; everything wrong is noted. */
export function readJumperInput(at: Reader): JumperInput | undefined {
  return readObject(at, jumperKeys) ? readJumperMembers(at) : undefined;
}

/** Checks the members of a jumper's input, whatever stands beside them. */
export function readJumperMembers(at: Reader): JumperInput | undefined {
  const code = readCode(member(at, "code"));
  const supply = readSupply(member(at, "supply"));
  const jumper = readJumperRequest(member(at, "jumper"));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (code === undefined || supply === undefined || jumper === undefined) return undefined;
  return { code, supply, jumper, ...(temperature && { temperature }) };
}

/** Checks the jumper that is asked for. */
export function readJumperRequest(at: Reader): JumperRequest | undefined {
  if (!readObject(at, ["material", "form"])) return undefined;
  const material = readMaterial(member(at, "material"));
  const form = optional(member(at, "form"), (one) => readOneOf(one, conductorForms));
  return material && { material, ...(form && { form }) };
}
