import { drawingAsSvg, drawingOf, InputError } from "bondmil";
import { describe, expect, it } from "vitest";
import { demo } from "../installation/installations.js";
import { hostileAndLong } from "./cases.js";

describe("the SVG of a picture", () => {
  it("is the same for the same drawing and loads nothing", () => {
    const svg = drawingAsSvg(drawingOf(demo("print-works")));
    expect(drawingAsSvg(drawingOf(demo("print-works")))).toBe(svg);
    expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|url\(|@import|href/);
  });

  it("escapes every name", () => {
    const svg = drawingAsSvg(drawingOf(hostileAndLong));
    expect(svg).not.toContain("<script");
    expect(svg).toContain("&lt;script&gt;");
  });

  it("tells the styles apart without color", () => {
    const svg = drawingAsSvg(drawingOf(demo("shop")));
    const styles = ["fault-path", "electrode-system", "equalizing", "load", "context", "bar", "bond"].map(
      (style) => svg.match(new RegExp(`\\.bondmil \\.${style}\\{([^}]*)\\}`))?.[1],
    );
    expect(new Set(styles).size).toBe(7);
    expect(styles).not.toContain(undefined);
  });

  it("has one key", () => {
    const svg = drawingAsSvg(drawingOf(demo("print-works")));
    expect(svg.split("fault current path").length).toBe(2);
  });

  it("lets one conductor stand out, on the sheets that show it", () => {
    const drawing = drawingOf(demo("print-works"));
    const highlight = "system-bonding-jumper LP2";
    const svg = drawingAsSvg(drawing, { highlight });
    expect(svg.split("<title").length - 1).toBe(
      drawing.sheets.filter(({ conductors }) => conductors.includes(highlight)).length,
    );
    expect(svg.match(/class="around"/g)).toHaveLength(1);
    const named = drawing.sheets.flatMap(({ labels }) => labels.filter((one) => one.conductor === highlight));
    expect(named.length).toBeGreaterThan(0);
    expect(svg.match(/class="label lit"/g)).toHaveLength(named.length);
    expect(drawingAsSvg(drawing)).not.toContain('class="around"');
    expect(() => drawingAsSvg(drawing, { highlight: 3 as never })).toThrow(InputError);
  });
});
