/** The part of a policy's basis that says where each of its fields comes from. */
const basisOfField: Readonly<Record<string, string>> = {
  table: "row",
  sum: "sum",
  oneEighth: "oneEighth",
  lastRowFloor: "row",
  cap: "cap",
  otherMaterial: "otherMaterial",
  namesAluminum: "material",
  increase: "increase",
  qualifiedPerson: "increase",
  shared: "shared",
};

/** The part of the basis behind a field; the rule itself where the field has none of its own. */
export function basisPartOf(field: string): string {
  return basisOfField[field] ?? "rule";
}
