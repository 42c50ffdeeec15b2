import type { Outlet, Surroundings } from "./surroundings.js";

const usualWidth = 80;
const narrowest = 40;

/** Letters in a line of text for reading; nothing where it is not read on a terminal. */
export function readingWidth({ isTerminal, columns }: Outlet): number | undefined {
  return isTerminal ? Math.max(narrowest, columns || usualWidth) : undefined;
}

/** Whether an outlet is to be colored: terminals only, and never against NO_COLOR. */
export function isColored(
  { isTerminal }: Outlet,
  { environment }: Pick<Surroundings, "environment">,
): boolean {
  const { NO_COLOR, TERM } = environment;
  return isTerminal && (NO_COLOR === undefined || NO_COLOR === "") && TERM !== "dumb";
}

/** Shows characters that a terminal would obey instead of printing. */
export function printable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  return text.replace(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, (one) => {
    return `\\u${(one.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
  });
}

const bold = "1";
const red = "31";
const yellow = "33";
const green = "32";

const colors: readonly (readonly [pattern: RegExp, color: string])[] = [
  [/^(?:SHORT|TOO FEW|MISSING|WRONG MATERIAL|WRONG PLACE|NOT PERMITTED|CANNOT SERVE)(?=: )/, red],
  [/^(?:NOT IN THE SCHEDULE|OPEN)(?=: )/, yellow],
  [/^No findings(?=\. )/, green],
];

/** Headings bold and findings colored; nothing is said by color alone. */
export function colored(text: string): string {
  const lines = text.split("\n");
  return lines
    .map((line, i) => {
      if (/^(?:=+|-+)$/.test(lines[i + 1] ?? "")) return paint(line, bold);
      const [pattern, color] = colors.find(([one]) => one.test(line)) ?? [];
      return pattern && color ? line.replace(pattern, (word) => paint(word, color)) : line;
    })
    .join("\n");
}

/** The first word of an error line. */
export function alarm(text: string): string {
  return paint(text, red);
}

function paint(text: string, color: string): string {
  return `\u001b[${color}m${text}\u001b[0m`;
}
