import { InputError } from "./input-error.js";
import { notPlainIn } from "./plain-data.js";
import { issueAt, placeIn, type Reader, readAll, refuse } from "./reader.js";

/** What a member of a result is, as far as it is looked at before use. */
type Kind = "text" | "number" | "list" | "object";

/** Members by which a kind of result is known. */
export type Marks<R> = { readonly [K in keyof R]?: Kind };

/**
 * Uses a result of the library that the caller hands back. The types of the results are not written a second time as checks: what does
 * not look like the result, or is no plain data, is refused by its members, and what breaks further inside is refused where the use of it fails, so that
 * data which was stored, cut or changed gives the one error as any other input does.
 */
export function useResult<R, T>(result: R, what: string, marks: Marks<R>, use: (result: R) => T): T {
  const from = `a result of ${what}`;
  readAll(result, (at) => {
    refuseUnmarked(at, from, marks);
    return true;
  });
  try {
    return use(result);
  } catch (error) {
    if (error instanceof InputError) throw error;
    throw brokenResult(result, from, error);
  }
}

function refuseUnmarked<R>(at: Reader, from: string, marks: Marks<R>): void {
  if (typeof at.value !== "object" || at.value === null) {
    refuse(at, at.value === undefined ? "missing" : "wrong-type", from, "give it as the function gave it");
    return;
  }
  const strange = notPlainIn(at.value);
  if (strange !== null) {
    const place = placeIn(at, strange.keys, strange.value);
    refuse(place, "wrong-type", "plain JSON data", `give ${from} as the function gave it`);
    return;
  }
  for (const [key, kind] of Object.entries(marks) as [string, Kind][]) {
    const value = Object.hasOwn(at.value, key) ? (at.value as Record<string, unknown>)[key] : undefined;
    const place = placeIn(at, [key], value);
    if (isOf(place.value, kind)) continue;
    const code = place.value === undefined ? "missing" : "wrong-type";
    refuse(place, code, words[kind], `give ${from} as the function gave it`);
  }
}

const words: Readonly<Record<Kind, string>> = {
  text: "a text",
  number: "a finite number",
  list: "a list",
  object: "an object",
};

function isOf(value: unknown, kind: Kind): boolean {
  switch (kind) {
    case "text":
      return typeof value === "string";
    case "number":
      return Number.isFinite(value);
    case "list":
      return Array.isArray(value);
    case "object":
      return typeof value === "object" && value !== null;
  }
}

function brokenResult(result: unknown, from: string, error: unknown): InputError {
  const detail = error instanceof Error ? error.message.slice(0, 120) : "it is not a result";
  const issue = issueAt([], "wrong-type", from, result, "");
  const message = `expected ${from}, received one that is not whole (${detail}); give it as the function gave it`;
  return new InputError([{ ...issue, message }], { cause: error });
}
