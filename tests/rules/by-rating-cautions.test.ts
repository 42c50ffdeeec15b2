import {
  equipmentBondingJumper,
  equipmentGroundingConductor,
  type Input,
  type Material,
  type StandardSize,
  type Supply,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

type Circuit = Input<typeof equipmentGroundingConductor>["circuits"][number];

const sets = (count: number, size: StandardSize, material: Material = "copper"): Supply => ({
  sets: [{ count, size, material }],
});
const sized = (circuits: readonly Circuit[], material: Material = "copper") =>
  size(equipmentGroundingConductor, { code: { year: "2020" }, circuits, conductor: { material } });
const codesOf = (circuits: readonly Circuit[], material: Material = "copper"): readonly string[] =>
  sized(circuits, material).cautions.map(({ code }) => code);
const plain = (amperes: number): Circuit => ({ device: { amperes } });

describe("the cautions on a conductor that goes by its device", () => {
  it("cite the limit where the circuit conductors decide, and only there", () => {
    const { cautions, governs } = sized([{ device: { amperes: 400 }, conductors: sets(1, "6 AWG") }]);
    expect(governs).toBe("cap");
    expect(cautions).toContainEqual({ code: "limited-to-circuit-conductors", section: "250.122(A)" });
    expect(codesOf([{ device: { amperes: 60 }, conductors: sets(1, "6 AWG") }])).not.toContain(
      "limited-to-circuit-conductors",
    );
  });

  it("tell of no limit across metals only where conductors of another metal are smaller than what is required", () => {
    const across = "no-cap-across-materials";
    const aluminum = (size: StandardSize): Circuit => ({
      device: { amperes: 60 },
      conductors: sets(1, size, "aluminum"),
    });
    expect(codesOf([aluminum("12 AWG")])).toContain(across);
    expect(codesOf([aluminum("10 AWG")])).not.toContain(across);
    expect(codesOf([aluminum("6 AWG")])).not.toContain(across);
    expect(codesOf([{ device: { amperes: 60 }, conductors: sets(1, "12 AWG") }])).not.toContain(across);
  });

  it("tell of no limit across metals where the metals are alike and a minimum size decides, or where a reading lifts the limit", () => {
    const across = "no-cap-across-materials";
    const inTray = size(equipmentGroundingConductor, {
      code: { year: "2020" },
      circuits: [{ device: { amperes: 20 }, conductors: sets(1, "12 AWG") }],
      conductor: { material: "copper" },
      run: { kind: "tray", conductor: "single" },
    });
    expect(inTray).toMatchObject({ governs: "floor", outcome: { size: "4 AWG" } });
    expect(inTray.cautions.map(({ code }) => code)).not.toContain(across);
    const jumper = (limit: "whole-set" | "no-limit") =>
      size(equipmentBondingJumper, {
        code: { year: "2020", readings: { "load-side-jumper-limit": limit } },
        circuits: [{ device: { amperes: 60 }, conductors: sets(1, "12 AWG", "aluminum") }],
        conductor: { material: "copper" },
      }).cautions.map(({ code }) => code);
    expect(jumper("whole-set")).toContain(across);
    expect(jumper("no-limit")).not.toContain(across);
  });

  it("require a baseline if any circuit has conductors and none", () => {
    const baseline = { conductors: sets(1, "6 AWG"), reason: "voltage-drop" } as const;
    const counted: Circuit = {
      device: { amperes: 60 },
      conductors: sets(1, "4 AWG"),
      increasedFrom: baseline,
    };
    const open: Circuit = { device: { amperes: 40 }, conductors: sets(1, "8 AWG") };
    expect(codesOf([counted, open])).toContain("no-baseline-given");
    expect(codesOf([counted])).not.toContain("no-baseline-given");
    expect(codesOf([plain(60)])).not.toContain("no-baseline-given");
  });

  it("tell of a motor's fuse and of small parallel sets if any circuit has one", () => {
    const motor: Circuit = { device: { motor: { kind: "instantaneous-trip", dualElementFuseAmperes: 60 } } };
    const small: Circuit = { device: { amperes: 60 }, conductors: sets(2, "1 AWG") };
    expect(codesOf([plain(20), motor])).toContain("motor-fuse-rating-given");
    expect(codesOf([plain(20)])).not.toContain("motor-fuse-rating-given");
    expect(codesOf([plain(20), small])).toContain("parallel-below-1-0");
    expect(codesOf([{ device: { amperes: 60 }, conductors: sets(2, "1/0 AWG") }])).not.toContain(
      "parallel-below-1-0",
    );
  });

  it("tell of conductors smaller than their baseline, not of equal ones", () => {
    const from = (size: StandardSize): Circuit => ({
      device: { amperes: 60 },
      conductors: sets(1, "4 AWG"),
      increasedFrom: { conductors: sets(1, size), reason: "voltage-drop" },
    });
    expect(codesOf([from("3 AWG")])).toContain("smaller-than-baseline");
    expect(codesOf([from("4 AWG")])).not.toContain("smaller-than-baseline");
    expect(codesOf([from("6 AWG")])).not.toContain("smaller-than-baseline");
  });

  it("tell of a size missed by rounding only where an increase decides", () => {
    // Six of 4 AWG have 250,440 circular mils, less than two in a thousand above 250 kcmil.
    const limited = sized([{ device: { amperes: 2500 }, conductors: sets(6, "4 AWG") }]);
    expect([limited.governs, limited.requiredArea]).toEqual(["cap", 250440]);
    expect(limited.cautions.map(({ code }) => code)).not.toContain("short-by-rounding");
  });
});
