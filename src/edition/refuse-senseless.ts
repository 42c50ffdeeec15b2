import { member, type Reader, refuse } from "../input/reader.js";
import type { Amendment, BasisAmendment, ElectrodeKind } from "./amendment.js";
import type { Role } from "./role.js";

/** What an amendment changes, without where it stands and when it applies. */
export type Own<A = Amendment> = A extends Amendment ? Omit<A, "citation" | "when"> : never;

/** Roles for which each basis can stand in place of their own. */
const rolesOfBasis: Readonly<Record<BasisAmendment["use"], readonly Role[]>> = {
  "no-increase": ["equipment-grounding-conductor", "equipment-bonding-jumper"],
  "no-electrode-ceiling": ["grounding-electrode-conductor", "electrode-bonding-jumper"],
  "equipment-grounding-table": [
    "main-bonding-jumper",
    "system-bonding-jumper",
    "supply-side-bonding-jumper",
    "grounded-conductor",
    "impedance-bonding-jumper",
    "water-piping-bonding-jumper",
    "structural-metal-bonding-jumper",
    "grounding-electrode-conductor",
    "electrode-bonding-jumper",
  ],
};

const electrodesWithCeiling: readonly ElectrodeKind[] = ["rod", "pipe", "plate", "concrete-encased", "ring"];

/** A conductor that the code names in copper only. */
const ofCopperOnly: Role = "intersystem-bonding-conductor";

/** Refuses an amendment that could act on no result: a basis that a role cannot have, or a material that it does not come in. */
export function refuseSenseless(at: Reader, own: Own): void {
  switch (own.kind) {
    case "basis":
      refuseBasis(at, own);
      return;
    case "floor":
      if (own.role === ofCopperOnly && own.aluminum !== undefined)
        refuseMaterial(member(at, "aluminum"), "nothing");
      return;
    case "material":
      if (own.role === ofCopperOnly && own.material !== "copper") {
        refuseMaterial(member(at, "material"), '"copper"');
      }
  }
}

function refuseBasis(at: Reader, { role, use, electrode }: Omit<BasisAmendment, "citation" | "when">): void {
  const able = rolesOfBasis[use];
  if (!able.includes(role)) {
    refuse(
      member(at, "role"),
      "unknown-value",
      `one of ${wordsOf(able)}`,
      `no other conductor has what ${use} changes`,
    );
  }
  if (electrode === undefined) return;
  if (use !== "no-electrode-ceiling") {
    const expected = "no electrode";
    refuse(member(at, "electrode"), "unknown-key", expected, "only no-electrode-ceiling is of electrodes");
  } else if (!electrodesWithCeiling.includes(electrode)) {
    const expected = `one of ${wordsOf(electrodesWithCeiling)}`;
    refuse(member(at, "electrode"), "unknown-value", expected, "no other electrode has a ceiling to lift");
  }
}

function refuseMaterial(at: Reader, expected: string): void {
  refuse(at, "unknown-value", expected, `the ${ofCopperOnly} is of copper`);
}

function wordsOf(list: readonly string[]): string {
  return list.map((word) => JSON.stringify(word)).join(", ");
}
