import { type Members, readShape } from "../../input/read-shape.js";
import { member, type Reader, refuse } from "../../input/reader.js";
import { type SupplySideBondingJumperInput, supplySideBondingJumperInputShape } from "./shape.generated.js";

export type { SupplySideBondingJumperInput };

/** Checks the input of a supply-side bonding jumper. */
export function readInput(at: Reader): SupplySideBondingJumperInput | undefined {
  return readShape<SupplySideBondingJumperInput>(at, supplySideBondingJumperInputShape, refine);
}

function refine(at: Reader, { system, instead }: Members<SupplySideBondingJumperInput>): void {
  if (system !== "separately-derived" || instead === undefined || instead === "nonflexible-metal-raceway")
    return;
  refuse(
    member(at, "instead"),
    "unknown-value",
    '"nonflexible-metal-raceway"',
    "only at a service may the grounded conductor or fittings bond in place of the jumper",
  );
}
