import { type PlotOptions, plot } from "@observablehq/plot";
import { JSDOM } from "jsdom";

const { document } = new JSDOM("").window;

/**
 * Four colors of Okabe and Ito, which people with any of the common color deficiencies tell apart and which differ in gray; each line and bar
 * carries its name or its own dashes beside.
 */
export const colors = { blue: "#0072b2", orange: "#d55e00", green: "#009e73", gray: "#595959" } as const;

/** Draws a plot on white as an SVG document that names itself. */
export function drawn(title: string, description: string, options: PlotOptions): string {
  const element = plot({
    document,
    className: "plot",
    marginLeft: 60,
    style: { background: "white", color: "black", fontSize: "12px", fontFamily: "system-ui, sans-serif" },
    ...options,
    width: options.width ?? 860,
  });
  const svg = element.tagName.toLowerCase() === "svg" ? element : element.querySelector("svg");
  if (svg === null) throw new Error(`${title}: the plot has no picture`);
  svg.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  svg.setAttribute("role", "img");
  svg.prepend(named("title", title), named("desc", description));
  return `${svg.outerHTML.replace(/(<(?:title|desc|g|path|text|style)[ >])/g, "\n$1")}\n`;
}

function named(tag: "title" | "desc", text: string): Element {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  element.textContent = text;
  return element;
}
