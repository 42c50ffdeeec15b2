import type { EditionYear } from "../../edition/edition-year.js";
import { editionYears } from "../../edition/edition-year.js";
import type { RunTask } from "../answer.js";
import { failed } from "../failure.js";
import { type First, firstDocument } from "../first-documents.js";
import { tell, Unwritten } from "../output.js";
import { shellWord } from "../shell-word.js";

/** Writes a first document; a file that is there is left as it is. */
export const beginTask: RunTask = async ({ path, options }, around) => {
  const { edition, holds = "service" } = options;
  if (edition === undefined) {
    return failed(
      "usage",
      `--edition is required, for it decides the sizes: the edition that your jurisdiction enforces, one of ${editionYears.join(", ")}. Whoever issues the permit knows it. See bondmil begin --help.`,
    );
  }
  const file = path === "-" ? undefined : path;
  const document = firstDocument(holds as First, edition as EditionYear, around.schemaFor(file));
  const text = `${JSON.stringify(document, null, 2)}\n`;
  if (file === undefined) return { value: { text, isForReading: false, ending: "done" } };
  try {
    await around.create(file, text);
  } catch (error) {
    const cause = error as NodeJS.ErrnoException;
    if (cause.code !== "EEXIST") throw new Unwritten(file, cause);
    return failed("output", `${file} is there already and is left as it is; name another file.`);
  }
  await tell(nextSteps(file, holds as First, around.home), around);
  return { value: { text: null, ending: "done" } };
};

function nextSteps(file: string, holds: First, home: string): string {
  const next = holds === "load" ? "supplies" : "schedule";
  const paper = holds === "load" ? "choosing-a-supply.md" : "installation.md";
  return [
    `${file} is written. Edit it to what is in your drawing, then:`,
    `  bondmil ${next} ${shellWord(file)}`,
    `What each member means: ${home}/docs/${paper}${holds === "load" ? "" : ", and in an editor that knows JSON Schema"}.`,
    "",
  ].join("\n");
}
