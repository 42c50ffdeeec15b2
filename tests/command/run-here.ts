import { createReadStream } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { run } from "../../src/command/run.js";
import type { Surroundings } from "../../src/command/surroundings.js";

export const root = fileURLToPath(new URL("../../", import.meta.url));

/** What a run of the command left behind. */
export interface Ran {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

/** A world outside for one run. */
export interface World {
  readonly input?: string | readonly Uint8Array[] | AsyncIterable<Uint8Array>;
  readonly inputIsTerminal?: boolean;
  /** Letters in a line of a terminal; no terminal without. */
  readonly columns?: number;
  /** Those of a terminal that shows standard error only. */
  readonly errorColumns?: number;
  readonly environment?: Surroundings["environment"];
  /** Files that were created, by their paths. */
  readonly created?: Map<string, string>;
  readonly open?: Surroundings["open"];
  readonly create?: Surroundings["create"];
  /** What hinders a write to standard output, or to standard error. */
  readonly hinders?: (to: "output" | "errors", text: string) => NodeJS.ErrnoException | undefined;
}

/** Runs the command in this process. */
export async function runHere(words: readonly string[], world: World = {}): Promise<Ran> {
  const { input = "", inputIsTerminal = false, columns, environment = {} } = world;
  const written = { output: "", errors: "" };
  const outlet = (to: keyof typeof written, letters: number | undefined) => ({
    write: async (text: string) => {
      const error = world.hinders?.(to, text);
      if (error !== undefined) throw error;
      written[to] += text;
    },
    isTerminal: letters !== undefined,
    columns: letters,
  });
  let time = 0;
  const code = await run(
    words,
    {
      input: bytesOf(input),
      inputIsTerminal,
      output: outlet("output", columns),
      errors: outlet("errors", world.errorColumns ?? columns),
      open: world.open ?? ((path) => createReadStream(join(root, path))),
      create:
        world.create ??
        (async (path, text) => {
          if (world.created?.has(path) !== false) throw Object.assign(new Error(path), { code: "EEXIST" });
          world.created.set(path, text);
        }),
      home: "node_modules/bondmil",
      schemaFor: () => "node_modules/bondmil/docs/schema/installation.schema.json",
      environment,
      now: () => {
        time += 100;
        return time;
      },
    },
    "1.2.3",
  );
  return { code, ...written };
}

async function* bytesOf(input: NonNullable<World["input"]>): AsyncGenerator<Uint8Array> {
  if (typeof input === "string") yield Buffer.from(input);
  else yield* input;
}
