import { isList, isObject, type Json, type Keys, valueAt, withValue } from "./data.js";

/** Members by which one thing of an installation names another. */
const naming = new Set([
  ...["from", "to", "of", "at", "in", "beside", "bus", "circuit", "circuits", "disconnect"],
  ...["electrode", "bondedTo", "transferSwitch", "asScheduled"],
]);

/** Every name that a reference may go to, in the order of the document. */
export function idsIn(document: Json): readonly string[] {
  const ids = new Set<string>();
  const visit = (value: Json, name: string): void => {
    if (typeof value === "string" && (name === "id" || name === "to") && value !== "") ids.add(value);
    if (isList(value)) for (const one of value) visit(one, "");
    if (isObject(value))
      for (const [member, one] of Object.entries(value)) if (member !== "code") visit(one, member);
  };
  visit(document, "");
  return [...ids];
}

function countOf(value: Json, id: string): number {
  if (isList(value)) return value.reduce<number>((sum, one) => sum + countOf(one, id), 0);
  if (!isObject(value)) return 0;
  return Object.entries(value).reduce(
    (sum, [name, one]) => sum + (name === "id" && one === id ? 1 : countOf(one, id)),
    0,
  );
}

/** The same value with a name in place of another, wherever something goes to it. */
function renamed(value: Json, ids: ReadonlyMap<string, string>, name = ""): Json {
  if (typeof value === "string") return naming.has(name) ? (ids.get(value) ?? value) : value;
  if (isList(value)) return value.map((one) => renamed(one, ids, name));
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([member, one]) => [
      member,
      member === "code" ? one : renamed(one, ids, member),
    ]),
  );
}

/** The document with another name at a place. What went there goes there still, unless the old or the new name is that of two things. */
export function withName(document: Json, keys: Keys, name: string): Json {
  const old = valueAt(document, keys);
  const named = withValue(document, keys, name);
  const isClear =
    typeof old === "string" && old !== "" && countOf(document, old) === 1 && !idsIn(document).includes(name);
  return isClear ? renamed(named, new Map([[old, name]])) : named;
}

/** A copy with names of its own for all that is in it; what goes to something in it goes to the copy. */
export function copyOf(item: Json, document: Json): Json {
  const taken = new Set(idsIn(document));
  const ids = new Map<string, string>();
  const visit = (value: Json): void => {
    if (isList(value)) for (const one of value) visit(one);
    if (!isObject(value)) return;
    const { id } = value;
    if (typeof id === "string" && !ids.has(id)) {
      const next = freeName(id.replace(/ ?\d+$/, "") || id, taken, /\D$/.test(id) ? " " : "");
      taken.add(next);
      ids.set(id, next);
    }
    for (const one of Object.values(value)) visit(one);
  };
  visit(item);
  const withIds = (value: Json): Json => {
    if (isList(value)) return value.map(withIds);
    if (!isObject(value)) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, one]) => [
        name,
        name === "id" && typeof one === "string" ? (ids.get(one) ?? one) : withIds(one),
      ]),
    );
  };
  return renamed(withIds(item), ids);
}

/** The first name with a number that nothing has yet. */
export function freeName(stem: string, taken: ReadonlySet<string>, between = ""): string {
  for (let i = 1; ; i++) {
    const name = `${stem}${between}${i}`;
    if (!taken.has(name)) return name;
  }
}
