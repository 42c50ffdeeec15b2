import {
  ampacityOf,
  editionYears,
  explain,
  InputError,
  insulationTypes,
  render,
  resultDocument,
} from "bondmil";
import { rowsIn, insulationTypes as table } from "bondmil/tables";
import { describe, expect, it } from "vitest";

type Question = Parameters<typeof ampacityOf>[0];
const question: Question = {
  edition: "2023",
  conductor: { size: "8 AWG", material: "copper", insulation: "THHN" },
  place: { location: "dry" },
  terminations: { marked: 75 },
};
const inPlace = (place: Partial<Question["place"]>, rest: Partial<Question> = {}) =>
  ampacityOf({ ...question, ...rest, place: { ...question.place, ...place } });
const issuesOf = (given: unknown) => {
  try {
    ampacityOf(given as Question);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues;
  }
};
const step = <K extends string>(kind: K, { steps }: ReturnType<typeof ampacityOf>) =>
  steps.find((one) => one.kind === kind);

describe("the types of insulation", () => {
  it("are those of the table, in every edition", () => {
    for (const edition of editionYears)
      expect(rowsIn(table, edition).map(({ type }) => type)).toEqual([...insulationTypes]);
  });
});

describe("the ampacity of a conductor in its place", () => {
  it("is that of the table where nothing is said of the place", () => {
    const { amperes, limitedBy, steps, cautions } = inPlace({});
    expect([amperes, limitedBy, cautions]).toEqual([50, "terminations", []]);
    expect(steps.map(({ kind }) => kind)).toEqual(["insulation", "table", "terminations"]);
  });

  it("takes the hotter band between two, and each limit in both units", () => {
    const percent = (ambient: Question["place"]["ambient"] & object) => {
      const found = step("ambient", inPlace({ ambient }));
      return found?.kind === "ambient" && found.method === "table" ? found.percent : null;
    };
    expect([30, 30.5, 31, 35, 35.01].map((celsius) => percent({ celsius }))).toEqual([100, 96, 96, 96, 91]);
    expect([86, 86.5, 87, 95, 96].map((fahrenheit) => percent({ fahrenheit }))).toEqual([
      100, 96, 96, 96, 91,
    ]);
  });

  it("takes the coolest band of 2008 for what is cooler, with a caution", () => {
    const cool = inPlace({ ambient: { celsius: 5 } }, { edition: "2008" });
    expect(step("ambient", cool)).toMatchObject({ percent: 104, through: 25 });
    expect(cool.cautions).toEqual(["cooler-than-the-table"]);
    expect(inPlace({ ambient: { celsius: 21 } }, { edition: "2008" }).cautions).toEqual([]);
    expect(inPlace({ ambient: { celsius: -20 } }).cautions).toEqual([]);
  });

  it("has the wide bands of 2008", () => {
    const at65 = (edition: "2008" | "2011") =>
      step("ambient", inPlace({ ambient: { celsius: 65 } }, { edition }));
    expect(at65("2008")).toMatchObject({ percent: 58, through: 70 });
    expect(at65("2011")).toMatchObject({ percent: 65, through: 65 });
  });

  it("corrects by the equation if so told, with a caution", () => {
    const { cautions, ...rest } = inPlace({ ambient: { celsius: 50 }, method: "equation" });
    expect(step("ambient", { ...rest, cautions })).toMatchObject({ factor: Math.sqrt(40 / 60) });
    expect(rest.amperes).toBeCloseTo(55 * Math.sqrt(2 / 3), 12);
    expect(cautions).toEqual(["equation-from-memory"]);
  });

  it("adds what the edition adds above a roof, in the unit of the ambient temperature", () => {
    const at = (
      edition: Question["edition"],
      inchesAboveRoof: number,
      ambient: Question["place"]["ambient"] & object,
    ) => step("rooftop", inPlace({ ambient, inchesAboveRoof }, { edition }));
    const warm = { celsius: 30 };
    expect(at("2011", 0.5, warm)).toMatchObject({ added: { celsius: 33 }, ambient: { celsius: 63 } });
    expect(at("2011", 0.51, warm)).toMatchObject({ added: { celsius: 22 } });
    expect(at("2011", 36, { fahrenheit: 80 })).toMatchObject({ ambient: { fahrenheit: 105 } });
    expect(at("2011", 36.1, warm)).toMatchObject({ added: null, because: "height", ambient: warm });
    expect(at("2017", 0.874, warm)).toMatchObject({ added: { celsius: 33 } });
    expect(at("2017", 0.875, warm)).toMatchObject({ added: null, because: "height" });
    expect(at("2023", 0.75, warm)).toMatchObject({ added: null, because: "height" });
    expect(at("2023", 0.74, warm)).toMatchObject({ added: { celsius: 33 } });
  });

  it("adds nothing above a roof for XHHW-2 from 2014 on", () => {
    const on = (edition: Question["edition"]) =>
      step(
        "rooftop",
        inPlace(
          { ambient: { celsius: 30 }, inchesAboveRoof: 0.5 },
          { edition, conductor: { ...question.conductor, insulation: "XHHW-2" } },
        ),
      );
    expect(on("2011")).toMatchObject({ added: { celsius: 33 } });
    for (const edition of editionYears.slice(2)) {
      expect(on(edition)).toMatchObject({ added: null, because: "insulation", ambient: { celsius: 30 } });
    }
  });

  it("is not adjusted in a raceway of 24 in. or less", () => {
    const of = (racewayInches: number) => step("adjustment", inPlace({ currentCarrying: 9, racewayInches }));
    expect(of(24)).toMatchObject({ percent: 100, because: "short-raceway" });
    expect(of(24.5)).toMatchObject({ percent: 70, before: 55, after: 38.5 });
  });

  it("takes terminations at 60 C through 100 A unless marked, and says so where it decides", () => {
    const on = (circuitAmperes: number) => inPlace({}, { terminations: { circuitAmperes } });
    expect([on(100).amperes, on(100).cautions]).toEqual([40, ["terminations-unmarked"]]);
    expect([on(101).amperes, on(101).cautions]).toEqual([50, []]);
    const hot = inPlace({ ambient: { celsius: 60 } }, { terminations: { circuitAmperes: 30 } });
    expect([hot.limitedBy, hot.cautions]).toEqual(["insulation", []]);
  });

  it("stops at the 60 C column for NM and UF cable, whatever the terminations", () => {
    const of = (insulation: "NM" | "UF") =>
      inPlace({}, { conductor: { size: "6 AWG", material: "copper", insulation } });
    expect([of("NM").amperes, of("NM").limitedBy]).toEqual([55, "cable"]);
    expect([of("UF").amperes, of("UF").limitedBy]).toEqual([55, "insulation"]);
  });

  it("counts copper-clad aluminum as aluminum", () => {
    const of = (material: "aluminum" | "copper-clad aluminum") =>
      inPlace({}, { conductor: { size: "2 AWG", material, insulation: "THHN" } }).amperes;
    expect([of("aluminum"), of("copper-clad aluminum")]).toEqual([90, 90]);
  });

  it("is told in words, by its steps", () => {
    const hot = inPlace(
      { ambient: { fahrenheit: 90 }, inchesAboveRoof: 6, currentCarrying: 4 },
      { edition: "2011", terminations: { circuitAmperes: 50 } },
    );
    expect(explain(hot)).toBe(
      "THHN is rated 90 C in a dry place [Table 310.104(A)]. The 90 C column gives 55 A [Table 310.15(B)(16)]. At 6 in. above a roof, direct sunlight adds 30 F, which makes 120 F [Table 310.15(B)(3)(c)]. At 120 F, in the band through 50 C, 82 percent of 55 A is 45.1 A [Table 310.15(B)(2)(a)]. 4 current-carrying conductors: 80 percent of 45.1 A is 36.08 A [Table 310.15(B)(3)(a)]. Terminations at 60 C carry 40 A and limit nothing [110.14(C)(1), Table 310.15(B)(16)]. The ampacity is 36.08 A, decided by the insulation in its place. By NFPA 70-2011.",
    );
    const text = render(resultDocument(inPlace({ currentCarrying: 7, racewayInches: 20 })), { as: "text" });
    expect(text).toContain(
      "7 current-carrying conductors in a raceway of 24 in. or less are not adjusted for",
    );
    expect(text).toContain("less than 55 A");
  });
});

describe("what is refused", () => {
  const of = (change: object) => issuesOf({ ...question, ...change });

  it("is insulation that is not for the place, with those that are", () => {
    const [issue] = of({ place: { location: "wet" } });
    expect([issue?.code, issue?.path]).toEqual(["unknown-value", "conductor.insulation"]);
    expect(issue?.alternatives).toContain("THWN-2");
    expect(issue?.alternatives).not.toContain("THHN");
  });

  it("is a place too hot for the insulation, by itself or with the roof", () => {
    const [hot] = of({ place: { location: "dry", ambient: { celsius: 86 } } });
    expect([hot?.code, hot?.path]).toEqual(["out-of-range", "place.ambient"]);
    const [sunny] = of({ place: { location: "dry", ambient: { celsius: 60 }, inchesAboveRoof: 0 } });
    expect(sunny?.message).toContain("with what the roof adds");
    expect(of({ place: { location: "dry", ambient: { celsius: 90 }, method: "equation" } })).toHaveLength(1);
    expect(of({ place: { location: "dry", ambient: { celsius: 89 }, method: "equation" } })).toEqual([]);
  });

  it("is a roof or the equation without an ambient temperature", () => {
    for (const place of [{ inchesAboveRoof: 2 }, { method: "equation" }]) {
      const [issue] = of({ place: { location: "dry", ...place } });
      expect([issue?.code, issue?.path]).toEqual(["missing", "place.ambient"]);
    }
  });

  it("is an impossible temperature, and two units at once", () => {
    expect(of({ place: { location: "dry", ambient: { celsius: 300 } } })).toHaveLength(1);
    expect(of({ place: { location: "dry", ambient: { celsius: 30, fahrenheit: 86 } } })).not.toEqual([]);
  });

  it("is a size without a value, with the smallest that has one", () => {
    const small = { size: "14 AWG", material: "aluminum", insulation: "THHN" } as const;
    const [issue] = of({ conductor: small });
    expect([issue?.code, issue?.path, issue?.alternatives]).toEqual([
      "out-of-range",
      "conductor.size",
      ["12 AWG"],
    ]);
  });

  it("is everything at once", () => {
    const paths = issuesOf({ edition: "2010", conductor: {}, place: {}, terminations: {} }).map(
      ({ path }) => path,
    );
    expect(paths).toEqual(
      expect.arrayContaining(["edition", "conductor.size", "place.location", "terminations.marked"]),
    );
  });
});
