/** The same results from a page in Chromium: node chromium.mjs ROOT FOLDER. Exit code 3: there is no Chromium. */
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { join, normalize } from "node:path";
import { names } from "./results.mjs";

const [root, folder] = process.argv.slice(2);
const executablePath = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"].find(
  existsSync,
);
if (executablePath === undefined) process.exit(3);
const { chromium } = createRequire(join(root, "package.json"))("playwright-core");

const server = createServer((request, response) => {
  const { pathname } = new URL(request.url, "http://localhost");
  if (pathname === "/") return response.end("<!doctype html><title>results</title>");
  try {
    const text = readFileSync(join(folder, normalize(pathname)));
    response
      .setHeader("content-type", /\.m?js$/.test(pathname) ? "text/javascript" : "application/json")
      .end(text);
  } catch {
    response.writeHead(404).end();
  }
}).listen(0, "127.0.0.1");
await new Promise((done) => server.once("listening", done));
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
try {
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  const paths = ["/node_modules/bondmil/dist/index.js", "/results.mjs"];
  const results = await page.evaluate(
    async ({ all, modules }) => {
      const [bondmil, { resultsWith }] = await Promise.all(modules.map((path) => import(path)));
      const texts = await Promise.all(
        all.map(async (name) => (await fetch(`/installations/${name}.json`)).text()),
      );
      return resultsWith(bondmil, texts);
    },
    { all: names, modules: paths },
  );
  console.log(results);
} finally {
  await browser.close();
  server.close();
}
