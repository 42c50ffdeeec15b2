import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build, type Options } from "tsup";
import { firstAnswer } from "./first-answer.js";

const here = fileURLToPath(new URL("./", import.meta.url));
const root = fileURLToPath(new URL("../../", import.meta.url));

/** How the package's own browser build is made, as package.json has it. */
function browserBuild(): Options {
  const { tsup } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    readonly tsup: readonly Options[];
  };
  const found = tsup.find(({ entry }) => typeof entry === "object" && "browser" in entry);
  if (found === undefined) throw new Error("package.json has no browser build");
  return found;
}

const alike: Options = { config: false, clean: false, silent: true };

/**
 * Most functions run before the first answer, so a browser that knows this comment compiles them while it loads the file and not one by one
 * when they are called. For others it is a comment.
 */
const compiledOnLoad = { js: "//# allFunctionsCalledOnLoad" };

/**
 * Builds the library for browsers, as the package's entry `bondmil/browser` holds it.
 *
 * @param outDir - the folder to write in
 * @param name - name of the file without its ending
 * @param more - what else its build is to do
 */
export async function buildBrowserEntry(outDir: string, name = "browser", more: Options = {}): Promise<void> {
  await build({
    ...browserBuild(),
    ...alike,
    ...more,
    entry: { [name]: join(root, "src/index.ts") },
    outDir,
  });
}

/** The page imports the library as a file beside it, so that it runs what the package ships. */
const libraryBeside: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "library-beside",
  setup({ onResolve }) {
    onResolve({ filter: /^bondmil$/ }, () => ({ path: "./bondmil.js", external: true }));
  },
};

const copied = ["try.css", "icon.svg", "carried.js"] as const;

/**
 * Builds the page to try into a folder that any static host can serve.
 *
 * @param outDir - the folder to write in; it is made where it is missing
 */
export async function buildTryPage(outDir: string): Promise<void> {
  mkdirSync(outDir, { recursive: true });
  await buildBrowserEntry(outDir, "bondmil", { banner: compiledOnLoad });
  await build({
    ...alike,
    entry: { try: join(here, "main.ts") },
    outDir,
    format: ["esm"],
    platform: "browser",
    target: "es2022",
    minify: true,
    banner: compiledOnLoad,
    noExternal: [/^preact/],
    esbuildPlugins: [libraryBeside],
  });
  for (const name of copied) copyFileSync(join(here, name), join(outDir, name));
  writeFileSync(join(outDir, "drawing.css"), await drawingStyles(outDir));
  const index = readFileSync(join(here, "index.html"), "utf8");
  const first = await firstAnswer(outDir, index);
  writeFileSync(
    join(outDir, "index.html"),
    index.replace(place, () => `${place}${first}`),
  );
  const files = [...copied, "index.html", "drawing.css", "bondmil.js", "try.js"];
  writeFileSync(join(outDir, "offline.js"), offlineWorker(outDir, files));
}

/** Where the content of the page stands. */
const place = '<div id="page" class="built">';

/** The styles that a drawing carries; a page that forbids styles in its own text loads them as a file. */
async function drawingStyles(outDir: string): Promise<string> {
  const { href } = pathToFileURL(join(outDir, "bondmil.js"));
  const { drawingAsSvg } = (await import(href)) as typeof import("bondmil");
  const [, styles] = /<style>([\s\S]*?)<\/style>/.exec(drawingAsSvg({ title: "", sheets: [] })) ?? [];
  if (styles === undefined) throw new Error("a drawing has no styles");
  return `${styles}\n`;
}

/** The service worker with the names of the files and a name for this build, by their content. */
function offlineWorker(outDir: string, files: readonly string[]): string {
  const hash = createHash("sha256");
  for (const name of files) hash.update(readFileSync(join(outDir, name)));
  const kept = JSON.stringify(["./", ...files]);
  const name = JSON.stringify(`bondmil-try-${hash.digest("hex").slice(0, 16)}`);
  return `const files = ${kept};\nconst name = ${name};\n${readFileSync(join(here, "offline.js"), "utf8")}`;
}
