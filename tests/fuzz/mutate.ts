import type { Random } from "./random.js";

/**
 * Values that nobody means. Objects that run code of their own when they are read, such as getters that throw and proxies, are left out:
 * what they throw is theirs.
 */
const strange: readonly (() => unknown)[] = [
  () => undefined,
  () => null,
  () => true,
  () => Number.NaN,
  () => Number.POSITIVE_INFINITY,
  () => Number.NEGATIVE_INFINITY,
  () => 0,
  () => -0,
  () => -1,
  () => 0.5,
  () => 1e308,
  () => 5e-324,
  () => 2 ** 53,
  () => 1e15 + 1,
  () => 101,
  () => 10n,
  () => Symbol("strange"),
  () => () => undefined,
  () => "",
  () => " ",
  () => "__proto__",
  () => "constructor",
  () => "toString",
  () => "4",
  () => "Copper",
  () => "4/0 AWG ",
  () => "75",
  () => "2024",
  () => " ".repeat(60_000),
  () => "9".repeat(60_000),
  () => "x".repeat(60_000),
  () => "\ud800",
  () => [],
  () => ({}),
  () => new Array(5),
  () => new Array(2 ** 32 - 1),
  () => Array.from({ length: 3000 }, () => 1),
  () => Array.from({ length: 3000 }, () => ({})),
  () => Object.create(null) as unknown,
  () => JSON.parse('{"__proto__":{"size":"4 AWG"},"constructor":1}') as unknown,
  () => Object.create({ size: "4 AWG", material: "copper", year: "2023" }) as unknown,
  () => Object.fromEntries(Array.from({ length: 3000 }, (_, i) => [`key ${i}`, i])),
  () => new Date(0),
  () => new Map([["size", "4 AWG"]]),
  () => new Float64Array(3),
  () => new Error("strange"),
  () => deep(5000),
  () => circular(),
  () => shared(60),
];

function deep(levels: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < levels; level += 1) value = level % 2 === 0 ? [value] : { value };
  return value;
}

function circular(): unknown {
  const own: Record<string, unknown> = { year: "2023" };
  own["own"] = own;
  own["list"] = [own, own];
  return own;
}

/** Written out, it doubles with each level. */
function shared(levels: number): unknown {
  let value: unknown = { leaf: 1 };
  for (let level = 0; level < levels; level += 1) value = { one: value, other: value };
  return value;
}

interface Place {
  readonly holder: Record<PropertyKey, unknown>;
  readonly key: string;
}

/** A copy of some arguments with one to three things wrong in it. */
export function mutated(args: readonly unknown[], random: Random): unknown[] {
  const copy = copied(args) as unknown[];
  for (let times = 1 + random.below(3); times > 0; times -= 1) mutate(copy, random);
  return copy;
}

const mostItems = 10_000;
const deepestCopy = 30;

/** A copy of plain data, each object once, so that what is shared stays shared; functions, and what lies deeper, stay themselves. */
function copied(value: unknown, depth = 0, copies = new Map<unknown, unknown>()): unknown {
  if (typeof value !== "object" || value === null || depth > deepestCopy) return value;
  if (copies.has(value)) return copies.get(value);
  const isList = Array.isArray(value);
  const copy = (isList ? [] : {}) as Record<string, unknown>;
  copies.set(value, copy);
  for (const [key, one] of Object.entries(value)) {
    Object.defineProperty(copy, key, {
      value: copied(one, depth + 1, copies),
      configurable: true,
      enumerable: true,
      writable: true,
    });
  }
  if (isList) copy["length"] = value.length;
  return copy;
}

function mutate(args: unknown[], random: Random): void {
  const { holder, key } = placeIn(args, random);
  const value = holder[key];
  switch (random.below(8)) {
    case 0:
    case 1:
    case 2:
      holder[key] = random.pick(strange)();
      return;
    case 3:
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
      return;
    case 4:
      if (!Array.isArray(holder)) holder[nearMiss(key, random)] = value;
      else holder.push(...Array.from({ length: 1 + random.below(30) }, () => copied(value)));
      return;
    case 5: {
      // Something that is right elsewhere in the same arguments.
      const other = placeIn(args, random);
      holder[key] = copied(other.holder[other.key]);
      return;
    }
    default:
      holder[key] = changed(value, random);
  }
}

function changed(value: unknown, random: Random): unknown {
  if (typeof value === "number")
    return random.pick([-value, value * 1e6, value + 0.5, value * 1e300, String(value)]);
  if (typeof value === "string")
    return random.pick([nearMiss(value, random), value.toUpperCase(), [value], `${value} `]);
  if (typeof value === "boolean") return random.pick([!value, String(value), Number(value)]);
  if (Array.isArray(value) && value.length < mostItems)
    return random.pick([[...value].reverse(), [...value, ...value], value[0], { ...value }]);
  return random.pick(strange)();
}

function nearMiss(word: string, random: Random): string {
  const at = random.below(word.length + 1);
  return random.pick([
    word.slice(0, at) + word.slice(at + 1),
    word.slice(0, at) + word.slice(at, at + 1) + word.slice(at),
    `${word}s`,
  ]);
}

/** A place anywhere inside of the arguments, shallow ones more often than deep ones. */
function placeIn(args: unknown[], random: Random): Place {
  let holder = args as unknown as Place["holder"];
  for (;;) {
    const keys = Object.keys(holder).slice(0, 200);
    const key = keys.length === 0 ? "0" : random.pick(keys);
    const value = holder[key];
    const isHolder = typeof value === "object" && value !== null && Object.keys(value).length > 0;
    if (!isHolder || ArrayBuffer.isView(value) || !Object.isExtensible(value) || random.below(5) === 0)
      return { holder, key };
    holder = value as Place["holder"];
  }
}
