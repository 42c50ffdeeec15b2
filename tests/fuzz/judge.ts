import { InputError } from "bondmil";

/** What is wrong with the way in which a function answered; `null` for a result or the one error. */
export function faultOf(call: (...args: never[]) => unknown, args: readonly unknown[]): string | null {
  try {
    const result = call(...(args as never[]));
    // A result may repeat what it was given.
    const found = notFinite(args) === null ? notFinite(result) : null;
    return found === null ? null : `a result with ${found}`;
  } catch (error) {
    if (!(error instanceof InputError))
      return error instanceof Error ? (error.stack ?? error.message) : String(error);
    return error.issues.length > 0 && error.issues.every(isWhole)
      ? null
      : "an InputError without whole issues";
  }
}

function isWhole(issue: object): boolean {
  return ["code", "path", "expected", "received", "message"].every(
    (key) => typeof (issue as Record<string, unknown>)[key] === "string",
  );
}

const mostLooked = 5000;

/** The first number of a result that is not finite; of a large result the beginning is looked at. */
function notFinite(result: unknown): string | null {
  const seen = new Set<object>();
  const waiting: [unknown, string][] = [[result, ""]];
  for (let one = waiting.pop(); one !== undefined && seen.size < mostLooked; one = waiting.pop()) {
    const [value, path] = one;
    if (typeof value === "number" && !Number.isFinite(value)) return `${value} at "${path}"`;
    if (typeof value !== "object" || value === null || seen.has(value)) continue;
    seen.add(value);
    for (const [key, inner] of Object.entries(value)) waiting.push([inner, `${path}.${key}`]);
  }
  return null;
}
