import { areaOf } from "../../conductor/index.js";
import type { Role } from "../../edition/index.js";
import type { Keys } from "../fault.js";
import type { FoundConductor } from "./shape.generated.js";

/** One thing that a found conductor is there for, and where in the document that stands. */
export interface Purposed {
  readonly found: FoundConductor;
  readonly keys: Keys;
  readonly role: Role;
  readonly of?: string;
  readonly at?: string;
  /** Whether it is what the conductor serves as besides. */
  readonly isSecond: boolean;
}

/** What a found conductor is there for: its own purpose, and those that it serves besides. */
export function purposesOf(found: FoundConductor, i: number): readonly Purposed[] {
  const keys = ["installed", "found", i];
  const { role, of, at, servesAlso = [] } = found;
  return [
    { found, keys, role, ...(of !== undefined && { of }), ...(at !== undefined && { at }), isSecond: false },
    ...servesAlso.map((other, n) => ({ found, keys: [...keys, "servesAlso", n], ...other, isSecond: true })),
  ];
}

/** Circular mils of one conductor; `null` of what stands in its place. */
export function areaFound({ size, busArea }: Purposed["found"]): number | null {
  return size === undefined ? (busArea ?? null) : areaOf(size);
}
