import { posix } from "node:path";
import type { EntryPoint } from "./entries.js";

/** What each folder of the reference holds, and whether an import of it is one of types. */
const kinds: Readonly<Record<string, { readonly says: string; readonly isType: boolean }>> = {
  classes: { says: "class", isType: false },
  functions: { says: "function", isType: false },
  variables: { says: "constant", isType: false },
  interfaces: { says: "type", isType: true },
  "type-aliases": { says: "type", isType: true },
};

/** The Markdown of a name of the reference, with its kind and the line that imports it below its title. `path` is below the folder of the reference. */
export function withImport(path: string, text: string, entries: readonly EntryPoint[]): string {
  const folder = posix.basename(posix.dirname(path));
  const module = posix.dirname(posix.dirname(path));
  const kind = kinds[folder];
  if (kind === undefined) return text;
  const name = posix.basename(path, ".md");
  const entry = entries.find((one) => one.name === module);
  const said =
    entry === undefined
      ? "A type that exported types are made of; no import path exports it."
      : `A ${kind.says} of \`${entry.name}\`.\n\n\`\`\`ts\nimport ${kind.isType ? "type " : ""}{ ${name} } from "${entry.name}";\n\`\`\``;
  return text.replace(/^# .*$/m, (title) => `${title}\n\n${said}`);
}
