import { axisX, barX, ruleX, text } from "@observablehq/plot";
import { colors, drawn } from "../../docs/pages/pictures/drawn.js";
import type { Picture } from "../../docs/pages/pictures/picture.js";

/** A bar of the picture. */
export interface Bar {
  readonly name: string;
  /** How many times the time of the baseline. */
  readonly ratio: number;
}

/** How many times the time of a sorted array each way takes, on a scale of tens. */
export function timesOfALookUp(bars: readonly Bar[]): Picture {
  const title = "How many times the time of a sorted array each way takes";
  const words = bars.map(({ name, ratio }) => `${name} ${written(ratio)}`).join(", ");
  const description = `Bars on a scale of tens, the median of several runs of one look-up against a sorted array that is written by hand: ${words}.`;
  return {
    name: "benchmarks",
    title,
    description,
    columns: ["way", "times the sorted array"],
    rows: bars.map(({ name, ratio }) => [name, ratio]),
    svg: drawn(title, description, {
      height: 60 + 34 * bars.length,
      marginLeft: 190,
      marginRight: 70,
      marginBottom: 45,
      x: { type: "log", label: "times the sorted array, written by hand" },
      y: { label: null, domain: bars.map(({ name }) => name) },
      marks: [
        axisX({ ticks: tens(bars), tickFormat: ",", labelOffset: 36 }),
        ruleX([1]),
        barX(bars, { x1: least(bars), x2: "ratio", y: "name", fill: colors.blue }),
        text(bars, {
          x: "ratio",
          y: "name",
          text: ({ ratio }: Bar) => written(ratio),
          dx: 6,
          textAnchor: "start",
          fill: "black",
          stroke: "white",
          strokeWidth: 4,
        }),
      ],
    }),
  };
}

/** The powers of ten through the longest bar. */
function tens(bars: readonly Bar[]): readonly number[] {
  const most = Math.max(...bars.map(({ ratio }) => ratio));
  return Array.from({ length: Math.floor(Math.log10(most)) + 2 }, (_, i) => 10 ** (i - 1));
}

function least(bars: readonly Bar[]): number {
  return Math.min(0.1, ...bars.map(({ ratio }) => ratio / 1.2));
}

function written(ratio: number): string {
  return ratio < 10 ? ratio.toFixed(1) : Math.round(ratio).toLocaleString("en-US");
}
