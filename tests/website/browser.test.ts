import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { browserFaults } from "../../docs/website/check/browser.js";
import { need } from "../needs.js";
import { folderWith } from "./folder.js";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const browserThere = need(
  executablePath,
  existsSync(executablePath),
  "install chromium or set CHROMIUM to its path",
);

const page = (body: string): string =>
  `<!doctype html><html lang="en"><head><title>t</title><meta name="viewport" content="width=device-width"><meta name="color-scheme" content="light dark"></head><body><main><h1>t</h1>${body}</main></body></html>`;

describe.skipIf(browserThere.isMissing)(`the check in Chromium${browserThere.because}`, () => {
  it("sees what only a browser sees", async () => {
    const site = folderWith({
      "good.html": page("<p>Plain.</p>"),
      "wide.html": page('<div style="width: 700px">wide</div>'),
      "blind.html": page('<img src="data:image/gif;base64,R0lGODlhAQABAAAAACw=">'),
      "dark.html": page(
        "<style>p { color: #333; background: #fff } @media (prefers-color-scheme: dark) { p { background: #222 } }</style><p>Text.</p>",
      ),
      "broken.html": page("<script>missing()</script>"),
      "loads.html": page('<img alt="x" src="http://127.0.0.1:9/x.png">'),
    });
    const pages = ["good.html", "wide.html", "blind.html", "dark.html", "broken.html", "loads.html"];
    const faults = await browserFaults(executablePath, site, pages);
    expect(faults.filter((fault) => fault.startsWith("good"))).toEqual([]);
    for (const expected of [
      /^wide\.html is \d+ pixels wide at 360$/,
      /^blind\.html: image-alt/,
      /^dark\.html, dark: color-contrast/,
      /^broken\.html: missing is not defined/,
      /^loads\.html loads http:\/\/127\.0\.0\.1:9\/x\.png/,
    ])
      expect(faults).toContainEqual(expect.stringMatching(expected));
  });
});
