import { readFileSync } from "node:fs";
import { type Installation, readInstallation } from "bondmil";
import type { Corpus } from "../../../corpus/tools/runner/model.js";
import { byEdition } from "./by-edition.js";
import { deviceSteps } from "./device-steps.js";
import { editionStrip } from "./edition-strip.js";
import { publishedErrors } from "./errors.js";
import { evidenceMap } from "./evidence.js";
import type { Picture } from "./picture.js";
import { racewayMetal } from "./raceway-metal.js";
import { staircases } from "./staircases.js";
import { withstandOfLeast } from "./withstand.js";

/** Every picture but that of the atlas, which is made with its page. */
export function pictures(corpus: Corpus): readonly Picture[] {
  return [
    staircases(),
    byEdition(),
    deviceSteps(),
    racewayMetal(),
    withstandOfLeast(),
    evidenceMap(),
    editionStrip("print-works", installation("print-works")),
    publishedErrors(corpus),
  ];
}

function installation(name: string): Installation {
  return readInstallation(readFileSync(new URL(`../../installations/${name}.json`, import.meta.url), "utf8"));
}
