import { join } from "node:path";
import { build } from "esbuild";
import { JSDOM } from "jsdom";

/** Said until the script of the page has answered; it stays where that does not run. */
const waiting =
  "An invented row of shops, sized when this page was built. If this line stays, scripts are off, or the page was opened as a file.";

/**
 * What the built page shows first, as HTML: its own script draws it without a browser, so that it can stand in the page before that script
 * runs there.
 *
 * @param outDir - the folder with the built `try.js` and `bondmil.js`
 * @param index - the page, with an empty place for it
 */
export async function firstAnswer(outDir: string, index: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(outDir, "try.js")],
    bundle: true,
    format: "iife",
    write: false,
    logLevel: "error",
  });
  const { window } = new JSDOM(index, { runScripts: "outside-only", pretendToBeVisual: true });
  window.eval(outputFiles[0]?.text ?? "");
  // The first drawing is there with the page; whatever follows it takes a frame at least.
  await new Promise((done) => setImmediate(done));
  const place = window.document.getElementById("page");
  const status = place?.querySelector("[role=status]");
  if (!place?.querySelector("#report svg") || !status)
    throw new Error("the page has no first answer to be kept");
  status.textContent = waiting;
  status.className = "is-built";
  const html = place.innerHTML;
  window.close();
  return html;
}
