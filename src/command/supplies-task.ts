import type { SupplyCandidates } from "../candidates/candidate.js";
import { type SupplyCandidatesQuestion, supplyCandidates } from "../candidates/supply-candidates.js";
import { candidatesOf, type InstallationCandidates } from "../installation/candidates-of.js";
import { candidatesDocument, runsDocument } from "../report/candidates-document.js";
import type { Document } from "../report/document.js";
import { render } from "../report/render/render.js";
import { tradeOffAsSvg } from "../report/render/trade-off-svg.js";
import type { Asked } from "./arguments.js";
import { failed, type Outcome } from "./failure.js";
import { readSource } from "./source.js";
import type { supplyFormats } from "./subcommands.js";
import type { Surroundings } from "./surroundings.js";
import { type Answer, documentOptions } from "./tasks.js";
import { readingWidth } from "./terminal.js";

type SupplyFormat = (typeof supplyFormats)[number];

/** Answers a question of candidates, or those of an installation. */
export async function suppliesTask(
  {
    installation: path,
    options,
  }: Pick<Extract<Asked, { readonly kind: "task" }>, "installation" | "options">,
  around: Surroundings,
): Promise<Outcome<Answer>> {
  const format = (options["as"] ?? "table") as SupplyFormat;
  const source = await readSource(path, around);
  if (source.failure !== undefined) return source;
  const given = parsed(source.value);
  if (given.failure !== undefined) return given;
  const isInstallation = typeof given.value === "object" && given.value !== null && "format" in given.value;
  if (isInstallation && format === "svg") {
    return failed(
      "usage",
      "an installation may have several runs: put one of them as a question to draw it.",
    );
  }
  const found = isInstallation
    ? candidatesOf(source.value)
    : supplyCandidates(given.value as SupplyCandidatesQuestion);
  const text = written(found, format, readingWidth(around.output), documentOptions(options));
  return { value: { text, isForReading: format === "table", ending: "done" } };
}

function parsed(text: string): Outcome<unknown> {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch (error) {
    return failed(
      "refused",
      `the question is not JSON: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

function written(
  found: SupplyCandidates | InstallationCandidates,
  format: SupplyFormat,
  width: number | undefined,
  options: ReturnType<typeof documentOptions>,
): string {
  if (format === "json") return JSON.stringify(found, null, 2);
  if (format === "svg" && found.kind === "supply-candidates") return tradeOffAsSvg(found);
  const document: Document =
    found.kind === "supply-candidates" ? candidatesDocument(found, options) : runsDocument(found, options);
  const as = format === "table" || format === "svg" ? "text" : format;
  return render(document, { as, ...(width !== undefined && { width }) });
}
