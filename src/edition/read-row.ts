import { isConductorSize } from "../conductor/index.js";
import { type Reader, readPositive, refuse } from "../input/reader.js";

/** Checks how an amendment names a row: by the largest copper supply size, by the rating of a device, or as the open last row. */
export function readRow(at: Reader): string | number | undefined {
  const { value } = at;
  if (typeof value === "number") return readPositive(at, "amperes, as the table's row has them");
  const isName =
    typeof value === "string" && (value === "last" || isConductorSize(value) || /^\d+ kcmil$/.test(value));
  if (isName) return value;
  const code = value === undefined ? "missing" : "unknown-value";
  return refuse(
    at,
    code,
    'the row\'s largest copper supply size, "last", or a rating',
    "name the row as the table does",
  );
}
