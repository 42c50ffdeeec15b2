import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Options } from "tsup";

export const root = fileURLToPath(new URL("../../../", import.meta.url));

/** The command as it is packed. */
export interface Command {
  /** Path of what Node runs. */
  readonly main: string;
}

/** Builds the command as `npm run build` does, into a folder of its own. */
export async function buildCommand(folder: string): Promise<Command> {
  const { tsup } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    readonly tsup: readonly Options[];
  };
  const own = tsup.find(({ outDir }) => outDir === "dist/command");
  if (own === undefined) throw new Error("package.json does not say how the command is built");
  const outDir = join(folder, "dist/command");
  await build({ ...own, outDir, clean: false, silent: true, config: false });
  return { main: join(outDir, "main.js") };
}
