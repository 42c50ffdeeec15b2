import { wrapped } from "../report/render/text-table.js";
import { shownLetters } from "./shown-letters.js";

/** Breaks lines that are too long, and sets what follows in below them. A line for a shell stays whole, to be copied. */
export function fitted(text: string, width: number): string {
  return text
    .split("\n")
    .flatMap((line) => {
      if (shownLetters.widthOf(line) <= width || /^ +(?:bondmil|echo) /.test(line)) return [line];
      if (/^[=-]+$/.test(line)) return [line.slice(0, width)];
      const lead = /^ *(?:- )?/.exec(line)?.[0] ?? "";
      const below = " ".repeat(lead.length === 0 ? 2 : lead.length);
      const [first = "", ...rest] = wrapped(line.slice(lead.length), width - below.length, shownLetters);
      return [`${lead}${first}`, ...rest.map((one) => `${below}${one}`)];
    })
    .join("\n");
}
