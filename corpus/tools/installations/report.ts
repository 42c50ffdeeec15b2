import type { Sources } from "../../../tables/tools/source.js";
import { standings } from "../runner/model.js";
import { type Line, labelled, table } from "../runner/text.js";
import { expectedOf, type InstallationCheckFile, type Statement } from "./model.js";
import type { InstallationRow } from "./run.js";

/** The counts of a run by topic and standing; a check counts once however many editions it ran under. */
export function writeInstallationSummary(rows: readonly InstallationRow[]): string {
  const columns = standings.filter((standing) => rows.some(({ check }) => check.standing === standing));
  const line = (name: string, ran: readonly InstallationRow[]): Line => {
    const checks = [...new Map(ran.map(({ check }) => [check.id, check])).values()];
    return [
      name,
      ...columns.map((standing) => checks.filter((check) => check.standing === standing).length),
      ran.length,
      ran.filter(({ verdict }) => verdict !== "met").length,
    ];
  };
  const files = [...new Set(rows.map(({ file }) => file))];
  const ofFile = (file: InstallationCheckFile): readonly InstallationRow[] =>
    rows.filter((row) => row.file === file);
  const lines = [...files.map((file) => line(file.id, ofFile(file))), line("all", rows)];
  return `Installations by topic and standing\n\n${table(["topic", ...columns, "runs", "missed"], lines)}`;
}

/** Every row that was not met, in full. */
export function writeInstallationMisses(rows: readonly InstallationRow[], sources: Sources): string {
  return rows
    .filter(({ verdict }) => verdict !== "met")
    .map((row) => writeMiss(row, sources))
    .join("\n\n");
}

function writeMiss(row: InstallationRow, sources: Sources): string {
  const { file, source, check, edition, verdict, unmet, refused = [] } = row;
  return [
    `${verdict}: ${check.id}, ${edition} (${file.id}, ${check.standing})`,
    labelled("document", check.installation),
    ...refused.map((why) => labelled("refused", why)),
    ...unmet.map((statement) => labelled("unmet", sayStatement(statement))),
    labelled("of", `${expectedOf(check).length} statements`),
    ...(check.dispute === undefined ? [] : [labelled("text", check.dispute.section)]),
    labelled("title", sources[source]?.title ?? source),
    labelled("locator", check.locator),
  ].join("\n");
}

function sayStatement(statement: Statement): string {
  if ("noViolation" in statement) return `no ${statement.noViolation}`;
  if ("violation" in statement) return `${statement.violation} at ${statement.at.join(", ")}`;
  const { role, subject, required, ...rest } = statement;
  const details = Object.entries(rest).map(([name, value]) => `${name} ${value}`);
  return [`${required === false ? "no " : ""}${role} ${subject}`, ...details].join(", ");
}
