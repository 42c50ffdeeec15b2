import { type Installation, render, reportDocument, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { conductorName } from "../../src/installation/conductor-names.js";
import { tellSizing } from "../../src/report/told/sizing.js";
import { sentencesOf } from "../../src/report/told/told.js";
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
    for (const one of conductors) {
      expect(text).toContain(conductorName(one));
      expect(text).toContain(sentencesOf(tellSizing(one.result)));
      for (const { code } of one.result.cautions) expect(text).toContain(`Caution: ${cautionWords[code]}`);
    }
    for (const { at, section } of cautions) expect(text).toContain(`${section ?? at}`);
    expect(text).toContain("authority having jurisdiction decide");
  });

  it("says what was not sized and why", () => {
    const text = report(installation({ services: [service({ electrodes: [] })] }));
    expect(text).toContain(
      "grounding electrode conductor of S1: the installation does not give what sizes it; see 250.24",
    );
    expect(report(demo("shop"))).toContain("not required, the grounded conductor bonds this part");
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
