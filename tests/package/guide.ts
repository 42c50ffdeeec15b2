import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** A fence of a guide that is more than to be read: a file to be written, a line to be run, or what it then says. */
export interface Part {
  readonly kind: "file" | "run" | "output";
  /** The name of a file; nothing else has one. */
  readonly name: string;
  readonly text: string;
  /** One-based line of the opening fence. */
  readonly line: number;
}

const fence = /^```(\w+) ([\w.-]+)\n([\s\S]*?)^```$/gm;

/** The parts of a guide in their order: ```` ```js worker.mjs ````, ```` ```sh run ````, ```` ```text output ````. */
export function partsOf(markdown: string): readonly Part[] {
  return [...markdown.matchAll(fence)].map(({ 2: name = "", 3: text = "", index }) => ({
    kind: name === "run" || name === "output" ? name : "file",
    name: name === "run" || name === "output" ? "" : name,
    text,
    line: markdown.slice(0, index).split("\n").length,
  }));
}

/** Does in a folder what a guide does, part by part, and says what went otherwise. */
export function follow(
  path: string,
  folder: string,
  env: Readonly<Record<string, string | undefined>>,
): readonly string[] {
  const faults: string[] = [];
  let said = "";
  for (const { kind, name, text, line } of partsOf(readFileSync(path, "utf8"))) {
    if (kind === "file") writeFileSync(join(folder, name), text);
    if (kind === "output" && text !== said) faults.push(`line ${line}: it says\n${said}instead of\n${text}`);
    if (kind !== "run") continue;
    const { status, stdout, stderr } = spawnSync("bash", ["-euo", "pipefail", "-c", text], {
      cwd: folder,
      env: { ...env, PATH: `${join(folder, "node_modules", ".bin")}:${process.env.PATH}` },
      encoding: "utf8",
    });
    said = stdout;
    if (status !== 0) faults.push(`line ${line}: exit code ${status}\n${stdout}${stderr}`);
  }
  return faults;
}
