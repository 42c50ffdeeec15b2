import { readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import { bundled } from "./bundled.js";
import { measuredRoom } from "./rooms.js";

const entries: Readonly<Record<string, string>> = {
  bondmil: "src",
  "bondmil/corpus": "corpus/tools",
  "bondmil/tables": "tables/tools",
};

const asInPlace: Plugin = {
  name: "as in place",
  setup(builder) {
    builder.onResolve({ filter: /^bondmil(\/corpus|\/tables)?$/ }, ({ path }) => ({
      path: join(process.cwd(), entries[path] ?? "", "index.ts"),
    }));
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
  entryPoints: [...measuredRoom().tests, "tests/setup.ts", "tests/mutation/setup.ts"],
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
