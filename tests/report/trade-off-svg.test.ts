import { supplyCandidates, tradeOffAsSvg } from "bondmil";
import { describe, expect, it } from "vitest";

const found = supplyCandidates({
  code: { year: "2023" },
  system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
  load: { continuous: 0, other: 1000 },
  conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
  place: { location: "wet" },
  limits: { mostSets: 4 },
  raceways: ["pvc-schedule-40"],
  bonding: { material: "copper" },
});

describe("the picture of candidates", () => {
  const svg = tradeOffAsSvg(found);
  const panels = svg.split("<g ").slice(1);
  const marks = (panel: string) => [...panel.matchAll(/<(?:circle|rect)[^>]*><title>([^<]*)<\/title>/g)];

  it("has every candidate in both panels, and those that no other beats filled", () => {
    expect(panels).toHaveLength(2);
    for (const panel of panels) {
      expect(marks(panel)).toHaveLength(found.candidates.length);
      const filled = marks(panel).filter(([mark]) => mark.includes('class="best"'));
      expect(filled).toHaveLength(found.candidates.filter(({ unbeaten }) => unbeaten).length);
      expect(filled.map(([, name]) => name)).toContain("4 x 250 kcmil copper, 4 x pvc-schedule-40 2-1/2");
    }
  });

  it("keeps its labels on the sheet", () => {
    const width = Number(/ width="(\d+)"/.exec(svg)?.[1]);
    const middles = [...svg.matchAll(/text-anchor="middle" x="([\d.]+)"[^>]*>([^<]*)</g)];
    expect(middles.map(([, , text]) => text)).toContain("100,000");
    // No letter of 12 px is wider than 8 px.
    for (const [, x, text = ""] of middles) expect(Number(x) + 4 * text.length).toBeLessThanOrEqual(width);
  });
});
