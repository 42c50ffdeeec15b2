import {
  cableTrayAsEquipmentGroundingConductor,
  equipmentGroundingConductor,
  groundingElectrodeConductor,
  intersystemBondingConductor,
  mainBondingJumper,
  type SizingResult,
  size,
  supplySideBondingJumper,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { changesBetween, effectOf } from "../../src/comparison/changes.js";
import type { ComparedResult } from "../../src/comparison/comparison.js";
import type { Step } from "../../src/sizing/index.js";

// What no two editions say otherwise yet: the second result of each pair is edited by hand, as another edition could give it.

const conductor = { material: "copper" } as const;
const code = { year: "2020" } as const;

function told(before: ComparedResult, after: ComparedResult): readonly (readonly unknown[])[] {
  return changesBetween(before, after).map(({ kind, what, of, before: was, after: is }) => [
    kind,
    what,
    of,
    was,
    is,
  ]);
}

/** The result with other members in its steps of a kind. */
function edited<K extends Step["kind"]>(
  result: SizingResult,
  kind: K,
  edit: (step: Extract<Step, { readonly kind: K }>) => Partial<Extract<Step, { readonly kind: K }>>,
): SizingResult {
  const steps = result.steps.map((step) =>
    step.kind === kind ? { ...step, ...edit(step as Extract<Step, { readonly kind: K }>) } : step,
  );
  return { ...result, steps: steps as readonly Step[] };
}

describe("what another edition could change", () => {
  it("another largest size, ceiling of an electrode, named size, threshold or end of a row is a value", () => {
    const water = size(waterPipingBondingJumper, {
      code,
      system: "service",
      supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
      conductor,
    });
    const limited = edited(water, "cap", () => ({ requiredArea: 211_600 }));
    expect(told(water, limited)).toEqual([["value", "cap", "largest-size", 167_800, 211_600]]);
    expect(
      told(
        water,
        edited(water, "one-eighth", () => ({ threshold: 1 })),
      ),
    ).toEqual([["value", "threshold", "copper", 1_100_000, 1]]);

    const electrode = size(groundingElectrodeConductor, {
      code,
      system: "service",
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor,
      electrodes: [{ kind: "rod" }],
    });
    expect(
      told(
        electrode,
        edited(electrode, "cap", () => ({ requiredArea: 41_740 })),
      ),
    ).toEqual([["value", "cap", "electrode", 26_240, 41_740]]);
    expect(
      told(
        electrode,
        edited(electrode, "row", () => ({ through: 1 })),
      ),
    ).toEqual([["value", "row-end", "copper", 600_000, 1]]);

    const tie = size(intersystemBondingConductor, { code, termination: "apart" });
    const larger = edited(tie, "named-size", () => ({ size: "4 AWG", requiredArea: 41_740 }));
    expect(told(tie, larger)).toEqual([["value", "named-size", "code", "6 AWG", "4 AWG"]]);
    const ofArea = edited(tie, "named-size", () => ({ size: null, requiredArea: 30_000 }));
    expect(told(tie, ofArea)).toEqual([["value", "named-size", "code", "6 AWG", 30_000]]);

    const grounding = size(equipmentGroundingConductor, {
      code,
      circuits: [{ device: { amperes: 200 } }],
      conductor,
    });
    expect(
      told(
        grounding,
        edited(grounding, "rating-row", () => ({ through: 225 })),
      ),
    ).toEqual([["value", "rating-row-end", null, 200, 225]]);
  });

  it("a limit at the conductors that is counted otherwise is a policy", () => {
    const jumper = size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
      conductor,
    });
    expect(
      told(
        jumper,
        edited(jumper, "cap", () => ({ requiredArea: 6530 })),
      ),
    ).toEqual([["policy", "cap", "ungrounded-conductors", 10_380, 6530]]);
  });

  it("another ampacity gives other assumed conductors, and what follows from them is a value too", () => {
    const jumper = size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 4, size: "500 kcmil", material: "aluminum" }] },
      conductor,
    });
    const [first] = jumper.steps.flatMap((step) => (step.kind === "assumed" ? step.conductors : []));
    const other = edited(jumper, "assumed", ({ conductors }) => ({
      conductors: conductors.map((one) => ({ ...one, assumed: "300 kcmil", area: 300_000 })),
    }));
    const before = `${first?.assumed}, ${first?.installedAmperes} A`;
    expect(told(jumper, other)).toEqual([
      ["value", "assumed-conductor", "500 kcmil aluminum", before, `300 kcmil, ${first?.installedAmperes} A`],
    ]);
    const none = edited(jumper, "assumed", ({ conductors }) => ({
      conductors: conductors.map((one) => ({ ...one, assumed: null })),
    }));
    expect(told(jumper, none)[0]?.[4]).toBe(`${first?.area} cmil, ${first?.installedAmperes} A`);

    const row = size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor,
    }).steps.filter(({ kind }) => kind === "row");
    const beyond = other.steps.filter(({ kind }) => kind !== "one-eighth" && kind !== "row");
    const through: SizingResult = { ...other, governs: "row", steps: [...beyond, ...row] };
    const kinds = changesBetween(jumper, through).map(({ kind, what }) => [what, kind]);
    expect(Object.fromEntries(kinds)).toMatchObject({
      "assumed-conductor": "value",
      "one-eighth": "value",
      row: "value",
      governs: "value",
    });
  });

  it("another way to add the sets is a policy, and so is what follows, though a value changed beside it", () => {
    const jumper = size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor,
    });
    const row = edited(jumper, "row", () => ({ size: "3/0 AWG", requiredArea: 167_800 }));
    const added = { ...edited(row, "sum", () => ({ rule: "largest" })), governs: "cap" } as const;
    expect(told(jumper, added)).toEqual([
      ["policy", "sum", null, "corresponding", "largest"],
      ["value", "row", "copper", "1/0 AWG", "3/0 AWG"],
      ["policy", "governs", null, "row", "cap"],
    ]);
  });

  it("a place beside a new value stays a place, and an increase that is gone is told though more is required", () => {
    const set = (size: "4 AWG" | "6 AWG") => ({ sets: [{ count: 1, size, material: "copper" }] }) as const;
    const circuit = { device: { amperes: 100 }, conductors: set("4 AWG") } as const;
    const increasedFrom = { conductors: set("6 AWG"), reason: "voltage-drop" } as const;
    const increased = size(equipmentGroundingConductor, {
      code,
      circuits: [{ ...circuit, increasedFrom }],
      conductor,
    });
    const plain = size(equipmentGroundingConductor, { code, circuits: [circuit], conductor });
    const larger = edited(plain, "rating-row", () => ({ size: "3 AWG", requiredArea: 52_620 }));
    const after = { ...larger, requiredArea: 52_620 };
    expect(told(increased, after)).toContainEqual(["policy", "increase", null, expect.any(Number), null]);

    const elsewhere = { ...plain, citation: { ...plain.citation, section: "Elsewhere" } };
    const moved = edited(elsewhere, "rating-row", () => ({ size: "3 AWG", requiredArea: 52_620 }));
    expect(told(plain, moved).slice(0, 2)).toEqual([
      ["place", "rule", null, plain.citation.section, "Elsewhere"],
      ["value", "rating-row", null, "8 AWG", "3 AWG"],
    ]);
  });

  it("an area without a standard size is no other outcome than a conductor", () => {
    const jumper = size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor,
    });
    expect(told(jumper, { ...jumper, outcome: { kind: "area-only" } as never })).toEqual([]);
  });

  it("an area that no step explains is told itself", () => {
    const jumper = size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor,
    });
    const silent = { ...jumper, requiredArea: jumper.requiredArea + 1 };
    expect(told(jumper, silent)).toEqual([
      ["policy", "required-area", null, jumper.requiredArea, jumper.requiredArea + 1],
    ]);
    expect([effectOf(jumper, silent), effectOf(silent, jumper)]).toEqual(["larger", "smaller"]);
  });

  it("where nothing is required on both sides, only the place can differ", () => {
    const excused = size(supplySideBondingJumper, {
      code,
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor,
      instead: "nonflexible-metal-raceway",
    });
    const elsewhere = { ...excused, citation: { ...excused.citation, section: "Elsewhere" } };
    expect(told(excused, elsewhere)).toEqual([
      ["place", "rule", null, excused.citation.section, "Elsewhere"],
    ]);
    expect(effectOf(excused, elsewhere)).toBe("same");
  });
});

describe("two cable trays", () => {
  const tray = (amperes: number, metal: "steel" | "aluminum") =>
    size(cableTrayAsEquipmentGroundingConductor, { code, amperes, metal });

  it("another row, or another area of metal, is a value", () => {
    const small = tray(60, "steel");
    expect(told(small, tray(100, "steel"))).toEqual([
      ["value", "rating-row-end", null, 60, 100],
      ["value", "tray-area", null, "0.2 in2", "0.4 in2"],
    ]);
    expect([effectOf(small, tray(100, "steel")), effectOf(tray(100, "steel"), small)]).toEqual([
      "larger",
      "smaller",
    ]);
    expect(effectOf(small, small)).toBe("same");
  });

  it("a metal that serves no longer is another outcome, and how far it serves a value", () => {
    const [served, refused] = [tray(600, "steel"), tray(601, "steel")];
    expect(effectOf(served, refused)).toBe("other-outcome");
    expect(told(served, refused)).toEqual([["policy", "outcome", null, "permitted", "not-permitted"]]);
    expect(told(refused, tray(2001, "aluminum"))).toEqual([["value", "rating-row-end", null, 600, 2000]]);
  });

  it("what is known of its table is told", () => {
    const one = tray(60, "steel");
    const read = { ...one, citation: { ...one.citation, evidence: "memory" } } as const;
    expect(told(one, read)).toEqual([["evidence", "evidence", null, one.citation.evidence, "memory"]]);
  });
});
