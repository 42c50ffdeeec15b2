import { readAll, refuse } from "../input/reader.js";
import { readSize } from "./read.js";
import { type ConductorSize, conductorSizes, isConductorSize } from "./size.js";

/** Characters of a size as written; what is longer is no size, and is not searched through. */
const longest = 100;

const spokenDigits: Readonly<Record<string, string>> = { one: "1", two: "2", three: "3", four: "4" };

/**
 * Parses a size as people write it: `4/0`, `0000`, `#2`, `250 kcmil`, `250MCM`, `1/0 AWG`, `No. 6`, `two aught`.
 * It never guesses: a bare `4` can mean 4 AWG or, spoken or scribbled, 4/0, so both are named and nothing is returned.
 *
 * @param text - what was written
 * @returns the canonical size
 * @throws {@link InputError} `ambiguous-size` with both candidates, `unknown-size`, `wrong-type`, or `out-of-range` above 100 characters
 *
 * @example
 * ```ts
 * import { parseSize } from "bondmil";
 * parseSize("0000"); // => "4/0 AWG"
 * parseSize("#2"); // => "2 AWG"
 * parseSize("250MCM"); // => "250 kcmil"
 * parseSize("250,000 cmil"); // => "250 kcmil"
 * ```
 */
export function parseSize(text: string): ConductorSize {
  return readAll(text, (at) => {
    if (typeof text !== "string")
      return refuse(at, "wrong-type", "a size as text", "write for example 4/0 AWG");
    if (text.length > longest)
      return refuse(at, "out-of-range", `at most ${longest} characters`, "give the size alone");
    const candidates = candidatesFor(normalize(text)).filter(isConductorSize);
    if (candidates.length === 1) return candidates[0];
    if (candidates.length > 1) {
      const both = candidates.join(" or ");
      return refuse(at, "ambiguous-size", both, `write the one that is meant: ${both}`);
    }
    return refuse(
      at,
      "unknown-size",
      `a size from ${conductorSizes[0]} to ${conductorSizes.at(-1)}`,
      "write AWG sizes as 6 AWG or 4/0 AWG and larger ones as 500 kcmil",
    );
  });
}

/**
 * Writes a size. The text is the canonical name, so that {@link parseSize} gives it back.
 *
 * @param size - canonical size
 * @returns the text
 * @throws {@link InputError} for anything but a size
 *
 * @example
 * ```ts
 * import { formatSize, parseSize } from "bondmil";
 * parseSize(formatSize("3/0 AWG")); // => "3/0 AWG"
 * ```
 */
export function formatSize(size: ConductorSize): string {
  return readAll(size, readSize);
}

function normalize(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/\b(one|two|three|four)\b/g, (word) => spokenDigits[word] ?? word)
    .replace(/(\d)[\s-]*(?:aught|ought|naught|nought)\b/g, "$1/0")
    .replace(/(\d),(?=\d{3}\b)/g, "$1")
    .replace(/\s*\/\s*/g, "/");
}

/** What a text could mean; most of it is no size. */
function candidatesFor(text: string): readonly string[] {
  const cmil = /^(\d+)000\s*(?:cmil|cm|circular mils)$/.exec(text);
  if (cmil) return [`${cmil[1]} kcmil`];
  const kcmil = /^(\d+)\s*(?:kcmil|mcm|kcm)$/.exec(text);
  if (kcmil) return [`${kcmil[1]} kcmil`];
  const marked =
    /^(?:#|no\.?|awg)\s*([\d/]+)$/.exec(text) ??
    /^(?:#|no\.?)?\s*([\d/]+)\s*(?:awg|ga|ga\.|gauge)$/.exec(text);
  if (marked) return [gauge(marked[1] ?? "")];
  return [gauge(text), `${text}/0 AWG`, `${text} kcmil`];
}

function gauge(number: string): string {
  return `${/^0+$/.test(number) ? `${number.length}/0` : number} AWG`;
}
