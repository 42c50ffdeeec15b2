import { describe, expect, it } from "vitest";
import type { DrawnLine, Point, Sheet } from "../../src/drawing/drawing.js";
import { crossed, lyingOn, outside, overlapping } from "./geometry.js";

describe("the checks of geometry themselves", () => {
  const label = { x: 0, y: 0, width: 10, height: 10, strong: 0 };
  const empty: Sheet = {
    title: "t",
    description: [],
    width: 20,
    height: 20,
    outlines: [],
    symbols: [],
    joints: [],
    arrows: [],
    grounds: [],
    conductors: [],
    labels: [],
    lines: [],
  };
  const line = (points: readonly Point[]): DrawnLine => ({ style: "context", points });

  it("see each fault", () => {
    const down = [
      { x: 5, y: -5 },
      { x: 5, y: 5 },
    ];
    const sheet: Sheet = {
      ...empty,
      labels: [
        { ...label, lines: ["a"] },
        { ...label, x: 9, y: 9, lines: ["b"] },
      ],
      lines: [line(down), line(down)],
    };
    expect(overlapping(sheet)).toEqual(["a / b"]);
    expect(crossed(sheet)).toEqual(["a"]);
    expect(lyingOn(sheet)).toEqual(["context on context"]);
    expect(outside(sheet)).toEqual(["context", "context"]);
  });
});
