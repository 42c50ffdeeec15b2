import {
  amendmentsInForce,
  type BasisAmendment,
  type Code,
  type ElectrodeKind,
  type Role,
} from "../edition/index.js";

/** Whether an amendment in force requires a wire for a role. */
export function isAlwaysWire(code: Code, role: Role): boolean {
  return amendmentsInForce(code, "always-wire").some((one) => one.role === role);
}

/** Whether an amendment in force lifts the increase in proportion from a role. */
export function isWithoutIncrease(code: Code, role: Role): boolean {
  return amendmentsInForce(code, "basis").some((one) => one.use === "no-increase" && reaches(one, role));
}

/** Whether an amendment in force lifts the ceiling that a kind of electrode sets for a role. */
export function isWithoutCeiling(code: Code, role: Role, electrode: ElectrodeKind): boolean {
  return amendmentsInForce(code, "basis").some(
    (one) =>
      one.use === "no-electrode-ceiling" && (one.electrode ?? electrode) === electrode && reaches(one, role),
  );
}

/** Whether another basis is for a role: for itself, or for the conductor as which it is sized (250.102(D), 250.53(C)). */
export function reaches({ role: named }: BasisAmendment, role: Role): boolean {
  return named === role || sizedAs[role] === named;
}

const sizedAs: Readonly<Partial<Record<Role, Role>>> = {
  "equipment-bonding-jumper": "equipment-grounding-conductor",
  "electrode-bonding-jumper": "grounding-electrode-conductor",
};
