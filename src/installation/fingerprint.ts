/** The offset and the prime of 64-bit FNV-1a, in two halves of 32 bits; the prime is 2^40 + `low`. */
const offset = { high: 0xcbf29ce4, low: 0x84222325 } as const;
const low = 0x1b3;
const half = 0x1_0000_0000;

/**
 * Short mark of plain data: 64-bit FNV-1a over its canonical JSON (keys sorted, no spaces, UTF-8), as four groups of four
 * hexadecimal digits. It tells two schedules apart; it is no protection against somebody who means to forge one.
 *
 * @param data - plain JSON data
 * @returns for example `af63-dc4c-8601-ec8c`
 *
 * @example
 * ```ts
 * import { fingerprintOf } from "bondmil";
 * fingerprintOf({ b: 1, a: [2] }) === fingerprintOf({ a: [2], b: 1 }); // => true
 * ```
 */
export function fingerprintOf(data: unknown): string {
  let high: number = offset.high;
  let lower: number = offset.low;
  for (const byte of new TextEncoder().encode(canonical(data))) {
    const mixed = (lower ^ byte) >>> 0;
    const product = mixed * low;
    lower = product >>> 0;
    high = (high * low + Math.floor(product / half) + mixed * 0x100) % half;
  }
  const digits = [high, lower].map((one) => one.toString(16).padStart(8, "0")).join("");
  return [0, 4, 8, 12].map((at) => digits.slice(at, at + 4)).join("-");
}

/** JSON with keys sorted and no spaces. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value === "object" && value !== null) {
    const entries = Object.entries(value).filter(([, one]) => one !== undefined);
    const members = entries
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, one]) => `${JSON.stringify(key)}:${canonical(one)}`);
    return `{${members.join(",")}}`;
  }
  return JSON.stringify(value) ?? "null";
}
