import type { Sources } from "../../../tables/tools/source.js";
import { standings } from "../runner/model.js";
import { type Line, labelled, table } from "../runner/text.js";
import type { SupplyEntry } from "./model.js";
import type { SupplyRow } from "./run.js";

/** How many pairs of source and place in it the checks come from; many checks of one place are one. */
export function placesOf(entries: readonly SupplyEntry[]): number {
  return new Set(entries.map(({ source, check }) => `${source} ${check.locator}`)).size;
}

/** The counts of a run by question and standing; a check counts once however many editions it ran under. */
export function writeSupplySummary(rows: readonly SupplyRow[]): string {
  const columns = standings.filter((standing) => rows.some(({ check }) => check.standing === standing));
  const line = (name: string, ran: readonly SupplyRow[]): Line => {
    const checks = [...new Map(ran.map(({ check }) => [check.id, check])).values()];
    return [
      name,
      ...columns.map((standing) => checks.filter((check) => check.standing === standing).length),
      placesOf(ran),
      ran.length,
      ran.filter(({ verdict }) => verdict !== "met").length,
    ];
  };
  const questions = [...new Set(rows.map(({ question }) => question))];
  const lines = questions.map((name) =>
    line(
      name,
      rows.filter(({ question }) => question === name),
    ),
  );
  const head = ["question", ...columns, "places", "runs", "missed"];
  return `Supplies by question and standing\n\n${table(head, [...lines, line("all", rows)])}`;
}

/** Every row that was not met, in full. */
export function writeSupplyMisses(rows: readonly SupplyRow[], sources: Sources): string {
  return rows
    .filter(({ verdict }) => verdict !== "met")
    .map(({ question, source, check, edition, verdict, unmet }) =>
      [
        `${verdict}: ${check.id}, ${edition} (${question}, ${check.standing})`,
        labelled("input", JSON.stringify(check.input)),
        ...unmet.flatMap(({ path, expected, given }) => [
          labelled("at", path === "" ? "the answer" : path),
          labelled("expected", JSON.stringify(expected)),
          labelled("given", JSON.stringify(given) ?? "nothing"),
        ]),
        ...(check.dispute === undefined ? [] : [labelled("text", check.dispute.section)]),
        labelled("title", sources[source]?.title ?? source),
        labelled("locator", check.locator),
      ].join("\n"),
    )
    .join("\n\n");
}
