import { describe, expect, it } from "vitest";
import { areas, contenders, fullCall } from "./contenders.js";

describe("what the benchmark times", () => {
  const [[, baseline] = [], ...others] = Object.entries(contenders);

  it.each(others)("%s gives the answers of the baseline", (_, contender) => {
    expect(areas.map(contender)).toEqual(areas.map((area) => baseline?.(area)));
  });

  it("has a full call that gives the area of the prepared path", () => {
    expect(fullCall()).toBe(contenders["prepared path"]?.(1_800_000));
  });
});
