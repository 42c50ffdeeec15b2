import type { EditionYear } from "./edition-year.js";
import type { Code } from "./shape.generated.js";

/** Codes with readings or amendments that are kept at a time; beyond them the one that was kept first goes. */
const mostKept = 64;

/** Things of a kind that are kept under one code; what goes beyond them is worked out each time. */
const mostUnderOne = 64;

const asPrinted = new Map<EditionYear, Code>();
const byContent = new Map<string, Code>();

/** What was worked out from the tables alone, apart from any code. */
const ofTables: Map<string, unknown>[] = [];

/** A store of what depends on the tables alone, by place in them. */
export function perPlace<T>(): Map<string, T> {
  const found = new Map<string, T>();
  ofTables.push(found);
  return found;
}

/** Forgets everything that was worked out. For the tools that change a value of the tables in memory, before and after the change. */
export function workOutAnew(): void {
  asPrinted.clear();
  byContent.clear();
  for (const found of ofTables) found.clear();
}

/** Every code that is kept, and those derived from them. They are frozen, so that what was worked out under them stays right. */
const known = new WeakSet<Code>();

/**
 * The one code of this content. It is the library's own and frozen, whoever holds it: what depends on a code alone is then worked out once, and
 * nobody can make it wrong by changing a code afterwards.
 *
 * @param code - a copy that was checked and that nobody else holds
 */
export function kept(code: Code): Code {
  const isPrinted = Object.keys(code).length === 1;
  const content = isPrinted ? "" : JSON.stringify(code);
  const before = isPrinted ? asPrinted.get(code.year) : byContent.get(content);
  if (before !== undefined) return before;
  const [first] = byContent.keys();
  if (first !== undefined && byContent.size >= mostKept) byContent.delete(first);
  if (isPrinted) asPrinted.set(code.year, code);
  else byContent.set(content, code);
  known.add(freeze(code));
  return code;
}

/** Whether a code is the library's own, checked and frozen. */
export function isKept(code: unknown): code is Code {
  return typeof code === "object" && code !== null && known.has(code as Code);
}

/** What depends on a code and a key alone: worked out once for a code that is kept, anew for any other, which its owner may still change. */
export function perCode<Key, T>(): (code: Code, key: Key, work: () => T) => T {
  const found = new WeakMap<Code, Map<Key, T>>();
  return (code, key, work) => {
    const ofCode = found.get(code);
    const before = ofCode?.get(key);
    if (before !== undefined) return before;
    const value = work();
    if (ofCode === undefined && known.has(code)) found.set(code, new Map([[key, value]]));
    else if (ofCode !== undefined && ofCode.size < mostUnderOne) ofCode.set(key, value);
    return value;
  };
}

const otherCodes = /* @__PURE__ */ perCode<string, Code>();

/** Another code that differs from a code in one way, which the key names; it is kept for as long as the one that it was made from. */
export function otherThan(code: Code, key: string, make: () => Code): Code {
  return otherCodes(code, key, () => {
    const other = make();
    if (known.has(code)) known.add(freeze(other));
    return other;
  });
}

function freeze<T extends object>(value: T): T {
  for (const inner of Object.values(value)) {
    if (typeof inner === "object" && inner !== null && !Object.isFrozen(inner)) freeze(inner);
  }
  return Object.freeze(value);
}
