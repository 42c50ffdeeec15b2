import { buildSchedule, explain, reportAsHtml, reportAsMarkdown } from "bondmil";
import { describe, expect, it } from "vitest";
import { demo, demoNames, drawing, service } from "../installation/drawings.js";

const hostile = "<script>alert(1)</script> | [x](y)";
const attacked = drawing({
  title: hostile,
  services: [service({ electrodes: [{ id: hostile, kind: "rod", from: "D1" }] })],
});

function unescaped(text: string): string {
  return text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replace(/(?<!\\)`/g, "")
    .replace(/\\([\\|`*_[\]~#$])/g, "$1");
}

describe.each([
  ["HTML", reportAsHtml],
  ["Markdown", reportAsMarkdown],
])("the report as %s", (_, report) => {
  it.each(demoNames)("tells the fingerprint, every conductor and how it came about: %s", (name) => {
    const { conductors, cautions, fingerprint } = buildSchedule(demo(name));
    const text = unescaped(report(demo(name)));
    expect(text).toContain(fingerprint);
    for (const { id, result } of conductors) {
      expect(text).toContain(id);
      expect(text).toContain(explain(result));
    }
    for (const { at, section } of cautions) expect(text).toContain(`${section ?? at}`);
    expect(text).toContain("authority having jurisdiction decide");
  });

  it("says what was not sized and why", () => {
    const text = report(drawing({ services: [service({ electrodes: [] })] }));
    expect(text).toContain(
      "grounding electrode conductor of S1: the drawing does not give what sizes it; see 250.24",
    );
    expect(report(demo("shop"))).toContain("not required, the grounded conductor bonds this part");
  });

  it("names amendments and readings", () => {
    const year = "2023";
    const amended = drawing({
      code: {
        year,
        readings: { "electrode-connection-with-several-jumpers": "at-each-jumper" },
        amendments: [
          {
            kind: "floor",
            role: "main-bonding-jumper",
            copper: "1/0 AWG",
            citation: { jurisdiction: "Town & Co", section: "7.1" },
          },
        ],
      },
      services: [service()],
    });
    const text = unescaped(report(amended));
    expect(text).toContain("floor: Town & Co, 7.1");
    expect(text).toContain("electrode-connection-with-several-jumpers: at-each-jumper");
  });

  it("is the same each time, and escapes every name", () => {
    expect(report(attacked)).toBe(report(attacked));
    expect(report(attacked)).not.toContain("<script");
    expect(unescaped(report(attacked))).toContain(hostile);
  });
});

describe("the report as HTML", () => {
  it("loads nothing", () => {
    const html = reportAsHtml(demo("print-works")).replaceAll("http://www.w3.org/2000/svg", "");
    expect(html).not.toMatch(/https?:|url\(|@import|<link|<script|src=/);
  });

  it("has every id once and no link without its end", () => {
    const html = reportAsHtml(demo("print-works"));
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, end] of html.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(end);
  });
});
