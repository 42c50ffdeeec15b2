import { conductorName, drawingAsSvg, drawingOf, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/drawing/drawing.js";
import { demo, demoNames, derived, installation, service } from "../installation/installations.js";
import { crossed, overlapping } from "./overlaps.js";

const hostile = "<script>alert(\"x\")</script> & 'quoted'";
const long =
  "an id of one hundred and more letters that goes on and on, withoutanyspaceatallforaverylongtime W".repeat(
    2,
  );

const installations = {
  ...Object.fromEntries(demoNames.map((name) => [name, demo(name)])),
  "hostile and long names": installation({
    services: [
      service({
        id: hostile,
        runs: [
          {
            id: long,
            from: "U1",
            to: "D1",
            supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] },
            raceways: { count: 1, kind: "nonmetallic" },
          },
        ],
        electrodes: [
          { id: `${hostile} rod`, kind: "rod", from: "D1", ferrousRaceway: true },
          { id: "MMMMWWWW@@@@MMMMWWWW", kind: "ring", ringConductor: "2 AWG", from: `${hostile} rod` },
        ],
      }),
    ],
  }),
  "boxes without supply conductors": installation({
    services: [
      service({
        boxesWithoutSupply: [
          { id: "CT meter", kind: "meter", beside: "D1", bondedBy: "equipment-grounding-conductor" },
          { id: "CT gutter", kind: "gutter", beside: "D1", bondedBy: "metal-raceway" },
        ],
      }),
    ],
  }),
  impedance: installation({
    derivedSystems: [
      derived({ grounding: "impedance", impedance: { amperes: 10, electrodeConductorAt: "impedance" } }),
    ],
  }),
};

const cases = Object.entries(installations);

describe("the picture of a drawing", () => {
  it.each(cases)("keeps labels apart: %s", (_, one) => {
    for (const sheet of drawingOf(one).sheets) {
      expect(overlapping(sheet)).toEqual([]);
      expect(crossed(sheet)).toEqual([]);
    }
  });

  it.each(cases)("shows every conductor of the schedule with its name and size: %s", (_, one) => {
    const { conductors } = scheduleOf(one);
    const { sheets } = drawingOf(one);
    const labels = sheets.flatMap((sheet) => sheet.labels);
    const lines = sheets.flatMap((sheet) => sheet.lines);
    for (const conductor of conductors) {
      const { id, quantity, result } = conductor;
      const label = labels.find((one) => one.conductor === id);
      const text = label?.lines.join("").replace(/\s/g, "") ?? "";
      expect(text).toContain(conductorName(conductor).replace(/\s/g, ""));
      const { outcome } = result;
      if (outcome.kind === "conductor")
        expect(text).toContain(`${quantity}x${outcome.size.replace(/\s/g, "")}`);
      const drawn = lines.filter((one) => one.conductor === id);
      expect(drawn.length > 0).toBe(outcome.kind !== "not-required");
      for (const { style } of drawn) expect(style).toBe(result.purpose);
    }
  });

  it.each(cases)("names in words what it shows: %s", (_, one) => {
    const words = drawingOf(one)
      .sheets.map(({ description }) => description)
      .join(" ");
    for (const conductor of scheduleOf(one).conductors) expect(words).toContain(conductorName(conductor));
  });

  it("stays within its sheet", () => {
    for (const { width, height, boxes, labels } of drawingOf(demo("print-works")).sheets) {
      for (const one of [...boxes, ...labels]) {
        expect(one.x >= 0 && one.y >= 0 && one.x + one.width <= width && one.y + one.height <= height).toBe(
          true,
        );
      }
    }
  });

  it("says what a box without supply conductors is", () => {
    const [sheet] = drawingOf(installations["boxes without supply conductors"]).sheets;
    const texts = sheet?.labels.map(({ lines }) => lines.join(" ")) ?? [];
    for (const said of ["CT meter meter without supply", "CT gutter gutter without supply"])
      expect(texts.filter((text) => text.includes(said))).toHaveLength(1);
  });

  it("draws every place of a tapped service once", () => {
    const [sheet] = drawingOf(demo("cold-store")).sheets;
    expect(sheet?.boxes.every(({ kind }) => kind === "place")).toBe(true);
  });
});

describe("the SVG of a picture", () => {
  it("is the same for the same drawing and loads nothing", () => {
    const svg = drawingAsSvg(drawingOf(demo("print-works")));
    expect(drawingAsSvg(drawingOf(demo("print-works")))).toBe(svg);
    expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|url\(|@import|href/);
  });

  it("escapes every name", () => {
    const svg = drawingAsSvg(drawingOf(installations["hostile and long names"]));
    expect(svg).not.toContain("<script");
    expect(svg).toContain("&lt;script&gt;");
  });

  it("tells the styles apart without color", () => {
    const svg = drawingAsSvg(drawingOf(demo("shop")));
    const styles = ["fault-path", "electrode-system", "equalizing", "load", "context"].map(
      (style) => svg.match(new RegExp(`\\.bondmil \\.${style}\\{([^}]*)\\}`))?.[1],
    );
    expect(new Set(styles).size).toBe(5);
    expect(styles).not.toContain(undefined);
  });
});

describe("the checks of overlaps themselves", () => {
  it("see each fault", () => {
    const label = { x: 0, y: 0, width: 10, height: 10, strong: 0 };
    const sheet: Sheet = {
      title: "t",
      description: "d",
      width: 20,
      height: 20,
      boxes: [],
      symbols: [],
      labels: [
        { ...label, lines: ["a"] },
        { ...label, x: 9, y: 9, lines: ["b"] },
      ],
      lines: [
        {
          style: "context",
          points: [
            { x: 5, y: -5 },
            { x: 5, y: 5 },
          ],
        },
      ],
    };
    expect(overlapping(sheet)).toEqual(["a / b"]);
    expect(crossed(sheet)).toEqual(["a"]);
  });
});
