import type { ErrorObject } from "ajv/dist/2020.js";
import { mistakes } from "./model.js";

/** Keywords that only say that something else failed. */
const summaries = new Set(["if", "oneOf"]);

/** What a schema has against a document, one line for each place in it, with the id of the check that the place is in. */
export function shapeFaults(
  name: string,
  errors: readonly ErrorObject[],
  content: unknown,
): readonly string[] {
  const paths = [...new Set(errors.map(({ instancePath }) => instancePath))];
  const lines = paths.flatMap((path) => {
    const all = errors.filter(({ instancePath }) => instancePath === path);
    const errorsHere = all.filter(({ keyword }) => !summaries.has(keyword));
    const isChoice = all.some(({ keyword }) => keyword === "oneOf");
    const messages = [...new Set([...constants(errorsHere), ...errorsHere.flatMap(messageOf)])];
    const id = checkIdAt(content, path);
    const place = `${name}${path}${id === null ? "" : ` (${id})`}`;
    return messages.length === 0 ? [] : [`${place}: ${messages.join(isChoice ? ", or " : ", ")}`];
  });
  return lines.length > 0 ? lines : errors.map((error) => `${name}${error.instancePath}: ${error.message}`);
}

/** Each member of a choice of constants fails by itself; one line names them all. */
function constants(errors: readonly ErrorObject[]): readonly string[] {
  const allowed = errors
    .filter(({ keyword }) => keyword === "const")
    .map(({ params }) => String(params["allowedValue"]));
  return allowed.length === 0 ? [] : [`must be ${[...new Set(allowed)].join(", ")}`];
}

function messageOf({ keyword, message, params }: ErrorObject): readonly string[] {
  if (keyword === "const") return [];
  if (params["missingProperty"] === "mistake") {
    return [`${message}: one of ${mistakes.join(", ")}, or null`];
  }
  const named: unknown = params["additionalProperty"] ?? params["allowedValues"];
  return [named === undefined ? `${message}` : `${message} (${[named].flat().join(", ")})`];
}

/** A place in a file is a row of numbers; the id of the check in it is what a reader looks for. */
function checkIdAt(content: unknown, path: string): string | null {
  const indexes = /^\/groups\/(\d+)\/checks\/(\d+)(?:\/|$)/.exec(path);
  if (indexes === null) return null;
  const [, group = "", check = ""] = indexes;
  const { groups } = content as { readonly groups: readonly { readonly checks: readonly unknown[] }[] };
  const { id } = (groups[Number(group)]?.checks[Number(check)] ?? {}) as { readonly id?: unknown };
  return typeof id === "string" ? id : null;
}
