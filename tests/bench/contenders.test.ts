import { describe, expect, it } from "vitest";
import { fullCall } from "./calls.js";
import { areas, contenders } from "./contenders.js";
import { engines } from "./engines.js";

describe("what the benchmark times", () => {
  const [[, baseline] = [], ...others] = Object.entries(contenders);

  it.each(others)("%s gives the answers of the baseline", (_, contender) => {
    expect(areas.map(contender)).toEqual(areas.map((area) => baseline?.(area)));
  });

  it.each(Object.entries(engines))("%s does too", async (_, engine) => {
    const some = areas.slice(0, 60);
    expect(await Promise.all(some.map(engine))).toEqual(some.map((area) => baseline?.(area)));
  });

  it("has a full call that gives the area of the prepared path", () => {
    expect(fullCall()).toBe(contenders["prepared path"]?.(1_800_000));
  });
});
