const { readFileSync } = require("node:fs");
const { join } = require("node:path");
const bondmil = require("bondmil");

import("./results.mjs").then(({ names, resultsWith }) => {
  const texts = names.map((name) => readFileSync(join(__dirname, "installations", `${name}.json`), "utf8"));
  console.log(resultsWith(bondmil, texts));
});
