import { type Reader, readOneOf } from "../input/reader.js";

/** What kind of system a conductor belongs to. */
export type SystemKind = "service" | "separately-derived";

/** Checks a kind of system in an input. */
export function readSystemKind(at: Reader): SystemKind | undefined {
  return readOneOf(at, ["service", "separately-derived"]);
}
