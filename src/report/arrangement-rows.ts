import type { Arrangement, ArrangementComparison } from "../installation/arrangements/arrangement.js";
import type { DocumentRow } from "./document.js";
import { conductorRow } from "./schedule-rows.js";
import { codedCautions, codedViolations } from "./words/coded.js";

/** Arrangements side by side as flat rows, one for each conductor of each; areas in circular mils. */
export function arrangementRows({ edition, arrangements }: ArrangementComparison): readonly DocumentRow[] {
  return arrangements.flatMap((arrangement) => rowsOf(arrangement, edition));
}

function rowsOf(
  { id: arrangement, status, violations, conductors, cautions, connections }: Arrangement,
  edition: string,
): readonly DocumentRow[] {
  const notPermitted = codedViolations(violations);
  const ofAll = {
    otherCautions: codedCautions(cautions),
    connections: connections
      .map(({ kind, note, at, citation }) => `${[kind, note, ...at].join(" ")} [${citation.section}]`)
      .join("; "),
    edition,
  };
  return conductors.map((one) => ({ arrangement, status, notPermitted, ...conductorRow(one), ...ofAll }));
}
