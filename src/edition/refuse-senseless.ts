import { member, type Reader, readOneOf, refuse } from "../input/reader.js";
import type { ElectrodeKind } from "./electrode-kinds.js";
import { alternativesOf } from "./read-readings.js";
import type { Amendment, BasisAmendment, CellAmendment, ReadingAmendment } from "./shape.generated.js";
import type { Role } from "./tables/roles.generated.js";

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

/** Refuses an amendment that could act on no result: a basis that a role cannot have, a material that it does not come in, or a row, an alternative or a size that there is not. */
export function refuseSenseless(at: Reader, own: Amendment): void {
  switch (own.kind) {
    case "cell":
      refuseRow(at, own);
      return;
    case "reading":
      refuseAlternative(at, own);
      return;
    case "basis":
      refuseBasis(at, own);
      return;
    case "floor":
      if (own.copper === undefined && own.aluminum === undefined) {
        refuse(at, "missing", "a size for copper or for aluminum", "a floor names at least one");
      }
      if (own.role === ofCopperOnly && own.aluminum !== undefined)
        refuseMaterial(member(at, "aluminum"), "nothing");
      return;
    case "material":
      if (own.role === ofCopperOnly && own.material !== "copper") {
        refuseMaterial(member(at, "material"), '"copper"');
      }
  }
}

/** The table of ratings has rows by rating, the others by supply. */
function refuseRow(at: Reader, { table, row }: CellAmendment): void {
  const byRating = table === "equipment-grounding";
  if (byRating === (typeof row === "number")) return;
  const place = member(at, "row");
  if (byRating) {
    refuse(place, "wrong-type", "amperes, as the table's row has them", "write the rating as a number");
  } else {
    const expected = 'the row\'s largest copper supply size, or "last"';
    refuse(place, "unknown-value", expected, "name the row as the table does");
  }
}

function refuseAlternative(at: Reader, { reading, alternative }: ReadingAmendment): void {
  const known = alternativesOf(reading);
  if (!known.includes(alternative)) readOneOf(member(at, "alternative"), known);
}

function refuseBasis(at: Reader, { role, use, electrode }: BasisAmendment): void {
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
