import { barX, plot, ruleX, text } from "@observablehq/plot";
import { parseHTML } from "linkedom";

/** A bar of the picture. */
export interface Bar {
  readonly name: string;
  /** How many times the time of the baseline. */
  readonly ratio: number;
}

/** Bars on a scale of tens as an SVG that stands alone, with what it shows in words for who does not see it. */
export function pictureOf(bars: readonly Bar[], title: string): string {
  const { document } = parseHTML("<!doctype html><html><body></body></html>");
  const drawn = plot({
    document,
    width: 760,
    height: 60 + 34 * bars.length,
    marginLeft: 190,
    marginRight: 70,
    style: { background: "white", color: "black", fontSize: "13px" },
    x: { type: "log", label: "times the sorted array, written by hand", tickFormat: "~s" },
    y: { label: null, domain: bars.map(({ name }) => name) },
    marks: [
      barX(bars, { x1: least(bars), x2: "ratio", y: "name", fill: "#3b5b92" }),
      text(bars, {
        x: "ratio",
        y: "name",
        text: ({ ratio }: Bar) => written(ratio),
        dx: 6,
        textAnchor: "start",
      }),
      ruleX([1]),
    ],
  });
  const words = bars.map(({ name, ratio }) => `${name} ${written(ratio)}`).join(", ");
  drawn.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  drawn.setAttribute("role", "img");
  drawn.setAttribute("aria-label", `${title}: ${words}.`);
  return `${drawn.outerHTML.replace(/<svg([^>]*)>/, (all: string) => `${all}<title>${title}</title><desc>${words}.</desc>`)}\n`;
}

function least(bars: readonly Bar[]): number {
  return Math.min(0.1, ...bars.map(({ ratio }) => ratio / 1.2));
}

function written(ratio: number): string {
  return ratio < 10 ? ratio.toFixed(1) : Math.round(ratio).toLocaleString("en-US");
}
