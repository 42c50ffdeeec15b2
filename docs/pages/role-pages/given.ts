import { inWords } from "../in-words.js";

/** The input of a check in words: `supply: 4 x 500 kcmil copper; conductor: copper`. */
export function givenInWords(input: object): string {
  return Object.entries(input)
    .map(([name, value]) => `${inWords(name)}: ${sayValue(value)}`)
    .join("; ");
}

function sayValue(value: unknown): string {
  if (Array.isArray(value)) return value.map(sayValue).join(" and ");
  if (typeof value !== "object" || value === null)
    return typeof value === "string" ? inWords(value) : String(value);
  return sayObject(value as Readonly<Record<string, unknown>>);
}

function sayObject({
  count,
  size,
  material,
  phases,
  amperes,
  ...others
}: Readonly<Record<string, unknown>>): string {
  const rest = Object.entries(others).map(([name, one]) =>
    name === "sets" || name === "device" || name === "kind" || name === "id"
      ? sayValue(one)
      : `${inWords(name)} ${sayValue(one)}`,
  );
  const parts = [
    count === undefined ? "" : `${String(count)} x`,
    size === undefined ? "" : String(size),
    phases === undefined ? "" : `(${(phases as readonly unknown[]).map(sayValue).join(", ")})`,
    material === undefined ? "" : String(material),
    amperes === undefined ? "" : `${String(amperes)} A`,
    rest.join(", "),
  ];
  return parts.filter((part) => part !== "").join(" ");
}
