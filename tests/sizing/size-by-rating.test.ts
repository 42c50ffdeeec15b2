import { describe, expect, it } from "vitest";
import type { RatingPolicy } from "../../src/edition/index.js";
import { equipmentGrounding } from "../../src/edition/tables/equipment-grounding.generated.js";
import { equipmentGroundingConductorPolicies } from "../../src/edition/tables/rating-policies.generated.js";
import { floorStep } from "../../src/sizing/limits.js";
import { type RatingSizing, ratingRowStep, sizeByRating } from "../../src/sizing/size-by-rating.js";
import type { Supply } from "../../src/supply/index.js";

const table = equipmentGrounding["2023"];
const printed = equipmentGroundingConductorPolicies.byEdition["2023"];
const { basis } = printed;

const copper = (size: "8 AWG" | "6 AWG" | "4 AWG" | "3 AWG") => ({ size, material: "copper" }) as const;
const alike = (size: "8 AWG" | "6 AWG" | "4 AWG" | "3 AWG"): Supply => ({
  sets: [{ count: 1, ...copper(size) }],
});

/** A 100 A circuit: 8 AWG by the table, 16510 circular mils. */
const sized = (given: Partial<RatingSizing>, policy: Partial<RatingPolicy> = {}) =>
  sizeByRating({ table, policy: { ...printed, ...policy }, amperes: 100, read: "copper", ...given });

const kinds = (given: Partial<RatingSizing>, policy?: Partial<RatingPolicy>) =>
  sized(given, policy).steps.map(({ kind }) => kind);

describe("a conductor sized by the rating of its device", () => {
  it("shows the row alone where no increase and no limit acts", () => {
    expect(kinds({})).toEqual(["rating-row"]);
    expect(kinds({ installed: alike("3 AWG") })).toEqual(["rating-row"]);
  });

  it("grows with conductors beyond their baseline, and shows their sum first", () => {
    const { steps, requiredArea, governs } = sized({ installed: alike("3 AWG"), baseline: alike("4 AWG") });
    expect(steps.map(({ kind, citation }) => [kind, citation.section])).toEqual([
      ["sum", basis.increase.section],
      ["rating-row", table.number],
      ["increase", basis.increase.section],
    ]);
    expect([governs, requiredArea]).toEqual(["increase", Math.ceil((16510 * 52620) / 41740)]);
  });

  it("does not grow with conductors at their baseline", () => {
    expect(kinds({ installed: alike("3 AWG"), baseline: alike("3 AWG") })).toEqual(["rating-row"]);
  });

  it("stops at the circuit conductors, and shows their sum under the sentence that limits it", () => {
    const larger = sizeByRating({
      table,
      policy: printed,
      amperes: 200,
      read: "copper",
      installed: alike("8 AWG"),
    });
    expect(larger.steps.map(({ kind, citation }) => [kind, citation.section])).toEqual([
      ["sum", basis.cap.section],
      ["rating-row", table.number],
      ["cap", basis.cap.section],
    ]);
    expect([larger.governs, larger.requiredArea]).toEqual(["cap", 16510]);
  });

  it("stops at the largest conductor of unlike phases where one conductor is the limit", () => {
    const installed: Supply = { sets: [{ count: 2, phases: [copper("8 AWG"), copper("6 AWG"), null] }] };
    const at = (cap: RatingPolicy["cap"]) => sized({ installed, amperes: 600 }, { cap }).requiredArea;
    expect([at("none"), at("set"), at("conductor")]).toEqual([83690, 2 * 26240, 26240]);
  });

  it("has no limit in conductors of the other metal", () => {
    expect(sized({ installed: alike("8 AWG"), amperes: 200, read: "aluminum" }).governs).toBe("rating-row");
  });

  it("shows a floor only where it lifts the result", () => {
    const floor = (named: "8 AWG" | "6 AWG") => [floorStep(named, basis.rule, "amendment")];
    expect(kinds({ floors: floor("8 AWG") })).toEqual(["rating-row"]);
    expect(kinds({ floors: floor("6 AWG") })).toEqual(["rating-row", "floor"]);
    expect(sized({ floors: floor("6 AWG") })).toMatchObject({ governs: "floor", requiredArea: 26240 });
  });

  it("lets a floor win over the limit", () => {
    const floors = [floorStep("6 AWG", basis.rule, "amendment")];
    const { governs, requiredArea } = sized({ installed: alike("8 AWG"), amperes: 200, floors });
    expect([governs, requiredArea]).toEqual(["floor", 26240]);
  });
});

describe("a row of the table of ratings", () => {
  it("holds through its rating, and the next row follows", () => {
    const through = (amperes: number) => ratingRowStep(table, amperes, "copper").through;
    expect([through(60), through(60.5), through(100)]).toEqual([60, 100, 100]);
  });

  it("is missing above the last rating", () => {
    expect(() => ratingRowStep(table, 6001, "copper")).toThrow(`${table.number} has no row for 6001 A`);
  });
});
