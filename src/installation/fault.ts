import { InputError, type Issue, type IssueCode } from "../input/input-error.js";
import { show } from "../input/reader.js";

/** Steps from the document to a place in it. */
export type Keys = readonly (string | number)[];

/** One thing wrong in a document, with the steps to its place beside the written path. */
export interface Fault {
  readonly keys: Keys;
  readonly issue: Issue;
}

/** Notes something wrong at a place. */
export function fault(
  code: IssueCode,
  keys: Keys,
  expected: string,
  received: unknown,
  advice: string,
): Fault {
  const shown = show(received);
  const message = `expected ${expected}, received ${shown}; ${advice}`;
  return { keys, issue: { code, path: pathOf(keys), expected, received: shown, message } };
}

/** Writes the steps to a place, for example `services[0].runs[1].from`. */
export function pathOf(keys: Keys): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === "number") return `${path}[${key}]`;
    return path === "" ? key : `${path}.${key}`;
  }, "");
}

/** The steps of a written path. */
export function keysOf(path: string): Keys {
  return path.split(/[.[]/).map((step) => (/^\d+\]$/.test(step) ? Number.parseInt(step, 10) : step));
}

/** The error that lists everything wrong in a document. */
export function errorOf(faults: readonly Fault[]): InputError {
  return new InputError(faults.map(({ issue }) => issue));
}
