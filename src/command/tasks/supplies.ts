import type { SupplyCandidates } from "../../candidates/candidate.js";
import { type SupplyCandidatesQuestion, supplyCandidates } from "../../candidates/supply-candidates.js";
import { candidatesOf, type InstallationCandidates } from "../../installation/candidates-of.js";
import { candidatesDocument, runsDocument } from "../../report/candidates-document.js";
import { tradeOffAsSvg } from "../../report/render/trade-off-svg.js";
import type { RunTask } from "../answer.js";
import { failed } from "../failure.js";
import { hintFor } from "../hints.js";
import { readJson } from "../source.js";
import { formatOf, refusePage, type Style, styleOf } from "../style.js";
import { writeDocument } from "../write-document.js";

/** Answers a question of candidates, or those of an installation. */
export const suppliesTask: RunTask = async (task, around) => {
  const format = formatOf(task, "text");
  const page = refusePage(task, format, around);
  if (page !== null) return page;
  const given = await readJson(task.path, around, hintFor("supplies"));
  if (given.failure !== undefined) return given;
  const { value } = given;
  const isInstallation = typeof value === "object" && value !== null && "format" in value;
  if (isInstallation && format === "svg") {
    return failed(
      "usage",
      "an installation may have several runs: put one of them as a question to draw it. See bondmil supplies --help.",
    );
  }
  const found = isInstallation
    ? candidatesOf(value as Parameters<typeof candidatesOf>[0])
    : supplyCandidates(value as SupplyCandidatesQuestion);
  const text = written(found, styleOf(task, format, around));
  return { value: { text, isForReading: format === "text", ending: "done" } };
};

function written(found: SupplyCandidates | InstallationCandidates, style: Style): string {
  if (style.format === "json") return JSON.stringify(found, null, 2);
  if (found.kind !== "supply-candidates") return writeDocument(runsDocument(found, style.options), style);
  return style.format === "svg"
    ? tradeOffAsSvg(found)
    : writeDocument(candidatesDocument(found, style.options), style);
}
