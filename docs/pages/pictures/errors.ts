import { axisX, barX, ruleX, text } from "@observablehq/plot";
import type { Corpus } from "../../../corpus/tools/runner/model.js";
import { inWords } from "../in-words.js";
import { type Direction, directionOf, tallyOf } from "../published-errors/tally.js";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

interface Bar {
  readonly mistake: string;
  readonly direction: Direction;
  readonly count: number;
}

const fill: Readonly<Record<Direction, string>> = {
  smaller: colors.orange,
  larger: colors.blue,
  other: colors.gray,
};

/** Published answers that contradict the code, by mistake and by the side on which they err. */
export function publishedErrors(corpus: Corpus): Picture {
  const { errors, answers } = tallyOf(corpus);
  const mistakes = [...new Set(errors.map(({ mistake }) => mistake))];
  const bars = mistakes.flatMap((mistake) =>
    (["smaller", "larger", "other"] as const).map((direction): Bar => {
      const count = errors.filter((one) => one.mistake === mistake && directionOf(one) === direction).length;
      return { mistake: inWords(mistake), direction, count };
    }),
  );
  const totalOf = (name: string): number =>
    bars.filter(({ mistake }) => mistake === name).reduce((sum, { count }) => sum + count, 0);
  const domain = mistakes.map(inWords).sort((a, b) => totalOf(b) - totalOf(a) || a.localeCompare(b, "en"));
  const sideOf = (direction: Direction): number =>
    bars.filter((one) => one.direction === direction).reduce((sum, { count }) => sum + count, 0);
  const title = `Published answers that contradict the code: ${errors.length} of ${answers.length}, by mistake`;
  const description = `Bars to the left are answers smaller than the code requires, ${sideOf("smaller")} in all: the dangerous side. Bars to the right are larger ones, ${sideOf("larger")}, and answers that are wrong in another way than size, ${sideOf("other")}. The commonest mistakes are ${domain.slice(0, 3).join(", ")}.`;
  const longest = Math.max(...domain.map(totalOf));
  return {
    name: "published-errors-by-mistake",
    title,
    description,
    columns: ["mistake", "direction", "answers"],
    rows: bars.filter(({ count }) => count > 0).map((one) => [one.mistake, one.direction, one.count]),
    svg: drawn(title, description, {
      height: 60 + 22 * domain.length,
      marginLeft: 250,
      marginTop: 40,
      x: { domain: [-longest, longest], label: null },
      y: { label: null, domain },
      marks: [
        axisX({ anchor: "top", tickFormat: (count: number) => `${Math.abs(count)}` }),
        barX(bars, {
          y: "mistake",
          x: ({ direction, count }: Bar) => (direction === "smaller" ? -count : count),
          fill: ({ direction }: Bar) => fill[direction],
        }),
        ruleX([0]),
        text(
          [
            ["\u2190 smaller than required", -1],
            ["larger, or not a matter of size (gray) \u2192", 1],
          ] as const,
          {
            frameAnchor: "top",
            x: ([, side]: readonly [string, number]) => (side * longest) / 2,
            text: ([words]: readonly [string, number]) => words,
            dy: -32,
          },
        ),
      ],
    }),
  };
}
