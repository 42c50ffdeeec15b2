import {
  explain,
  type FeederTap,
  feederTap,
  render,
  resultDocument,
  type TransformerSecondary,
  tapCautionCodes,
  transformerSecondary,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { tapCautionWords, unmetTapWords } from "../../src/report/words/tap-words.js";

const tap = {
  edition: "2023",
  feederDevice: 400,
  feet: 20,
  place: "inside",
  endsIn: { device: 150 },
  load: 120,
} as const;
const secondary = {
  edition: "2023",
  transformer: { kva: 112.5, primaryVolts: 480, secondaryVolts: 208, phases: 3, windings: "other" },
  protection: "primary-and-secondary",
  conductors: { feet: 20, place: "inside", endsIn: { device: 400 }, load: 300 },
} as const;
const highBay = { wallFeet: 36, horizontalFeet: 25, aboveFloorFeet: 30, qualified: true, unspliced: true };
const none = { wallFeet: 10, horizontalFeet: 50, aboveFloorFeet: 8, qualified: false, unspliced: false };
const through = { primaryVolts: 480, secondaryVolts: 208, secondaryFeet: 5 } as const;
const several = { devices: [60, 60, 60, 60, 60, 60, 60], equipment: 600 } as const;

const answers: readonly (FeederTap | TransformerSecondary)[] = [
  feederTap(tap),
  feederTap({ ...tap, feet: 200, endsIn: several, load: 0, highBay: none }),
  feederTap({ ...tap, feet: 80, feederDevice: 100, endsIn: { device: 30 }, load: 30, highBay }),
  feederTap({ ...tap, place: "outside", feet: 300 }),
  feederTap({ ...tap, feet: 10, transformer: through }),
  transformerSecondary(secondary),
  transformerSecondary({ ...secondary, conductors: { feet: 20, place: "outside", load: 0 } }),
  transformerSecondary({ ...secondary, protection: "primary-only", primaryDevice: 250 }),
  transformerSecondary({
    ...secondary,
    protection: "primary-only",
    conductors: { feet: 8, place: "inside", load: 0 },
  }),
  transformerSecondary({
    ...secondary,
    conductors: { ...secondary.conductors, endsIn: several, industrial: true },
  }),
];

describe("a tap in sentences", () => {
  it("says each rule with its amperes or what it lacks, which decides, the sizes and the cautions", () => {
    expect(explain(feederTap(tap))).toBe(
      "Rule for taps through 10 ft: does not hold, for the length is above 10 ft [240.21(B)(1)]. " +
        "Rule for taps through 25 ft: holds, and requires at least 150 A, the largest of the load, 120 A; the device at the end, 150 A; a third of the feeder's device of 400 A, 133.34 A [240.21(B)(2)]. " +
        "Rule for taps to a transformer, through 25 ft with its secondary: does not hold, for no transformer is supplied [240.21(B)(3)]. " +
        "Rule for taps through 100 ft in a high bay: does not hold, for no high bay of a manufacturing building is named; the walls are not above 35 ft; the tap is made less than 30 ft above the floor; it is not ensured that only qualified persons service the systems; there is a splice, or the conductors pass a wall, floor or ceiling [240.21(B)(4)]. " +
        "Rule for taps outdoors: does not hold, for the conductors do not run outdoors [240.21(B)(5)]. " +
        "The conductors carry at least 150 A, by the rule that requires least, for the device at the end [240.21(B)(2)]. " +
        "The smallest single conductors by the 75 C column are 1/0 AWG copper and 3/0 AWG aluminum. " +
        `Caution: ${tapCautionWords["never-next-rating"]} [240.21(B)] ` +
        `Caution: ${tapCautionWords["no-tap-from-a-tap"]} [240.21(B)] ` +
        `Caution: ${tapCautionWords["protect-from-damage"]} [240.21(B)(2)] ` +
        `Caution: ${tapCautionWords["terminations-by-rating"]} [110.14(C)(1)] By NFPA 70-2023.`,
    );
  });

  it("says what a transformer behind it requires of the secondary conductors", () => {
    expect(explain(feederTap({ ...tap, feet: 10, transformer: through }))).toContain(
      "Secondary conductors of that transformer: at least 307.7 A, the largest of the load, 120 A; the device at the end, 150 A; a third of the feeder's device of 400 A by the ratio of the voltages, 2.3077, 307.7 A [240.21(B)(3)].",
    );
  });

  it("says the smallest sizes of a high bay, and that nothing is permitted where no rule holds", () => {
    const far = { ...tap, feet: 80, feederDevice: 100, endsIn: { device: 30 }, load: 30, highBay } as const;
    expect(explain(feederTap(far))).toContain(
      "a third of the feeder's device of 100 A, 33.34 A; not smaller than 6 AWG copper or 4 AWG aluminum [240.21(B)(4)].",
    );
    const not = explain(feederTap({ ...tap, feet: 30 }));
    expect(not).toContain("None of these rules holds for the conductors.");
    expect(not).not.toContain("smallest single");
  });

  it("says where no single conductor is large enough", () => {
    const large = explain(
      feederTap({ ...tap, feederDevice: 4000, feet: 20, endsIn: { device: 700 }, load: 600 }),
    );
    expect(large).toContain(
      "No single conductor by the 75 C column has that ampacity, of copper or aluminum.",
    );
    const copper = explain(
      feederTap({ ...tap, feederDevice: 1200, feet: 20, endsIn: { device: 600 }, load: 600 }),
    );
    expect(copper).toContain(
      "The smallest single conductor by the 75 C column is 1500 kcmil copper; none of aluminum has that ampacity.",
    );
  });
});

describe("a transformer in sentences", () => {
  it("says the currents of both sides, the permitted devices with their cell, and those that count", () => {
    const said = explain(transformerSecondary(secondary));
    expect(said).toContain(
      "The primary is rated 135.31 A. Its device may be rated 250 percent of that, 338.29 A, and not more; the largest standard rating is 300 A [Table 450.3(B)]. The primary has a device of 300 A, the largest permitted. " +
        "The secondary is rated 312.26 A. Its device may be rated 125 percent of that, 390.33 A, or the next standard rating, 400 A [Table 450.3(B)]. The secondary has a device of 400 A, as given. ",
    );
    expect(said).toContain(
      "Rule for secondary conductors through 25 ft: holds, and requires at least 400 A, the largest of the load, 300 A; the device at the end, 400 A; a third of the primary device of 300 A by the ratio of the voltages, 2.3077, 230.77 A [240.21(C)(6)].",
    );
    expect(said).toContain(
      `The smallest single conductors by the 75 C column are 600 kcmil copper and 900 kcmil aluminum.`,
    );
  });

  it("says that the table requires no device on a side, and which is not known", () => {
    const alone = transformerSecondary({
      ...secondary,
      protection: "primary-only",
      conductors: { feet: 8, place: "inside", load: 0 },
    });
    expect(explain(alone)).toContain(
      "The secondary is rated 312.26 A. For the transformer itself no device is required there. No device of the secondary is known.",
    );
    expect(explain(alone)).toContain(`does not hold, for ${unmetTapWords["device-known"]}`);
  });
});

describe("every answer on taps", () => {
  it("is told with every caution, unmet condition and citation, in a paragraph and in a document", () => {
    const [codes, conditions] = [new Set<string>(), new Set<string>()];
    for (const answer of answers) {
      const page = render(resultDocument(answer), { as: "text", width: 10_000 }).replace(/\s+/g, " ");
      const paragraph = explain(JSON.parse(JSON.stringify(answer)));
      expect(paragraph).toBe(explain(answer));
      expect(page).toContain("Weakest evidence: ");
      for (const text of [page, paragraph]) {
        expect(text).not.toMatch(/undefined|null|NaN/);
        for (const { code, section } of answer.cautions) {
          codes.add(code);
          expect(text).toContain(`${tapCautionWords[code]}${section === null ? "" : ` [${section}]`}`);
        }
        for (const { unmet, citation } of answer.rules) {
          expect(text).toContain(citation.section);
          for (const one of unmet) {
            conditions.add(one);
            expect(text).toContain(unmetTapWords[one]);
          }
        }
      }
    }
    expect([...codes].sort()).toEqual([...tapCautionCodes].sort());
    expect([...conditions].sort()).toEqual(Object.keys(unmetTapWords).sort());
  });

  it("is refused where its place of the deciding rule was changed", () => {
    for (const answer of [feederTap(tap), transformerSecondary(secondary)])
      expect(() => explain({ ...answer, decides: 7 })).toThrow("decides is the place of no rule");
  });
});
