import { objectWith } from "./object-with.js";
import {
  isRecord,
  member,
  type Reader,
  readBetween,
  readCount,
  readFlag,
  readList,
  readName,
  readNotNegative,
  readNumberOf,
  readObject,
  readOneOf,
  readPositive,
  readText,
  refuse,
  refuseType,
  show,
} from "./reader.js";
import type { BetweenShape, ExactlyShape, ObjectShape, Shape, VariantsShape, WordsShape } from "./shapes.js";
import { hasAny, isNamed, ownMembers, take, wrong } from "./take.js";
import { isTrial, refuseUntold } from "./trial.js";

/** What of an object was right, member by member. */
export type Members<T> = { readonly [K in keyof T]?: T[K] };

/**
 * Checks a value against a shape; everything wrong is noted.
 *
 * @param at - the place of the value
 * @param shape - the shape, generated with the type `T`
 * @param refine - checks beyond the shape; it gets the members that were right, also where others were not
 * @returns a copy that shares nothing with the value; `undefined` if anything is wrong
 */
export function readShape<T>(
  at: Reader,
  shape: Shape,
  refine?: (at: Reader, members: Members<T>) => void,
): T | undefined {
  const before = at.issues.length;
  const members = isTrial(at) ? taken(at, shape) : readAny(at, shape);
  if (refine !== undefined && isRecord(members)) refine(at, members as Members<T>);
  return at.issues.length === before ? (members as T) : undefined;
}

function taken(at: Reader, shape: Shape): unknown {
  const copy = take(at.value, shape, at.issues);
  return copy === wrong ? refuseUntold(at) : copy;
}

/** A shape without members that a value of one kind does not have. */
export function without(shape: Shape, left: readonly string[]): Shape {
  if (shape.is !== "object" || left.length === 0) return shape;
  const members = Object.entries(shape.members).filter(([key]) => !left.includes(key));
  return { ...shape, members: Object.fromEntries(members) };
}

function readAny(at: Reader, shape: Shape): unknown {
  switch (shape.is) {
    case "object":
      return readMembers(at, shape);
    case "variants":
      return readVariant(at, shape);
    case "list":
      return readList(at, (one) => readAny(one, shape.of), shape.most, shape.least);
    case "words":
      return readOneOf(at, shape.of);
    case "number":
      if (shape.whole === true) return readCount(at, shape.unit);
      return shape.orZero === true ? readNotNegative(at, shape.unit) : readPositive(at, shape.unit);
    case "numbers":
      return readNumberOf(at, shape.unit, shape.of);
    case "between":
      return readWithin(at, shape);
    case "flag":
      return readFlag(at, shape.says);
    case "text":
      return readText(at, shape.says);
    case "name":
      return readName(at, shape.says);
    case "exactly":
      return readExactly(at, shape);
    case "or-null":
      return at.value === null ? null : readAny(at, shape.of);
    case "checked":
      return shape.read(at);
  }
}

function readMembers(at: Reader, { members, optional: open = [] }: ObjectShape): unknown {
  const keys = Object.keys(members);
  if (!readObject(at, keys, open)) return undefined;
  const read: Record<string, unknown> = {};
  for (const key of keys) {
    const there = member(at, key);
    if (there.value === undefined && open.includes(key)) continue;
    const before = at.issues.length;
    const value = readAny(there, members[key] as Shape);
    if (value !== undefined && at.issues.length === before) read[key] = value;
  }
  return read;
}

function readVariant(at: Reader, { by, of }: VariantsShape): unknown {
  if (!isRecord(at.value)) {
    const objects = of.map(({ members, optional: open = [] }) => objectWith(Object.keys(members), open));
    return refuseType(at, objects.join("; or "), "give one of these objects");
  }
  if (by === undefined) return readMembers(at, meantByOwnMember(at, of));
  const meant = meantByWord(member(at, by), by, of);
  if (meant !== undefined) return readMembers(at, meant);
  readCommonMembers(at, by, of);
  return undefined;
}

function meantByWord(at: Reader, by: string, of: readonly ObjectShape[]): ObjectShape | undefined {
  const meant = of.find(({ members }) => isNamed(at.value, members[by]));
  if (meant === undefined)
    readOneOf(
      at,
      of.flatMap(({ members }) => wordsOf(members[by])),
    );
  return meant;
}

function wordsOf(shape: Shape | undefined): readonly string[] {
  if (shape?.is === "words") return (shape satisfies WordsShape).of;
  return shape?.is === "exactly" ? [String(shape.value)] : [];
}

/** Where nobody can tell which object is meant, what all of them require is looked at all the same. */
function readCommonMembers(at: Reader, by: string, [first, ...others]: readonly ObjectShape[]): void {
  for (const [key, shape] of Object.entries(first?.members ?? {})) {
    const isCommon =
      key !== by && others.every(({ members }) => JSON.stringify(members[key]) === JSON.stringify(shape));
    const isOpen = first?.optional?.includes(key) === true;
    if (isCommon && !isOpen) readAny(member(at, key), shape);
  }
}

function meantByOwnMember({ value }: Reader, of: readonly ObjectShape[]): ObjectShape {
  const given = value as Readonly<Record<string, unknown>>;
  return of.filter((shape) => hasAny(given, ownMembers(shape, of))).at(-1) ?? (of[0] as ObjectShape);
}

function readExactly(at: Reader, { value }: ExactlyShape): unknown {
  return at.value === value
    ? value
    : refuse(at, at.value === undefined ? "missing" : "unknown-value", show(value), "", [String(value)]);
}

function readWithin(at: Reader, { unit, least, most, whole, advice }: BetweenShape): number | undefined {
  const value = readBetween(at, unit, least, most, advice);
  return whole !== true || value === undefined || Number.isInteger(value)
    ? value
    : refuse(at, "not-a-whole-number", `whole ${unit}`, "round it down");
}
