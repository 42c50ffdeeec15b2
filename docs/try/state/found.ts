import { conductorName, type Schedule, type ScheduledConductor } from "bondmil";
import { isList, isObject, type Json, valueAt, withItem, without, withValue } from "./data.js";

/** A line of the schedule with what was found of it. */
export interface FoundLine {
  readonly name: string;
  readonly required: string;
  /** Place of the entry in the list of what was found; nothing where none was put in. */
  readonly entry: number | undefined;
  readonly size: string;
  readonly quantity: string;
  /** What a new entry says of which conductor it is. */
  readonly who: Readonly<Record<string, string>>;
  readonly material: string;
}

/** The conductors that a schedule requires, each with what was found in its place. */
export function foundLines(schedule: Schedule, document: Json): readonly FoundLine[] {
  const list = valueAt(document, ["installed", "found"]);
  const found = isList(list) ? list : [];
  const used = new Set<number>();
  return schedule.conductors.flatMap((one) => {
    const { outcome, material } = one.result;
    if (outcome.kind !== "conductor" || one.quantity === 0) return [];
    const who = whoIs(one);
    const entry = found.findIndex((given, i) => !used.has(i) && isOf(given, who));
    if (entry >= 0) used.add(entry);
    const there = found[entry];
    const quantity = isObject(there) ? (there["quantity"] ?? 1) : one.quantity;
    const size = isObject(there) ? there["size"] : undefined;
    return [
      {
        name: conductorName(one),
        required: `${one.quantity === 1 ? "" : `${one.quantity} x `}${outcome.size} ${material}`,
        entry: entry < 0 ? undefined : entry,
        size: typeof size === "string" ? size : "",
        quantity: String(quantity),
        who,
        material,
      },
    ];
  });
}

function whoIs({ role, subject, place }: ScheduledConductor): Readonly<Record<string, string>> {
  return { role, of: subject, ...(place !== undefined && { at: place }) };
}

/** A found conductor says as much as tells it apart; a place that it leaves out may be any. */
function isOf(given: Json, who: Readonly<Record<string, string>>): boolean {
  if (!isObject(given) || given["role"] !== who["role"] || given["of"] !== who["of"]) return false;
  const { at } = given;
  return at === undefined || who["at"] === undefined || at === who["at"];
}

/** The document with a size found in place of a line; without a size nothing was found. */
export function withFound(document: Json, { entry, who, material, quantity }: FoundLine, size: string): Json {
  const keys = ["installed", "found"];
  if (size === "") {
    if (entry === undefined) return document;
    const rest = without(document, [...keys, entry]);
    const left = valueAt(rest, keys);
    return isList(left) && left.length === 0 ? withoutEmpty(rest) : rest;
  }
  if (entry !== undefined) return withValue(document, [...keys, entry, "size"], size);
  const count = Number(quantity);
  const item = { ...who, size, material, ...(count > 1 && { quantity: count }) };
  return withItem(document, keys, item);
}

function withoutEmpty(document: Json): Json {
  const rest = without(document, ["installed", "found"]);
  const installed = valueAt(rest, ["installed"]);
  return isObject(installed) && Object.keys(installed).length === 0 ? without(rest, ["installed"]) : rest;
}
