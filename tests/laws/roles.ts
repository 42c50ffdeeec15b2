import { type AnyRole, type RoleByRating, type RoleBySupply, roles } from "bondmil";
import { plainly } from "../../src/asking/plainly.js";
import type { JumperRole } from "../roles/jumper/facts.js";

export const everyRole: readonly AnyRole[] = Object.values(roles);
export const rolesBySupply: readonly RoleBySupply[] = everyRole.filter((role) => role.by === "supply");
export const rolesByRating: readonly RoleByRating[] = everyRole.filter((role) => role.by === "rating");

/** The roles that are sized from a supply and a material alone; they share the laws of this folder. */
export const jumpers: readonly JumperRole[] = rolesBySupply.filter(asksNoMore);

function asksNoMore(role: RoleBySupply): role is JumperRole {
  const asked = plainly(role, { code: { year: "2023" }, material: "copper" });
  return Object.keys(asked).sort().join() === "code,conductor,supply";
}
