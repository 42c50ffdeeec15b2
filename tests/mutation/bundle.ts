import { readFile } from "node:fs/promises";
import { dirname } from "node:path";
import { pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import { bundled } from "./bundled.js";
import { measuredTests } from "./rooms.js";

const asInPlace: Plugin = {
  name: "as in place",
  setup(builder) {
    // A module that reads a file beside it has to find it from where it lay.
    builder.onLoad({ filter: /\.ts$/ }, async ({ path }) => {
      if (path.includes("node_modules")) return undefined;
      const own = { url: pathToFileURL(path).href, dirname: dirname(path), filename: path };
      const text = await readFile(path, "utf8");
      const contents = text.replaceAll(
        /\bimport\.meta\.(url|dirname|filename)\b/g,
        (_, member: keyof typeof own) => JSON.stringify(own[member]),
      );
      return { loader: "ts", contents };
    });
  },
};

await build({
  entryPoints: [...measuredTests(), "tests/setup.ts", "tests/mutation/setup.ts"],
  outdir: bundled,
  outbase: ".",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  packages: "external",
  logLevel: "error",
  plugins: [asInPlace],
});
