import type { ReadingsFile } from "../../../tables/tools/generator/model.js";
import { inWords } from "../in-words.js";

/** The ledger of readings as a page. */
export function readingsPage(file: ReadingsFile): string {
  const entries = file.readings.map((reading) => {
    const alternatives = reading.alternatives.map(
      ({ id, says }) => `- \`${id}\`${id === reading.default ? " (default)" : ""}: ${says}`,
    );
    const reach = reading.policies.length === 0 ? "placement" : inWords(reading.policies.join(", "));
    return [
      `## ${reading.id}`,
      "",
      reading.question,
      "",
      ...alternatives,
      "",
      `Why: ${reading.reason}`,
      "",
      `Concerns: ${reach}; editions ${reading.editions.join(", ")}; ${reading.sections.join(", ")}.`,
    ].join("\n");
  });
  const head = [
    '<!-- Generated from tables/readings.json by "npm run pages -- readings"; do not edit. -->',
    "# Readings",
    "",
    "Where the text of an edition can be read in two ways, both are here, and the caller can choose in `code.readings`. The default is the",
    "plain reading; of two equally plain ones, the safer. A reading that would make a conductor smaller than the edition before is a default",
    "only if the text itself was read. A result names the readings that would change it and what the other alternatives require.",
  ].join("\n");
  return `${[head, ...entries].join("\n\n")}\n`;
}
