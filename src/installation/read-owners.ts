import { type Reader, readList, readText, refuse } from "../input/reader.js";

/** Most systems that one thing belongs to. */
const most = 300;

const what = "the service, derived system or building it belongs to";

/** Checks what a metal part belongs to: one id, or a list of several, each once. */
export function readOwners(at: Reader): string | readonly string[] | undefined {
  if (!Array.isArray(at.value)) return readText(at, what);
  const seen = new Set<unknown>();
  return readList(
    at,
    (one) => {
      if (seen.has(one.value)) return refuse(one, "duplicate-id", "each system once", "remove the second");
      seen.add(one.value);
      return readText(one, what);
    },
    most,
  );
}
