/** This library behind a pipe: one JSON question a line on standard input, one JSON answer a line on standard output. */
import { createInterface } from "node:readline";
import { library } from "../runner/library.js";
import { answerLine } from "./answer-lines.js";

for await (const line of createInterface({ input: process.stdin })) {
  if (line.trim() !== "") process.stdout.write(`${answerLine(line, library)}\n`);
}
