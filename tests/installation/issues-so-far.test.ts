import { issuesSoFar } from "bondmil";
import { describe, expect, it } from "vitest";
import { demo, demoNames, installation, service } from "./installations.js";

const found = (source: unknown) => issuesSoFar(source).map(({ code, path }) => [code, path]);

describe("an installation that is still being filled in", () => {
  it.each(demoNames)("has nothing wrong where %s is whole, or a part of it is left out", (name) => {
    const whole = demo(name) as unknown as Readonly<Record<string, unknown>>;
    expect(found(whole)).toEqual([]);
    expect(found(JSON.stringify(whole))).toEqual([]);
    for (const key of ["format", "title", "code", "materials"]) {
      const { [key]: _, ...others } = whole;
      expect(found(others)).toEqual([]);
    }
  });

  it("takes something existing without a name for something that is still being filled in", () => {
    const circuits = [{ id: "C1", from: "old panel", to: "P1", device: { amperes: 20 }, wiring: "raceway" }];
    expect(issuesSoFar({ format: 1, existing: [{}], circuits }).map(({ path }) => path)).toEqual([
      "circuits[0].from",
    ]);
    expect(issuesSoFar({ format: 1, existing: [{ id: "old panel" }], circuits })).toEqual([]);
  });

  it("may begin with nothing", () => {
    expect(found({})).toEqual([]);
    expect(found({ services: [{}], circuits: [] })).toEqual([]);
    expect(found({ services: [{ id: "S1", runs: [] }] })).toEqual([]);
  });

  it("is told what is wrong in a part that is not whole", () => {
    expect(found({ services: [{ id: "S1", housing: "shed" }] })).toEqual([
      ["unknown-value", "services[0].housing"],
    ]);
    expect(found({ code: { year: "2018" } })).toEqual([["unknown-value", "code.year"]]);
    expect(found({ servces: [] })).toEqual([["unknown-key", "servces"]]);
  });

  it("holds whole parts against each other, by their places in what is given", () => {
    const building = (circuit: string) => ({ id: "B1", circuit, onSingleBranchCircuit: true });
    expect(found({ buildings: [{ id: "B0" }, building("F9")] })).toEqual([
      ["dangling-reference", "buildings[1].circuit"],
    ]);
    expect(found({ circuits: [{ id: "F9" }], buildings: [building("F9")] })).toEqual([]);
    expect(found({ buildings: [building("F1"), building("F1")], circuits: [{ id: "F1" }] })).toEqual([
      ["duplicate-id", "buildings[1].id"],
    ]);
  });

  it("looks into the tables as soon as the code is known", () => {
    const large = installation({
      services: [service()],
      piping: [{ id: "W1", kind: "other", deviceAmperes: 9000 }],
    });
    expect(found(large)).toEqual([["out-of-range", "piping[0].deviceAmperes"]]);
    const { code: _, ...without } = large;
    expect(found(without)).toEqual([]);
  });
});
