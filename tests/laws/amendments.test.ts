import {
  type Amendment,
  amend,
  type Code,
  evidenceLevels,
  InputError,
  type Issue,
  type Material,
  type SizingResult,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alternatives, anyFloor, cited, placeOf, type Uncited, uncited } from "./amendment-arbitraries.js";
import { material, year } from "./arbitraries.js";
import { type Asked, question } from "./asked-roles.js";

/** Every amendment here is made up. */
const circumstances = { serviceAmperes: 400, location: "indoors" } as const;
const elsewhere = { location: "rooftop" };
const runs = { numRuns: 300 };

function answerOf(ask: () => SizingResult): SizingResult | readonly Issue[] {
  try {
    return ask();
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
}

/** Only those that the edition takes, one by one and together. */
function taken(code: Code, list: readonly Amendment[]): readonly Amendment[] {
  const kept: Amendment[] = [];
  for (const one of list) {
    try {
      amend(code, one);
      amend(code, ...kept, one);
      kept.push(one);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
  return kept;
}

const distinct = (list: readonly Uncited[]): readonly Uncited[] => [
  ...new Map(list.map((one) => [placeOf(one), one])).values(),
];
const some = fc.array(uncited, { minLength: 1, maxLength: 6 });
const sectionsOf = ({ steps, citation, cautions }: SizingResult): readonly string[] => [
  citation.section,
  ...steps.map((step) => step.citation.section),
  ...cautions.map(({ section }) => section ?? ""),
];
const says = (result: SizingResult, { citation }: Amendment): boolean =>
  sectionsOf(result).some((section) => section.endsWith(`${citation.jurisdiction}, ${citation.section}`));

function law(
  check: (asked: Asked, code: Code, list: readonly Amendment[], of: Material) => void,
): ReturnType<typeof fc.property> {
  return fc.property(question, year, some, material, (asked, of, list, metal) => {
    const code: Code = { year: of, circumstances };
    check(asked, code, taken(code, cited(distinct(list))), metal);
  }) as ReturnType<typeof fc.property>;
}

describe("amendments", () => {
  it("written by hand are taken and refused as by amend", () => {
    fc.assert(
      fc.property(question, year, some, material, ({ ask }, of, list, metal) => {
        const code: Code = { year: of, circumstances };
        const amendments = cited(list);
        let issues: readonly Issue[] = [];
        let through: Code = code;
        try {
          through = amend(code, ...amendments);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          issues = error.issues;
        }
        const byHand = answerOf(() => ask({ ...code, amendments }, metal));
        if (issues.length === 0) expect(byHand).toEqual(ask(through, metal));
        else
          expect(byHand).toEqual(
            issues.map((one) => ({ ...one, path: `code.${one.path}`, keys: ["code", ...one.keys] })),
          );
      }),
      runs,
    );
  });

  it("are the same in any order where none stands at the place of another", () => {
    fc.assert(
      law(({ ask }, code, list, metal) => {
        const there = ask({ ...code, amendments: list }, metal);
        const back = ask({ ...code, amendments: [...list].reverse() }, metal);
        expect([back.outcome, back.requiredArea]).toEqual([there.outcome, there.requiredArea]);
        const sorted = ({ cautions }: SizingResult) => cautions.map((one) => JSON.stringify(one)).sort();
        expect(sorted(back)).toEqual(sorted(there));
      }),
      runs,
    );
  });

  it("change nothing the second time", () => {
    fc.assert(
      law(({ ask }, code, list, metal) => {
        expect(ask({ ...code, amendments: [...list, ...list] }, metal)).toEqual(
          ask({ ...code, amendments: list }, metal),
        );
      }),
      runs,
    );
  });

  it("change no size and no step where their condition is not met or not known", () => {
    fc.assert(
      law(({ ask }, code, list, metal) => {
        const printed = ask(code, metal);
        const amendments = list.map((one) => ({ ...one, when: elsewhere }));
        const unknown = { year: code.year, circumstances: { serviceAmperes: 400 } };
        for (const known of [code, unknown]) {
          const { cautions: _, ...result } = ask({ ...known, amendments }, metal);
          const { cautions: __, ...asPrinted } = printed;
          expect(result).toEqual(asPrinted);
        }
      }),
      runs,
    );
  });

  it("of a floor make nothing smaller", () => {
    fc.assert(
      fc.property(question, year, some, anyFloor, material, ({ ask }, of, list, floor, metal) => {
        const code: Code = { year: of, circumstances };
        const others = taken(code, cited(list));
        const all = taken(code, [...others, ...cited([...list, floor]).slice(-1)]);
        expect(ask({ ...code, amendments: all }, metal).requiredArea).toBeGreaterThanOrEqual(
          ask({ ...code, amendments: others }, metal).requiredArea,
        );
      }),
      runs,
    );
  });

  it("are called in force only where the result without them is another, or their step governs", () => {
    fc.assert(
      law(({ ask }, code, list, metal) => {
        const result = ask({ ...code, amendments: list }, metal);
        const amended = result.cautions.filter((one) => one.code === "amended").map(({ section }) => section);
        for (const one of list) {
          if (!amended.includes(`${one.citation.jurisdiction}, ${one.citation.section}`)) continue;
          const others = list.filter((other) => other !== one);
          // A cell may keep the table rising only together with the one that is left out.
          if (taken(code, others).length < others.length) continue;
          const without = ask({ ...code, amendments: others }, metal);
          expect(without.requiredArea).not.toBe(result.requiredArea);
        }
      }),
      { numRuns: 600 },
    );
  });

  it("of a role are never silent, and a change of size is never without their name", () => {
    fc.assert(
      law((asked, code, list, metal) => {
        for (const one of list) {
          const result = asked.ask({ ...code, amendments: [one] }, metal);
          const printed = asked.ask(code, metal);
          const isOfRole =
            "role" in one &&
            one.role === asked.role &&
            (one.kind !== "material" || one.material === result.material);
          if (isOfRole || result.requiredArea !== printed.requiredArea) expect(says(result, one)).toBe(true);
        }
      }),
      { numRuns: 600 },
    );
  });

  it("leave the evidence as it is where they only add a least size, a material or a wire", () => {
    const added = ["floor", "material"];
    fc.assert(
      law(({ ask }, code, list, metal) => {
        const amendments = list.filter(({ kind }) => added.includes(kind));
        const [printed, result] = [ask(code, metal), ask({ ...code, amendments }, metal)];
        if (printed.outcome.kind === "conductor" && result.outcome.kind === "conductor")
          expect(result.evidence).toBe(printed.evidence);
      }),
      runs,
    );
  });

  it("never stand for the evidence of the edition", () => {
    const rank = (level: string) => (evidenceLevels as readonly string[]).indexOf(level);
    fc.assert(
      law(({ ask }, code, list, metal) => {
        const { evidence, steps, citation } = ask({ ...code, amendments: list }, metal);
        const levels = [citation, ...steps.map((step) => step.citation)].map((one) => one.evidence);
        expect(rank(evidence)).toBeGreaterThanOrEqual(0);
        for (const level of levels) {
          if (level !== "vouched") expect(rank(level)).toBeGreaterThanOrEqual(rank(evidence));
        }
      }),
      runs,
    );
  });
});

describe("an enforced reading", () => {
  it("wins over a chosen one, and says so where the chosen one would make a difference", () => {
    const pair = fc.tuple(fc.constantFrom(...alternatives), fc.constantFrom(...alternatives));
    const same = pair.filter(([one, other]) => one.reading === other.reading);
    fc.assert(
      fc.property(question, year, same, material, ({ ask }, of, [chosen, enforced], metal) => {
        const readings = { [chosen.reading]: chosen.alternative };
        const amendments = cited([{ kind: "reading", ...enforced }]);
        const conflicting = ask({ year: of, readings, amendments }, metal);
        const byAmendment = ask({ year: of, amendments }, metal);
        const byChoice = ask({ year: of, readings }, metal);
        const code = "enforced-reading-overrules-chosen";
        expect(conflicting.requiredArea).toBe(byAmendment.requiredArea);
        expect(conflicting.readings).toEqual(byAmendment.readings);
        expect(conflicting.readings.map(({ id }) => id)).not.toContain(enforced.reading);
        expect(conflicting.cautions.some((one) => one.code === code)).toBe(
          byChoice.requiredArea !== conflicting.requiredArea,
        );
      }),
      { numRuns: 600 },
    );
  });
});
