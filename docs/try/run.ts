/** Builds the page to try: npm run site:try, or into another folder: npm run site:try -- FOLDER. */
import { fileURLToPath } from "node:url";
import { buildTryPage } from "./build.js";

const outDir = process.argv[2] ?? fileURLToPath(new URL("../site/try/", import.meta.url));
await buildTryPage(outDir);
console.log(`the page to try is in ${outDir}; serve that folder with any static server`);
