import { mostOfACount } from "./limits.js";
import { isAnAmount, isRecord, type Reader } from "./reader.js";
import type { BetweenShape, ListShape, NumberShape, ObjectShape, Shape, VariantsShape } from "./shapes.js";

/** What {@link take} gives for a value that is not right. */
export const wrong: unique symbol = /* @__PURE__ */ Symbol("wrong");

type Issues = Reader["issues"];
type Take = (value: unknown, issues: Issues) => unknown;
type Given = Readonly<Record<string, unknown>>;

/**
 * The copy that the full check of a shape makes, or {@link wrong} at the first thing that is not right. It keeps no places and puts no message
 * together, because nearly every input is right; what is wrong the full check then says. It may call wrong what the full check lets pass, but
 * never the other way round.
 *
 * @param value - what is checked
 * @param shape - its shape
 * @param issues - issues of the trial, for the checks that a shape does not hold itself
 */
export function take(value: unknown, shape: Shape, issues: Issues): unknown {
  let taker = takers.get(shape);
  if (taker === undefined) {
    taker = takerOf(shape);
    takers.set(shape, taker);
  }
  return taker(value, issues);
}

/** A shape is walked once, not at every input. */
const takers = /* @__PURE__ */ new WeakMap<Shape, Take>();

function takerOf(shape: Shape): Take {
  switch (shape.is) {
    case "object":
      return takerOfObject(shape);
    case "variants":
      return takerOfVariants(shape);
    case "list":
      return takerOfList(shape);
    case "checked":
      return takerOfChecked(shape.read);
    case "or-null": {
      const taker = takerOf(shape.of);
      return (value, issues) => (value === null ? null : taker(value, issues));
    }
    case "words": {
      const words = new Set<unknown>(shape.of);
      return (value) => (words.has(value) ? value : wrong);
    }
    case "numbers":
      return (value) => ((shape.of as readonly unknown[]).includes(value) ? value : wrong);
    case "number":
      return (value) => (isNumber(value, shape) ? value : wrong);
    case "between":
      return (value) => (isBetween(value, shape) ? value : wrong);
    case "flag":
      return (value) => (typeof value === "boolean" ? value : wrong);
    case "text":
      return (value) => (typeof value === "string" ? value : wrong);
    case "name":
      return (value) => (typeof value === "string" && value.trim() !== "" ? value : wrong);
    case "exactly":
      return (value) => (value === shape.value ? value : wrong);
  }
}

function takerOfObject({ members, optional = [] }: ObjectShape): Take {
  const known = Object.entries(members).map(([key, shape]) => {
    return { key, taker: takerOf(shape), isOpen: optional.includes(key) };
  });
  return (value, issues) => {
    if (!isRecord(value)) return wrong;
    const copy: Record<string, unknown> = {};
    let found = 0;
    for (const { key, taker, isOpen } of known) {
      const isThere = Object.hasOwn(value, key);
      if (isThere) found += 1;
      const one = isThere ? value[key] : undefined;
      if (one === undefined && isOpen) continue;
      const taken = taker(one, issues);
      if (taken === wrong) return wrong;
      copy[key] = taken;
    }
    for (const _ in value) found -= 1;
    return found === 0 ? copy : wrong;
  };
}

function takerOfVariants({ by, of }: VariantsShape): Take {
  const ways = of.map((one) => {
    return {
      taker: takerOfObject(one),
      own: ownMembers(one, of),
      word: by === undefined ? undefined : one.members[by],
    };
  });
  const lastFirst = [...ways].reverse();
  return (value, issues) => {
    if (!isRecord(value)) return wrong;
    const meant =
      by === undefined
        ? (lastFirst.find(({ own }) => hasAny(value, own)) ?? ways[0])
        : ways.find(({ word }) => isNamed(value[by], word));
    return meant === undefined ? wrong : meant.taker(value, issues);
  };
}

/** Members that only this one of several objects has. */
export function ownMembers(one: ObjectShape, of: readonly ObjectShape[]): readonly string[] {
  const others = of.filter((other) => other !== one);
  return Object.keys(one.members).filter((key) => others.every(({ members }) => !(key in members)));
}

/** Whether a value has any of these members. */
export function hasAny(value: Given, keys: readonly string[]): boolean {
  for (const key of keys) if (value[key] !== undefined) return true;
  return false;
}

/** Whether a word is the one, or one of those, by which an object is known. */
export function isNamed(word: unknown, shape: Shape | undefined): boolean {
  if (typeof word !== "string") return false;
  if (shape?.is === "words") return shape.of.includes(word);
  return shape?.is === "exactly" && String(shape.value) === word;
}

function takerOfList({ of, least, most }: ListShape): Take {
  const taker = takerOf(of);
  return (value, issues) => {
    if (!Array.isArray(value) || value.length < least || value.length > most) return wrong;
    const copy: unknown[] = [];
    for (const item of value) {
      const taken = taker(item, issues);
      if (taken === wrong) return wrong;
      copy.push(taken);
    }
    return copy;
  };
}

function takerOfChecked(read: (at: Reader) => unknown): Take {
  return (value, issues) => {
    const before = issues.length;
    const taken = read({ value, issues, step: null });
    return taken === undefined || issues.length > before ? wrong : taken;
  };
}

function isNumber(value: unknown, { whole, orZero }: NumberShape): boolean {
  if (typeof value !== "number" || !isAnAmount(value)) return false;
  if (whole === true) return Number.isInteger(value) && value >= 1 && value <= mostOfACount;
  return orZero === true ? value >= 0 : value > 0;
}

function isBetween(value: unknown, { least, most, whole }: BetweenShape): boolean {
  if (typeof value !== "number" || !(value >= least && value <= most)) return false;
  return whole !== true || Number.isInteger(value);
}
