import { type Reader, refuse } from "../input/reader.js";
import { sizeRows } from "./sizes.generated.js";

/** Notes that a value is no size, with those that have its number. */
export function refuseSize(at: Reader): undefined {
  const { value } = at;
  const code = value === undefined ? "missing" : typeof value === "string" ? "unknown-size" : "wrong-type";
  const number = typeof value === "string" ? /\d+/.exec(value)?.[0] : undefined;
  const like = sizeRows.map(([size]) => size).filter((size) => size.split(/[ /]/)[0] === number);
  const expected =
    like.length > 0
      ? like.map((size) => `"${size}"`).join(" or ")
      : 'a size such as "4/0 AWG" or "500 kcmil"';
  const advice = code === "missing" ? "" : "write the size in full; parseSize parses what people write";
  return refuse(at, code, expected, advice, like);
}
