import { markdownTable, plainText } from "./markdown.js";
import { reviewOf } from "./review.js";

/**
 * Writes the report for a plan reviewer as Markdown: title block, the path in words, the schedule, every result in sentences with
 * its numbers, sections and evidence, cautions, and what was not sized and why. Every name is escaped.
 *
 * @param source - a drawing, its JSON text, or the value that it would parse to
 * @returns Markdown
 * @throws {@link InputError} listing everything that is wrong in the drawing
 *
 * @example
 * ```ts
 * import { reportAsMarkdown } from "bondmil";
 * const report = reportAsMarkdown({
 *   format: 1,
 *   title: "Pump house",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 * });
 * report.split("\n")[0]; // => "# Pump house: bonding and grounding conductors"
 * ```
 */
export function reportAsMarkdown(source: unknown): string {
  const { title, block, violations, sheets, schedule, basis, cautions, notSized, standing } =
    reviewOf(source);
  return [
    `# ${plainText(title)}: bonding and grounding conductors`,
    markdownTable(
      ["", ""],
      block.map((cells) => cells.map(plainText)),
    ),
    ...(violations.length === 0 ? [] : ["## Not permitted", ...list(violations)]),
    "## The path in words",
    ...sheets.flatMap((sheet) => [`### ${plainText(sheet.title)}`, plainText(sheet.description)]),
    "## Schedule",
    ...schedule.flatMap(([heading, rows]) => [
      `### ${heading}`,
      markdownTable(
        ["No.", "conductor", "from", "to", "smallest size", "required", "section", "evidence"],
        rows.map(({ mark, id, from, to, size, area, section, evidence }) =>
          [String(mark), id, from, to, size, area, section, evidence].map(plainText),
        ),
      ),
    ]),
    "## Each result",
    ...basis.flatMap((one) => [
      `### ${one.mark}. ${plainText(one.id)}`,
      `**${plainText(one.size)}.** ${plainText(one.sentences)} Evidence: ${one.evidence}.`,
      ...list([
        ...one.readings.map((text) => `Open reading: ${text}`),
        ...one.cautions.map((text) => `Caution: ${text}`),
      ]),
    ]),
    "## Not sized, and why",
    ...(list(notSized).length > 0 ? list(notSized) : ["Everything that the drawing holds was sized."]),
    "## Cautions",
    ...list([...cautions, ...standing]),
  ]
    .join("\n\n")
    .concat("\n");
}

function list(items: readonly string[]): readonly string[] {
  return items.length === 0 ? [] : [items.map((item) => `- ${plainText(item)}`).join("\n")];
}
