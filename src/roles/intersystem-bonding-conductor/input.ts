import { intersystemBusbarExists } from "../../edition/tables/placements.generated.js";
import { type Members, readShape } from "../../input/read-shape.js";
import { member, type Reader, refuse } from "../../input/reader.js";
import {
  type IntersystemBondingConductorInput,
  intersystemBondingConductorInputShape,
} from "./shape.generated.js";

export type { IntersystemBondingConductorInput };

/** Checks the input of a conductor to an intersystem bonding termination. */
export function readInput(at: Reader): IntersystemBondingConductorInput | undefined {
  return readShape<IntersystemBondingConductorInput>(at, intersystemBondingConductorInputShape, refine);
}

function refine(
  at: Reader,
  { code, termination, electrodeConductorOnBusbar }: Members<IntersystemBondingConductorInput>,
): void {
  if (termination === "busbar" && code !== undefined && !intersystemBusbarExists[code.year]) {
    refuse(
      member(at, "termination"),
      "unknown-value",
      '"on-enclosure" or "apart"',
      `the ${code.year} edition knows no busbar here`,
      ["on-enclosure", "apart"],
    );
  }
  if (termination !== undefined && termination !== "busbar" && electrodeConductorOnBusbar !== undefined) {
    refuse(
      member(at, "electrodeConductorOnBusbar"),
      "unknown-value",
      "nothing",
      "only a busbar follows the electrode conductor on it",
    );
  }
}
