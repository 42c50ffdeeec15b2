import { drawingOf, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/drawing/drawing.js";
import { labelOf } from "../../src/drawing/write.js";
import { numbered } from "../../src/installation/numbered.js";
import { demo, derived, installation, service } from "../installation/installations.js";
import { cases, ends, installations, lineOf, shop, whole } from "./cases.js";
import { crossed, isOn, lyingOn, outside, overlapping, segmentsOf, traced } from "./geometry.js";

describe("the picture of a drawing", () => {
  it.each(cases)("keeps labels and lines apart: %s", (_, one) => {
    for (const sheet of drawingOf(one).sheets) {
      expect(overlapping(sheet)).toEqual([]);
      expect(crossed(sheet)).toEqual([]);
      expect(lyingOn(sheet)).toEqual([]);
      expect(outside(sheet)).toEqual([]);
      expect(sheet.width).toBeLessThanOrEqual(900);
    }
  });

  it.each(cases)("labels every conductor of the schedule as the trade does: %s", (_, one) => {
    const labels = drawingOf(one).sheets.flatMap((sheet) => sheet.labels);
    for (const { mark, conductor } of numbered(scheduleOf(one).conductors)) {
      const texts = labels.flatMap((label) =>
        label.conductor === conductor.id ? [label.lines.join("")] : [],
      );
      const wanted = labelOf({ mark, conductor }).replace(/\s/g, "");
      expect(texts.map((text) => text.replace(/\s/g, ""))).toContain(wanted);
    }
  });

  it("writes a label with size, material, abbreviation and number", () => {
    const [first] = scheduleOf(demo("shop")).conductors;
    expect(first && labelOf({ mark: 1, conductor: first })).toBe("4 AWG Cu MBJ (1)");
  });

  it.each(cases)("lists the path in words: %s", (_, one) => {
    const items = drawingOf(one).sheets.flatMap(({ description }) => description);
    for (const { mark, conductor } of numbered(scheduleOf(one).conductors)) {
      expect(items.some((item) => item.includes(labelOf({ mark, conductor })))).toBe(true);
    }
  });
});

describe("the rest of a picture", () => {
  it("shows electrodes below a ground line, and the conductor from the bar to each", () => {
    const [ground] = shop?.grounds ?? [];
    for (const electrode of ["water pipe", "rod 1"]) {
      const [start, end] = ends(lineOf(shop, `grounding-electrode-conductor ${electrode}`));
      expect(end.y).toBe(ground?.y);
      const bars = shop?.lines.filter(({ style }) => style === "bar") ?? [];
      expect(bars.some(({ points }) => segmentsOf(points).some((one) => isOn(start, one)))).toBe(true);
    }
    expect(shop?.symbols.filter(({ y }) => y === ground?.y).map(({ kind }) => kind)).toEqual([
      "rod",
      "rod",
      "water-pipe",
    ]);
  });

  it.each(cases)(
    "hops wherever two lines cross, and has a dot wherever one ends on another: %s",
    (_, one) => {
      for (const { lines, joints } of whole(one)) {
        const parts = lines.flatMap(({ points }, line) =>
          segmentsOf(points).map((part) => ({ ...part, line })),
        );
        for (const across of parts.filter(({ a, b }) => a.y === b.y)) {
          for (const down of parts.filter(({ a, b }) => a.x === b.x)) {
            const [left, right] = [Math.min(across.a.x, across.b.x), Math.max(across.a.x, across.b.x)];
            const [top, bottom] = [Math.min(down.a.y, down.b.y), Math.max(down.a.y, down.b.y)];
            const { x } = down.a;
            const { y } = across.a;
            if (across.line === down.line || x < left || x > right || y < top || y > bottom) continue;
            const isCrossing = x > left && x < right && y > top && y < bottom;
            const hops = lines[across.line]?.hops?.some((hop) => hop.x === x && hop.y === y) === true;
            expect(hops).toBe(isCrossing);
            const isEndOnLine = !isCrossing && (left < x && x < right ? true : top < y && y < bottom);
            const isEnd = [lines[across.line], lines[down.line]].some((line) =>
              line === undefined ? false : ends(line).some((end) => end.x === x && end.y === y),
            );
            if (isEndOnLine && isEnd) expect(joints.some((dot) => dot.x === x && dot.y === y)).toBe(true);
          }
        }
      }
    },
  );

  it("draws windings with their connection, and a lead to the grounded conductor only where there is one", () => {
    const kinds = (given: Parameters<typeof derived>[0]) => {
      const [sheet] = whole(installation({ derivedSystems: [derived(given)] }));
      return [sheet?.symbols[0]?.kind, sheet && traced(sheet).sources.length];
    };
    expect(kinds({ connection: "three-phase-wye" })).toEqual(["wye", 1]);
    expect(kinds({ connection: "single-phase-three-wire" })).toEqual(["single-phase", 1]);
    expect(kinds({ connection: "high-leg-delta" })).toEqual(["high-leg-delta", 1]);
    expect(kinds({ connection: "three-phase-delta", grounding: "grounded-phase" })).toEqual([
      "corner-grounded-delta",
      1,
    ]);
    expect(kinds({ connection: "three-phase-delta", grounding: "ungrounded" })).toEqual(["delta", 0]);
  });

  it("puts the impedance between the neutral point and what it bonds", () => {
    const [sheet] = whole(installations.impedance);
    expect(sheet?.symbols.map(({ kind }) => kind)).toContain("impedance");
    const { names, sources, from } = traced(sheet as Sheet);
    const reached = sources.flatMap((one) => [...from(one)]).map((one) => names[one] ?? "");
    expect(reached.some((name) => name.startsWith("impedance-grounding-conductor"))).toBe(true);
    expect(reached.some((name) => name.startsWith("impedance-bonding-jumper"))).toBe(false);
  });

  it("folds what is alike into a table with the sizes of each", () => {
    const circuits = Array.from({ length: 12 }, (_, i) => ({
      id: `C${i + 1}`,
      from: "P1",
      to: `load ${i + 1}`,
      device: { amperes: i < 6 ? 20 : 100 },
      wiring: "raceway" as const,
    }));
    const one = installation({ existing: [{ id: "P1" }], circuits });
    const [sheet] = whole(one);
    const texts = sheet?.labels.map(({ lines }) => lines.join(" ")) ?? [];
    expect(texts).toContain("load 2 to load 12 (11) like load 1");
    const drawn = sheet?.lines.flatMap(({ conductor }) => conductor ?? []);
    expect(drawn).toEqual(["equipment-grounding-conductor C1"]);
    scheduleOf(one).conductors.forEach((conductor, i) => {
      expect(texts).toContain(labelOf({ mark: i + 1, conductor }));
    });
  });

  it("shows jumpers around meters and fittings on the sheet of their pipe", () => {
    const water = { id: "water", of: "S1", kind: "water", removable: [{ id: "M", kind: "meter" }] } as const;
    const removable = [{ id: "strainer", kind: "filter" }] as const;
    const electrodes = [{ id: "pipe", kind: "metal-water-pipe", from: "D1", removable }] as const;
    const sheets = whole(installation({ services: [service({ electrodes })], piping: [water] }));
    expect(sheets).toHaveLength(1);
    const [pipe, beyond] = ["water", "M"].map((name) => sheets[0]?.outlines.find(({ of }) => of === name));
    const [start, end] = ends(lineOf(sheets[0], "water-piping-bonding-jumper M"));
    expect([start.y, end.y]).toEqual([pipe?.points[2]?.y, beyond?.points[0]?.y]);
    expect(ends(lineOf(sheets[0], "electrode-bonding-jumper strainer"))[1].y).toBe(sheets[0]?.grounds[0]?.y);
  });

  it("says what a box without supply conductors is", () => {
    const [sheet] = drawingOf(installations["boxes without supply conductors"]).sheets;
    const texts = sheet?.labels.map(({ lines }) => lines.join(" ")) ?? [];
    for (const said of ["meter without supply", "gutter without supply"])
      expect(texts.filter((text) => text.includes(said))).toHaveLength(1);
  });

  it("divides what is too high for a page, and goes on at the same places", () => {
    const one = demo("cold-store");
    const [sheet] = whole(one);
    const parts = drawingOf(one).sheets.filter(({ title }) => title.startsWith(sheet?.title ?? "-"));
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.map(({ title }) => title.slice(-8))).toEqual(
      parts.map((_, i) => `(${i + 1} of ${parts.length})`),
    );
    const texts = (sheets: readonly Sheet[]) =>
      sheets.flatMap(({ labels }) => labels.map(({ lines }) => lines.join())).sort();
    expect(texts(parts)).toEqual(texts([sheet as Sheet]));
    parts.slice(1).forEach((part, i) => {
      const before = parts[i] as Sheet;
      const at = (of: Sheet, y: number) =>
        of.lines.flatMap(({ points }) => points.filter((point) => point.y === y).map(({ x }) => x)).sort();
      expect(at(part, 0)).toEqual(at(before, before.height));
      expect(at(part, 0)).not.toEqual([]);
    });
  });
});
