import type { Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { member, optional, type Reader, readObject, readOneOf } from "../input/reader.js";
import { readMaterial } from "../supply/read.js";
import { type ProtectedCircuit, readCircuits } from "./protected-circuit.js";

/**
 * How the conductor runs: in one raceway, cable or trench (`single`); with parallel sets in several raceways or cables, one in
 * each; or in a cable tray, as a `single` conductor of its own or `in-cable`, inside a multiconductor cable.
 */
export type GroundingRun =
  | { readonly kind: "single" }
  | { readonly kind: "parallel-raceways" }
  | { readonly kind: "parallel-cables" }
  | { readonly kind: "tray"; readonly conductor: "single" | "in-cable" };

/** An equipment grounding conductor to be sized. */
export interface EquipmentGroundingConductorInput {
  readonly code: Code;
  /** The circuit that it serves, or several that share a raceway, cable or tray. */
  readonly circuits: readonly ProtectedCircuit[];
  readonly conductor: { readonly material: Material };
  /** In one raceway or cable unless told. */
  readonly run?: GroundingRun;
}

const runs: readonly GroundingRun["kind"][] = ["single", "parallel-raceways", "parallel-cables", "tray"];

/** Checks the input of an equipment grounding conductor; everything wrong is noted. */
export function readEquipmentGroundingConductorInput(
  at: Reader,
): EquipmentGroundingConductorInput | undefined {
  if (!readObject(at, ["code", "circuits", "conductor", "run"])) return undefined;
  const code = readCode(member(at, "code"));
  const circuits = readCircuits(member(at, "circuits"), code);
  const conductor = readRequest(member(at, "conductor"));
  const run = optional(member(at, "run"), readRun);
  if (code === undefined || circuits === undefined || conductor === undefined) return undefined;
  return { code, circuits, conductor, ...(run && { run }) };
}

/** Checks the conductor that is asked for. */
export function readRequest(at: Reader): { readonly material: Material } | undefined {
  if (!readObject(at, ["material"])) return undefined;
  const material = readMaterial(member(at, "material"));
  return material && { material };
}

function readRun(at: Reader): GroundingRun | undefined {
  const isTray = member(at, "kind").value === "tray";
  if (!readObject(at, isTray ? ["kind", "conductor"] : ["kind"])) return undefined;
  const kind = readOneOf(member(at, "kind"), runs);
  if (kind !== "tray") return kind && { kind };
  const conductor = readOneOf(member(at, "conductor"), ["single", "in-cable"]);
  return conductor && { kind, conductor };
}
