import {
  type CodedInput,
  compareEditions,
  compareReadings,
  type EditionComparison,
  editionYears,
  type Role,
  roles,
  type SizingResult,
  sizeCommonConductorOfDerivedSystems,
  sizeElectrodeBondingJumper,
  sizeElectrodeRacewayBondingJumper,
  sizeEquipmentBondingJumper,
  sizeEquipmentGroundingConductor,
  sizeGroundedConductor,
  sizeGroundingElectrodeConductor,
  sizeImpedanceBondingJumper,
  sizeImpedanceGroundingConductor,
  sizeIntersystemBondingConductor,
  sizeMainBondingJumper,
  sizeOtherPipingBondingJumper,
  sizeStructuralMetalBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
  sizeWaterPipingBondingJumper,
  writeEditions,
} from "bondmil";
import { describe, expect, it } from "vitest";
import type { CheckInput, CommonDerivedCheckInput } from "../../corpus/runner/check-input.js";
import { entriesOf } from "../../corpus/runner/model.js";
import { readDocuments } from "../../corpus/runner/read.js";
import { validate } from "../../corpus/runner/validate.js";

type AnySize = (input: CodedInput) => SizingResult;

const sizing: Readonly<Record<Role, unknown>> = {
  "main-bonding-jumper": sizeMainBondingJumper,
  "system-bonding-jumper": sizeSystemBondingJumper,
  "supply-side-bonding-jumper": sizeSupplySideBondingJumper,
  "grounded-conductor": sizeGroundedConductor,
  "impedance-grounding-conductor": sizeImpedanceGroundingConductor,
  "impedance-bonding-jumper": sizeImpedanceBondingJumper,
  "equipment-grounding-conductor": sizeEquipmentGroundingConductor,
  "equipment-bonding-jumper": sizeEquipmentBondingJumper,
  "water-piping-bonding-jumper": sizeWaterPipingBondingJumper,
  "other-piping-bonding-jumper": sizeOtherPipingBondingJumper,
  "structural-metal-bonding-jumper": sizeStructuralMetalBondingJumper,
  "grounding-electrode-conductor": sizeGroundingElectrodeConductor,
  "electrode-bonding-jumper": sizeElectrodeBondingJumper,
  "electrode-raceway-bonding-jumper": sizeElectrodeRacewayBondingJumper,
  "intersystem-bonding-conductor": sizeIntersystemBondingConductor,
};

/** The corpus writes the common conductor of derived systems as an electrode conductor without a supply. */
function functionFor(role: Role, input: CheckInput): { readonly size: AnySize; readonly input: object } {
  const { part, of, ...rest } = input as CommonDerivedCheckInput;
  return part === "common" && of === "separately-derived"
    ? { size: sizeCommonConductorOfDerivedSystems as unknown as AnySize, input: rest }
    : { size: sizing[role] as AnySize, input };
}

const { corpus } = validate(readDocuments());
const asked =
  corpus === null
    ? []
    : entriesOf(corpus).map(({ role, check }) => ({ role, id: check.id, input: check.input }));
const compared = asked.map(({ role, id, input: given }) => {
  const { size, input } = functionFor(role, given);
  return {
    role,
    id,
    size,
    input,
    editions: compareEditions({ size, input }) as EditionComparison<SizingResult>,
  };
});

describe("every input of the corpus, in all editions", () => {
  it("is there for every role", () => {
    expect(new Set(compared.map(({ role }) => role))).toEqual(new Set(roles));
    expect(compared.length).toBeGreaterThan(250);
  });

  it("has the single results", () => {
    for (const { size, input, editions } of compared) {
      expect(editions.map(({ edition }) => edition)).toEqual(editionYears);
      for (const { edition, result } of editions) {
        if (result !== undefined) expect(result).toStrictEqual(size({ ...input, code: { year: edition } }));
      }
    }
  });

  it("says why an area changes, and never only that it does", () => {
    const silent = compared.flatMap(({ id, editions }) =>
      editions.flatMap(({ edition, effect, changes }) => {
        if (effect === "first" || effect === "same") return [];
        const reasons = changes.filter(
          ({ kind, what }) =>
            ["value", "policy", "reading"].includes(kind) && what !== "required-area" && what !== "reading",
        );
        return reasons.length > 0 ? [] : [`${id} ${edition}`];
      }),
    );
    expect(silent).toEqual([]);
    expect(
      compared.flatMap(({ editions }) => editions).filter(({ effect }) => effect === "larger").length,
    ).toBeGreaterThan(5);
  });

  it("can be written, with every change, every step and every caution", () => {
    for (const { id, editions } of compared) {
      const text = writeEditions(editions, id);
      const bullets = text.split("\n## Each edition in full")[0]?.match(/^- /gm) ?? [];
      const changes = editions.slice(1).flatMap((one) => one.changes);
      expect(bullets).toHaveLength(changes.length);
      const steps = editions.flatMap(({ result }) => result?.steps ?? []);
      for (const { citation } of steps) expect(text).toContain(citation.section);
      for (const { code } of editions.flatMap(({ result }) => result?.cautions ?? []))
        expect(text).toContain(`(${code})`);
    }
  });

  it("has under every open reading what its result says that it would have", () => {
    let open = 0;
    for (const { size, input, editions } of compared) {
      for (const { edition, result } of editions) {
        if (result === undefined) continue;
        const { otherwise } = compareReadings({ size, input: { ...input, code: { year: edition } } });
        const said = result.readings.flatMap((one) =>
          one.otherwise.map((other) => [one.id, one.chosen, other.alternative, other.requiredArea]),
        );
        open += said.length;
        expect(
          otherwise.map((one) => [one.reading, one.chosen, one.alternative, one.result.requiredArea]),
        ).toEqual(said);
      }
    }
    expect(open).toBeGreaterThan(50);
  });
});
