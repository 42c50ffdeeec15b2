import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import type { Profiler } from "node:inspector/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { byRoom, type Shares } from "./profile.js";
import { type Timed, timed } from "./timed.js";

const folder = mkdtempSync(join(tmpdir(), "bondmil-bench-"));
process.on("exit", () => rmSync(folder, { recursive: true }));

/** A process that imports something and ends. */
export interface Import {
  readonly what: string;
  /** Kilobytes of code that it reads; the time is by the clock. */
  readonly read: number;
  readonly timed: Timed;
}

/** The first imports nothing. */
export const imports: readonly Import[] = [
  importOf("an empty script"),
  importOf("`bondmil/sizing`", "sizing.js"),
  importOf("`bondmil`", "index.js"),
];

/** Where the processor was in the process that imports all of it. */
export function profiledImport(): Shares {
  run(["--cpu-prof", "--cpu-prof-interval", "100", "--cpu-prof-dir", folder], programOf("index.js"));
  const [name] = readdirSync(folder).filter((file) => file.endsWith(".cpuprofile"));
  if (name === undefined) throw new Error("Node wrote no profile");
  return byRoom(JSON.parse(readFileSync(join(folder, name), "utf8")) as Profiler.Profile);
}

function importOf(what: string, entry?: string): Import {
  const program = programOf(entry);
  return {
    what,
    read: entry === undefined ? 0 : bytesOf(entry) / 1000,
    timed: timed(what, 15, () => run([], program)),
  };
}

function programOf(entry?: string): string {
  const program = join(folder, `${entry ?? "empty"}.mjs`);
  writeFileSync(program, entry === undefined ? "" : `import ${JSON.stringify(built(entry))};\n`);
  return program;
}

function run(options: readonly string[], program: string): void {
  const { status } = spawnSync(process.execPath, [...options, program], { stdio: "inherit" });
  if (status !== 0) throw new Error(`${program} ended with ${status}`);
}

/** Bytes of an entry and of what it imports. */
function bytesOf(entry: string): number {
  const text = readFileSync(built(entry), "utf8");
  const imported = [...text.matchAll(/^\} from "\.\/(.+)";$/gm)].map(([, name = ""]) => name);
  return statSync(built(entry)).size + [...new Set(imported)].reduce((sum, name) => sum + bytesOf(name), 0);
}

function built(name: string): string {
  return fileURLToPath(new URL(`../../dist/${name}`, import.meta.url));
}
