import { describe, expect, it } from "vitest";
import { type SupplyCandidatesQuestion, supplyCandidates } from "../../src/candidates/supply-candidates.js";

const feeder: SupplyCandidatesQuestion = {
  code: { year: "2023" },
  system: { kind: "feeder", ungrounded: 3 },
  load: { continuous: 0, other: 80 },
  conductor: { insulation: "THWN-2", materials: ["copper"] },
  place: { location: "dry" },
  limits: { mostSets: 1 },
  bonding: { material: "copper" },
};

const codesOf = (question: SupplyCandidatesQuestion) =>
  supplyCandidates(question)
    .cautions.map(({ code }) => code)
    .filter((code) => code !== "mass-without-fittings");

describe("the cautions beside candidates for a supply", () => {
  it("are none for a plain feeder, but that fittings are not in the mass", () => {
    expect(supplyCandidates(feeder).cautions).toEqual([{ code: "mass-without-fittings", section: null }]);
  });

  it("name the terminations of more than 90 A and through 110 A, and only these", () => {
    const isNamed = (device: number) => codesOf({ ...feeder, device }).includes("more-load-at-100-amperes");
    expect([90, 100, 110, 125].map(isNamed)).toEqual([false, true, true, false]);
  });

  it("name a rating that is not standard, sets in parallel, and a device at the end", () => {
    expect(codesOf({ ...feeder, device: 85 })).toContain("rating-not-standard");
    expect(codesOf({ ...feeder, load: { continuous: 0, other: 400 }, limits: { mostSets: 2 } })).toEqual([
      "alike-in-parallel",
    ]);
    expect(codesOf({ ...feeder, protection: "at-end", feederDevice: 200 })).toContain("never-next-rating");
  });

  it("say where no load and no electrodes are given, of a service and not of a feeder", () => {
    expect(codesOf({ ...feeder, load: { continuous: 0, other: 0 }, device: 80 })).toContain("load-not-given");
    const service = { ...feeder, system: { kind: "service", ungrounded: 3 } } as const;
    expect(codesOf(service)).toContain("no-electrodes-given");
    const electrodes = [{ kind: "rod" }] as const;
    expect(codesOf({ ...service, system: { ...service.system, electrodes } })).not.toContain(
      "no-electrodes-given",
    );
  });

  it("name the next standard rating where some of them rely on it", () => {
    const behindItsDevice = {
      ...feeder,
      load: { continuous: 0, other: 760 },
      device: 800,
      limits: { mostSets: 2 },
    };
    const relying = supplyCandidates(behindItsDevice).candidates.map(({ ampacity }) => ampacity.nextRating);
    expect(new Set(relying)).toEqual(new Set([true, false]));
    expect(codesOf(behindItsDevice)).toContain("next-rating-needs-no-receptacles");
    expect(codesOf(feeder)).not.toContain("next-rating-needs-no-receptacles");
  });

  it("name a raceway that serves only where raceways are given", () => {
    const serving = { ...feeder, bonding: { material: "copper", metalRaceway: "serves" } } as const;
    expect(codesOf(serving)).not.toContain("raceway-serves");
    expect(codesOf({ ...serving, raceways: ["rigid-metal"] })).toContain("raceway-serves");
  });
});
