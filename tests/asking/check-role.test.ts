import {
  equipmentGroundingConductor,
  InputError,
  intersystemBondingConductor,
  largestDevice,
  largestSupply,
  mainBondingJumper,
  prepare,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

function issueOf(ask: () => unknown): unknown {
  try {
    ask();
  } catch (error) {
    if (error instanceof InputError) return error.issues[0];
    throw error;
  }
  throw new Error("nothing was refused");
}

describe("what stands in the place of a role", () => {
  it.each([
    ["nothing", undefined, "missing"],
    ["its name", "main-bonding-jumper", "wrong-type"],
    ["null", null, "wrong-type"],
    ["a function", () => mainBondingJumper, "wrong-type"],
    ["a role that cannot check", { ...mainBondingJumper, read: undefined }, "wrong-type"],
    ["a role that cannot decide", { ...mainBondingJumper, decide: "yes" }, "wrong-type"],
  ])("is refused where it is %s", (_, role, code) => {
    for (const ask of [size, prepare, largestSupply, largestDevice])
      expect(issueOf(() => (ask as (role: unknown, input: unknown) => unknown)(role, {}))).toMatchObject({
        code,
        path: "role",
      });
  });

  it("has to go by what the question goes by", () => {
    const expectedBy = (ask: unknown, role: unknown) =>
      issueOf(() => (ask as (role: unknown, input: unknown) => unknown)(role, {}));
    expect(expectedBy(largestSupply, equipmentGroundingConductor)).toMatchObject({
      path: "role",
      expected: "the value of a role that goes by its supply",
      message: expect.stringContaining("pass for example mainBondingJumper"),
    });
    expect(expectedBy(largestDevice, mainBondingJumper)).toMatchObject({
      path: "role",
      expected: "the value of a role that goes by an overcurrent device",
      message: expect.stringContaining("pass for example equipmentGroundingConductor"),
    });
    expect(expectedBy(prepare, intersystemBondingConductor)).toMatchObject({
      path: "role",
      expected: "the value of a role that goes by its supply or by an overcurrent device",
    });
    expect(expectedBy(size, undefined)).toMatchObject({ expected: "the value of a role" });
  });
});
