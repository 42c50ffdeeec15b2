import type { Arrangement, ArrangementComparison } from "../installation/arrangements/arrangement.js";
import { endWords } from "../installation/conductor-words.js";
import type { DocumentRow } from "./document.js";
import { codedCautions, codedViolations } from "./words/coded.js";

/** Arrangements side by side as flat rows, one for each conductor of each; areas in circular mils. */
export function arrangementRows({ edition, arrangements }: ArrangementComparison): readonly DocumentRow[] {
  return arrangements.flatMap((arrangement) => rowsOf(arrangement, edition));
}

function rowsOf(
  { id: arrangement, status, violations, conductors, cautions: others, connections }: Arrangement,
  edition: string,
): readonly DocumentRow[] {
  return conductors.map(({ id, from, to, quantity, result }) => {
    const { role, purpose, outcome, material, requiredArea, governs, citation, evidence, cautions } = result;
    return {
      arrangement,
      status,
      notPermitted: codedViolations(violations),
      id,
      role,
      purpose,
      from: endWords(from),
      to: endWords(to),
      quantity,
      size: outcome.kind === "conductor" ? outcome.size : null,
      material,
      requiredArea,
      notRequired: outcome.kind === "not-required" ? outcome.why : null,
      governs,
      section: citation.section,
      evidence,
      cautions: cautions.map(({ code }) => code).join(" "),
      otherCautions: codedCautions(others),
      connections: connections
        .map(({ kind, note, at, citation: cited }) => `${[kind, note, ...at].join(" ")} [${cited.section}]`)
        .join("; "),
      edition,
    };
  });
}
