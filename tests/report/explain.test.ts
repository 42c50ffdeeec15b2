import {
  bondingAtDesignation,
  cableTrayAsEquipmentGroundingConductor,
  classifySource,
  explain,
  mainBondingJumper,
  racewayFill,
  type Supply,
  shortTimeWithstand,
  size,
  supplySideBondingJumper,
  voltageDrop,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { voltageDropCautionWords } from "../../src/report/told/voltage-drop.js";
import { withstandCautionWords } from "../../src/report/told/withstand.js";
import { cautionWords } from "../../src/report/words/caution-words.js";
import { racewayFillCautionWords } from "../../src/report/words/raceway-words.js";
import { corpusResults } from "./corpus-results.js";

const sized = (
  supply: Supply,
  year: "2011" | "2017" | "2023" = "2023",
  material: "copper" | "aluminum" = "copper",
) => size(mainBondingJumper, { code: { year }, supply, conductor: { material } });

describe("explanations are rendered from the steps", () => {
  it("row", () => {
    expect(explain(sized({ sets: [{ count: 1, size: "250 kcmil", material: "copper" }] }))).toBe(
      "1 x 250 kcmil copper: 250,000 cmil [250.28(D)(1)]. " +
        "250,000 cmil falls in the copper row over 3/0 AWG through 350 kcmil, which requires 2 AWG copper [Table 250.102(C)(1)]. " +
        "Main bonding jumper: 2 AWG copper [250.28(D)(1)]. " +
        `Caution: ${cautionWords["listed-equipment"]} By NFPA 70-2023.`,
    );
  });

  it("assumed conductors and 12.5 percent", () => {
    expect(explain(sized({ sets: [{ count: 4, size: "600 kcmil", material: "aluminum" }] }))).toBe(
      "4 x 600 kcmil aluminum: 2,400,000 cmil [250.28(D)(1)]. " +
        "Assumed instead, matched at 75 C: 500 kcmil for each 600 kcmil aluminum (340 A by Table 310.16); together 2,000,000 cmil [Table 250.102(C)(1) note 2]. " +
        "2,000,000 cmil is over 1,100 kcmil copper: 12.5 percent is 250,000 cmil [Table 250.102(C)(1) note 1]. " +
        "The smallest standard size with 250,000 cmil is 250 kcmil, 250,000 cmil [Chapter 9 Table 8]. " +
        "Main bonding jumper: 250 kcmil copper [250.28(D)(1)]. " +
        `Caution: ${cautionWords["assumed-conductors"]} [Table 250.102(C)(1) note 2] ` +
        `Caution: ${cautionWords["listed-equipment"]} By NFPA 70-2023.`,
    );
  });

  it("equal conductance where no conductor has the ampacity", () => {
    expect(
      explain(sized({ sets: [{ count: 2, size: "1500 kcmil", material: "copper" }] }, "2023", "aluminum")),
    ).toContain(
      "2,459,017 cmil of equal conductance for each 1500 kcmil copper (625 A by Table 310.16); together 4,918,034 cmil",
    );
  });

  it("floor and cap", () => {
    expect(
      explain(sized({ sets: [{ count: 1, size: "1250 kcmil", material: "copper" }] }, "2011")),
    ).toContain("Not below 3/0 AWG, 167,800 cmil [Table 250.66]");
    expect(explain(sized({ sets: [{ count: 1, size: "10 AWG", material: "copper" }] }, "2017"))).toContain(
      "Not required above the ungrounded conductor or set: 10,380 cmil [Table 250.102(C)(1) note 1]. The smallest standard size with 10,380 cmil is 10 AWG",
    );
  });

  it("an area where no standard size is large enough", () => {
    expect(explain(sized({ sets: [{ count: 17, size: "1000 kcmil", material: "copper" }] }))).toContain(
      "Main bonding jumper: copper with at least 2,125,000 cmil, 1076.8 mm2, 1.669 in2",
    );
  });

  it("unlike phases and the sum of largest conductors", () => {
    const phases = [
      { size: "500 kcmil", material: "copper" },
      null,
      { size: "250 kcmil", material: "copper" },
    ] as const;
    const result = size(supplySideBondingJumper, {
      code: { year: "2023" },
      supply: { sets: [{ count: 1, phases }] },
      conductor: { material: "copper" },
    });
    expect(explain(result)).toContain(
      "1 x (500 kcmil copper, none, 250 kcmil copper): 500,000 cmil, each set's largest conductor added [250.102(C)(2)]",
    );
  });
});

describe("an explanation", () => {
  it.each([null, undefined, 5, "text"])("is of a result, and not of %s", (given) => {
    expect(() => explain(given as never)).toThrow("a result of");
  });

  it("says every caution and every open reading of a result, and its edition", () => {
    let [cautions, readings] = [0, 0];
    for (const result of corpusResults) {
      const told = explain(result);
      for (const { code, section } of result.cautions) {
        expect(told).toContain(`Caution: ${cautionWords[code]}${section === null ? "" : ` [${section}]`}`);
        cautions += 1;
      }
      readings += result.readings.length;
      expect(told.match(/Open reading: /g) ?? []).toHaveLength(result.readings.length);
      expect(told.endsWith(`By NFPA 70-${result.edition}.`)).toBe(true);
    }
    expect([cautions > 300, readings > 20]).toEqual([true, true]);
  });

  it("says what the other reading would require, without an id", () => {
    const small = sized({ sets: [{ count: 1, size: "10 AWG", material: "copper" }] });
    expect(explain(small)).toContain(
      'Open reading: the limit at the largest ungrounded conductor or set: read as "holds for every supply"; "holds for large supplies only" would require 16,510 cmil.',
    );
  });

  it("takes the results of the other functions", () => {
    const code = { year: "2023" } as const;
    const tray = size(cableTrayAsEquipmentGroundingConductor, { code, amperes: 225, metal: "steel" });
    expect(explain(tray)).toContain("225 A: permitted with at least 1 in2 (645 mm2) of metal, through 400 A");
    for (const caution of tray.cautions) expect(explain(tray)).toContain(cautionWords[caution.code]);
    const large = size(cableTrayAsEquipmentGroundingConductor, { code, amperes: 800, metal: "steel" });
    expect(explain(large)).toContain("not permitted; steel is permitted through 600 A");
    const withstand = shortTimeWithstand({
      conductor: { size: "4 AWG", material: "copper" },
      temperatures: { initial: 75, final: 150 },
      fault: { amperes: 5000, seconds: 0.25 },
    });
    for (const one of withstand.cautions) expect(explain(withstand)).toContain(withstandCautionWords[one]);
    const filled = racewayFill({
      edition: "2023",
      raceway: "electrical-metallic-tubing",
      nipple: true,
      conductors: [{ count: 3, size: "500 kcmil", insulation: "THHN" }],
    });
    expect(explain(filled)).toContain(
      "3 of 2.1219 in2 together, 63.2 percent, of 2.013 in2 at 60 percent: permitted, the count being rounded up by note 7",
    );
    for (const one of filled.cautions) expect(explain(filled)).toContain(racewayFillCautionWords[one]);
    const drop = voltageDrop({
      edition: "2023",
      current: "three-phase",
      volts: 480,
      amperes: 200,
      feet: 500,
      conductors: { size: "3/0 AWG", material: "copper" },
      impedance: { from: "table-9", conduit: "steel", powerFactor: 0.85 },
      permittedPercent: 3,
    });
    expect(explain(drop)).toContain("At most 3 percent: 1 x 4/0 AWG copper, ");
    for (const one of drop.cautions) expect(explain(drop)).toContain(voltageDropCautionWords[one]);
    const source = { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" } as const;
    expect(explain(classifySource({ code, source, grounding: "ungrounded" }))).toContain("By NFPA 70-2023.");
    const designation = "meter-disconnect";
    expect(explain(bondingAtDesignation({ code, designation, grounding: "ungrounded" }))).toContain(
      "Main bonding jumper: ",
    );
  });
});
