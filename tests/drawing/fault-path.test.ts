import { describe, expect, it } from "vitest";
import type { Point, Sheet } from "../../src/drawing/drawing.js";
import { ends, lineOf, shop } from "./cases.js";
import { isOn, segmentsOf, traced, withoutWayBack } from "./geometry.js";

describe("the fault path of the shop", () => {
  it("links the neutral bar and the grounding bar by the main bonding jumper", () => {
    const [start, end] = ends(lineOf(shop, "main-bonding-jumper D1"));
    const bars = shop?.lines.filter(({ style }) => style === "bar") ?? [];
    const at = (point: Point) => bars.filter((bar) => segmentsOf(bar.points).some((one) => isOn(point, one)));
    expect(at(start)).not.toEqual([]);
    expect(at(end)).not.toEqual([]);
    expect(at(start)).not.toEqual(at(end));
  });

  it("is followed from all metal to the grounded lead of the windings", () => {
    const left = withoutWayBack(shop as Sheet);
    // The pole is the utility's, and what protects a conductor to an electrode is no part of the path.
    expect(left.filter((name) => !name.startsWith("raceway raceway of"))).toEqual(["enclosure pole"]);
  });

  it("is broken where its jumper is taken out, and the metal raceway beside it", () => {
    const sheet = shop as Sheet;
    const outlines = sheet.outlines.filter(({ of }) => of !== "entrance");
    const lines = sheet.lines.filter(({ conductor }) => conductor !== "main-bonding-jumper D1");
    expect(withoutWayBack({ ...sheet, lines, outlines })).toEqual(
      expect.arrayContaining([
        "enclosure D1",
        "enclosure sales panel",
        "enclosure freezer",
        "part cold water",
      ]),
    );
  });

  it("does not run through the earth", () => {
    const sheet = shop as Sheet;
    const lines = sheet.lines.filter(({ style }) => style !== "electrode-system");
    expect(withoutWayBack({ ...sheet, lines })).toEqual(withoutWayBack(sheet));
    const { names, sources, from } = traced(sheet, ["electrode-system"]);
    expect(sources.flatMap((one) => [...from(one)]).map((one) => names[one])).toEqual([]);
  });

  it("has an arrow on each conductor that carries it, towards the source", () => {
    const arrows = shop?.arrows.map(({ conductor, to }) => `${conductor} ${to}`) ?? [];
    expect(arrows).toEqual(
      expect.arrayContaining([
        "equipment-grounding-conductor B1 up",
        "equipment-grounding-conductor F1 up",
        "main-bonding-jumper D1 left",
        "grounded-conductor entrance up",
        "grounded-conductor drop up",
        "water-piping-bonding-jumper cold water left",
      ]),
    );
    for (const { x, y, conductor } of shop?.arrows ?? []) {
      const { points } = lineOf(shop, conductor ?? "");
      expect(segmentsOf(points).some((one) => isOn({ x, y }, one))).toBe(true);
    }
  });

  it("has the jumper of a raceway short, at its fitting", () => {
    const { points } = lineOf(shop, "supply-side-bonding-jumper entrance");
    const length = segmentsOf(points).reduce(
      (sum, { a, b }) => sum + Math.abs(a.x - b.x) + Math.abs(a.y - b.y),
      0,
    );
    expect(length).toBeLessThan(40);
    const walls = shop?.outlines.filter(({ kind, of }) => kind === "raceway" && of === "entrance") ?? [];
    const [start] = ends({ style: "bond", points });
    expect(walls.some((wall) => segmentsOf(wall.points).some((one) => isOn(start, one)))).toBe(true);
  });
});
