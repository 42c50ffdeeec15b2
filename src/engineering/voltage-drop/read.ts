import { conductorSizes } from "../../conductor/index.js";
import { type Members, readShape } from "../../input/read-shape.js";
import { placeIn, type Reader, refuse } from "../../input/reader.js";
import { impedanceIn } from "./impedance.js";
import { type VoltageDropQuestion, voltageDropQuestionShape } from "./shape.generated.js";

/** Checks a question about a voltage drop; everything wrong is noted. */
export function readDropQuestion(at: Reader): VoltageDropQuestion | undefined {
  return readShape<VoltageDropQuestion>(at, voltageDropQuestionShape, refine);
}

function refine(at: Reader, members: Members<VoltageDropQuestion>): void {
  const { edition, current, conductors, impedance, permittedPercent, mostSets } = members;
  if (current === "direct" && impedance?.from === "table-9") {
    const advice = "take the resistance of Table 8";
    refuse(
      placeIn(at, ["impedance", "from"], "table-9"),
      "unknown-value",
      '"table-8" of a direct current',
      advice,
      ["table-8"],
    );
  }
  if (mostSets !== undefined && permittedPercent === undefined) {
    refuse(placeIn(at, ["permittedPercent"], undefined), "missing", "percent beside mostSets", "");
  }
  if (mostSets !== undefined && mostSets < (conductors?.sets ?? 1)) {
    const expected = `at least the ${conductors?.sets ?? 1} sets of the conductors`;
    refuse(placeIn(at, ["mostSets"], mostSets), "out-of-range", expected, "leave it out to keep them");
  }
  if (edition === undefined || conductors === undefined || impedance === undefined) return;
  const { size, material } = conductors;
  if (impedanceIn(edition, size, material, impedance) !== null) return;
  const known = conductorSizes.filter((one) => impedanceIn(edition, one, material, impedance) !== null);
  const table = impedance.from === "table-9" ? "Table 9" : "Table 8";
  const expected = `a size that ${table} has for ${material}, from ${known[0]} to ${known.at(-1)}`;
  refuse(
    placeIn(at, ["conductors", "size"], size),
    "unknown-value",
    expected,
    "take one of these, or the other table",
    known,
  );
}
