import type { DocumentOptions } from "../report/frame.js";
import type { Options, Task } from "./arguments.js";
import { failed, type Outcome } from "./failure.js";
import { shellWord } from "./shell-word.js";
import { nameOf } from "./source.js";
import type { Surroundings } from "./surroundings.js";
import { readingWidth } from "./terminal.js";

/** How the output is written. */
export interface Style<Format extends string = string> {
  readonly format: Format;
  /** That of the terminal, if there is one. */
  readonly width: number | undefined;
  /** Place, who prepared it, and when. */
  readonly options: DocumentOptions;
}

/** The format of the output; the choices were checked with the command line. */
export function formatOf({ options }: Task, usual: string): string {
  return options["as"] ?? usual;
}

/** How a task is to be written. */
export function styleOf<Format extends string>(
  { options }: Task,
  format: Format,
  { output }: Surroundings,
): Style<Format> {
  return { format, width: readingWidth(output), options: documentOptions(options) };
}

/** What stands in the title block beside what the library knows; what is blank is not given. */
function documentOptions(options: Options): DocumentOptions {
  const { place = "", "prepared-by": preparedBy = "", date = "" } = options;
  return {
    ...(place.trim() !== "" && { place }),
    ...(preparedBy.trim() !== "" && { preparedBy }),
    ...(date.trim() !== "" && { date }),
  };
}

/** A page or a drawing is no text for a terminal: it says where to send it. */
export function refusePage(
  { subcommand, role, path, options }: Task,
  format: string,
  { output }: Surroundings,
): Outcome<never> | null {
  if (!output.isTerminal || (format !== "html" && format !== "svg")) return null;
  const source = nameOf(path);
  const isFile = path !== undefined && path !== "-";
  const name = isFile ? source.replace(/^.*[\\/]/, "").replace(/\.json$/i, "") : (role ?? subcommand);
  const words = [
    "bondmil",
    subcommand,
    role,
    isFile ? shellWord(path) : path,
    options["as"] && `--as ${format}`,
  ];
  const line = [...words.filter(Boolean), "...".repeat(hasMore(options) ? 1 : 0), "> "]
    .filter(Boolean)
    .join(" ");
  const kind = format === "html" ? "a page is for a browser" : "a drawing is for a viewer";
  return failed(
    "usage",
    `${kind}, not for a terminal; send it to a file:\n  ${line}${shellWord(`${name}.${format}`)}\nTo read it here: bondmil ${subcommand} --help names other formats.`,
  );
}

function hasMore(options: Options): boolean {
  return Object.keys(options).some((name) => name !== "as");
}
