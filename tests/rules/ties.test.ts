import {
  equipmentGroundingConductor,
  groundedConductor,
  type Input,
  size,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { one } from "../roles/electrode/asked.js";

const code = { year: "2023" } as const;
const conductor = { material: "copper" } as const;

describe("of several circuits that require the same", () => {
  type Circuit = Input<typeof equipmentGroundingConductor>["circuits"][number];
  const decides = (...circuits: readonly Circuit[]) =>
    size(equipmentGroundingConductor, { code, circuits, conductor }).steps.flatMap((step) =>
      step.kind === "shared" ? [step.decides] : [],
    );
  const of = (amperes: number): Circuit => ({ device: { amperes } });

  it("the first decides", () => {
    expect(decides(of(60), of(60), of(60))).toEqual([0]);
    expect(decides(of(20), of(60), of(60))).toEqual([1]);
  });

  it("the one with the larger device decides, wherever it stands", () => {
    expect(decides(of(70), of(100))).toEqual([1]);
    expect(decides(of(100), of(70))).toEqual([0]);
  });
});

describe("a requirement that the table meets exactly", () => {
  it("of the load is shown and does not govern", () => {
    // 2 AWG carries 115 A at 75 C, and the table requires 2 AWG.
    const found = size(groundedConductor, {
      code,
      system: "service",
      supply: one(1, "350 kcmil"),
      conductor,
      load: { amperes: 115, circuitAmperes: 300 },
    });
    expect(found).toMatchObject({ governs: "row", requiredArea: 66_360 });
    expect(found.steps).toContainEqual(expect.objectContaining({ kind: "load", requiredArea: 66_360 }));
  });

  it("of the load of a feeder is shown, and the device governs", () => {
    // 6 AWG carries 65 A at 75 C, and a device of 200 A requires 6 AWG.
    const found = size(groundedConductor, {
      code,
      system: "service",
      feederDeviceAmperes: 200,
      supply: one(1, "3/0 AWG"),
      conductor,
      load: { amperes: 65, circuitAmperes: 200 },
    });
    expect(found).toMatchObject({ governs: "rating-row", requiredArea: 26_240 });
    expect(found.steps).toContainEqual(expect.objectContaining({ kind: "load", requiredArea: 26_240 }));
  });

  it("of conductors in parallel is shown and does not govern", () => {
    // 1/0 AWG carries 150 A at 75 C, and it is the minimum size in parallel.
    const found = size(groundedConductor, {
      code,
      system: "separately-derived",
      jumperAt: "source",
      scope: "raceway",
      supply: one(1, "500 kcmil"),
      conductor,
      load: { amperes: 150, circuitAmperes: 800 },
    });
    expect(found).toMatchObject({ governs: "load", requiredArea: 105_600 });
    expect(found.steps).toContainEqual(expect.objectContaining({ kind: "floor", requiredArea: 105_600 }));
  });
});

describe("piping of a building whose feeder is as large as the device requires", () => {
  it.each(["copper", "aluminum"] as const)("has no limit to speak of: %s", (material) => {
    const found = size(waterPipingBondingJumper, {
      code,
      system: "building",
      supply: one(1, material === "copper" ? "6 AWG" : "4 AWG", material),
      deviceAmperes: 200,
      conductor: { material },
    });
    expect(found.governs).toBe("rating-row");
    const codes = found.cautions.map((one) => one.code);
    expect(codes).not.toContain("limited-to-circuit-conductors");
    expect(codes).not.toContain("no-cap-across-materials");
  });

  it("nor across metals", () => {
    const found = size(waterPipingBondingJumper, {
      code,
      system: "building",
      supply: one(1, "6 AWG", "aluminum"),
      deviceAmperes: 200,
      conductor,
    });
    expect(found.requiredArea).toBe(26_240);
    expect(found.cautions.map((one) => one.code)).not.toContain("no-cap-across-materials");
  });
});
