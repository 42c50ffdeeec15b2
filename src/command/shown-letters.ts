import stringWidth from "string-width";
import type { Letters } from "../report/render/letters.js";
import { printable } from "./terminal.js";

/** Letters as a terminal shows them: those of Chinese, Japanese and Korean and emoji take two columns, marks upon others none. */
export const shownLetters: Letters = {
  of: (text) => Array.from(segmenter.segment(text), ({ segment }) => segment),
  widthOf: (text) => stringWidth(printable(text)),
};

const segmenter = new Intl.Segmenter();
