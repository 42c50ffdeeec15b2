import { type Reader, readOneOf } from "../input/reader.js";
import type { SystemKind } from "./shape.generated.js";

export type { SystemKind };

/** Checks a kind of system in an input. */
export function readSystemKind(at: Reader): SystemKind | undefined {
  return readOneOf(at, ["service", "separately-derived"]);
}
