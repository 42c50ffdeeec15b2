import { type Reader, refuse } from "../input/reader.js";
import { type ConductorSize, conductorSizes, isConductorSize } from "./size.js";

/** Checks for a canonical size in an input; free text is for {@link parseSize}, so that nothing is guessed here. */
export function readSize(at: Reader): ConductorSize | undefined {
  if (isConductorSize(at.value)) return at.value;
  const code =
    at.value === undefined ? "missing" : typeof at.value === "string" ? "unknown-size" : "wrong-type";
  const like =
    typeof at.value === "string"
      ? conductorSizes.filter((size) => size.split(/[ /]/)[0] === firstNumber(at.value))
      : [];
  const expected =
    like.length > 0
      ? like.map((size) => `"${size}"`).join(" or ")
      : 'a size such as "4/0 AWG" or "500 kcmil"';
  return refuse(at, code, expected, "write the size in full; parseSize reads what people write");
}

function firstNumber(value: unknown): string | undefined {
  return /\d+/.exec(String(value))?.[0];
}
