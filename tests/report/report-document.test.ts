import { type Installation, render, reportDocument, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { conductorWords } from "../../src/installation/conductor-words.js";
import { numbered } from "../../src/installation/numbered.js";
import { calculationOf } from "../../src/report/told/calculation.js";
import { cautionWords } from "../../src/report/words/caution-words.js";
import { demo, demoNames, installation, service } from "../installation/installations.js";

const hostile = "<script>alert(1)</script> | [x](y)";
const attacked = installation({
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

describe.each(["html", "markdown", "text"] as const)("the report as %s", (as) => {
  const report = (installation: Installation): string =>
    render(reportDocument(installation), { as, width: 10_000 });

  it.each(demoNames)("tells the fingerprint, every conductor and how it came about: %s", (name) => {
    const { conductors, cautions, fingerprint } = scheduleOf(demo(name));
    const text = unescaped(report(demo(name)));
    expect(text).toContain(fingerprint);
    for (const { conductor, mark } of numbered(conductors)) {
      const { result } = conductor;
      for (const { code } of result.cautions) expect(text).toContain(cautionWords[code]);
      if (result.outcome.kind === "not-required") {
        expect(text).toContain(`${mark} ${conductorWords(conductor)}`);
        continue;
      }
      expect(text).toContain(conductorWords(conductor));
      const { given, rule, result: comes } = calculationOf(result);
      for (const line of [given, rule, comes]) expect(text).toContain(line);
    }
    for (const { at, section } of cautions) expect(text).toContain(`${section ?? at}`);
    expect(text).toContain("authority having jurisdiction decide");
  });

  it("says what was not sized and why", () => {
    const text = report(installation({ services: [service({ electrodes: [] })] }));
    expect(text).toContain(
      "grounding electrode conductor of S1: the installation does not give what sizes it; see 250.24",
    );
    expect(report(demo("shop"))).toContain("the grounded conductor bonds this part");
  });

  it("names amendments and readings", () => {
    const year = "2023";
    const amended = installation({
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
    expect(text).toContain("minimum size: Town & Co, 7.1");
    expect(text).toContain('with several system bonding jumpers: read as "at each of them"');
  });

  it("is the same each time, and escapes every name", () => {
    expect(report(attacked)).toBe(report(attacked));
    if (as !== "text") expect(report(attacked)).not.toContain("<script");
    expect(unescaped(report(attacked))).toContain(hostile);
  });
});

describe("the parts of the report", () => {
  const { parts } = reportDocument(demo("print-works"));
  const headings = parts.flatMap((part) => (part.kind === "heading" ? [part.text] : []));

  it("follow one another from the schedule to the notes", () => {
    const inSome = ["Not permitted", "Not decided", "Open readings", "Not sized here"];
    expect(headings.filter((one) => !inSome.includes(one))).toEqual([
      "Schedule",
      "Drawing",
      "Calculations",
      "Not required",
      "Metal of the conductors whose length is given",
      "Cautions",
      "Evidence",
      "Abbreviations",
      "Notes",
    ]);
  });

  it("number what is required in order, and lead each number to its calculation", () => {
    const [schedule, sheets] = parts.flatMap((part) => (part.kind === "table" ? [part] : []));
    const lines = (schedule?.rows ?? []).filter((row) => row.length > 1);
    expect(lines.map(([number]) => number)).toEqual(lines.map((_, i) => `${i + 1}`));
    const marks = new Set(
      (sheets?.rows ?? []).map(([first]) => (typeof first === "object" ? first.mark : undefined)),
    );
    for (const [, name] of lines) expect(marks).toContain(typeof name === "object" ? name.to : "none");
  });

  it("say each caution once", () => {
    const at = parts.findIndex((part) => part.kind === "heading" && part.text === "Cautions");
    const list = parts[at + 1];
    const said = list?.kind === "list" ? list.items.map((one) => one.split(" At: ")[0]) : [];
    expect(said.length).toBeGreaterThan(3);
    expect(new Set(said).size).toBe(said.length);
  });
});
