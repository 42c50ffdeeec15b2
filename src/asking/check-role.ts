import { member, readAll, refuse } from "../input/reader.js";
import type { AnyRole } from "../roles/definition.js";

const wanted = { supply: "by its supply", rating: "by an overcurrent device" } as const;

/** Checks the value of a role, or of something else that sizes; where it matters, also what the role goes by. */
export function checkRole(role: unknown, ...kinds: readonly (keyof typeof wanted)[]): void {
  if (sizes(role) && (kinds.length === 0 || (kinds as readonly unknown[]).includes(role.by))) return;
  const kind = kinds.map((one) => wanted[one]).join(" or ");
  const expected = kind === "" ? "the value of a role" : `the value of a role that goes ${kind}`;
  readAll({ role }, (at) =>
    refuse(
      member(at, "role"),
      role === undefined ? "missing" : "wrong-type",
      expected,
      `pass for example ${kinds[0] === "rating" ? "equipmentGroundingConductor" : "mainBondingJumper"}`,
    ),
  );
}

function sizes(role: unknown): role is Pick<AnyRole, "by" | "read" | "decide"> {
  if (typeof role !== "object" || role === null) return false;
  const { read, decide } = role as Readonly<Record<string, unknown>>;
  return typeof read === "function" && typeof decide === "function";
}
