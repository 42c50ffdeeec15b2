import { readFileSync } from "node:fs";
import * as bondmil from "bondmil";
import { names, resultsWith } from "./results.mjs";

const texts = names.map((name) =>
  readFileSync(new URL(`installations/${name}.json`, import.meta.url), "utf8"),
);
console.log(resultsWith(bondmil, texts));
