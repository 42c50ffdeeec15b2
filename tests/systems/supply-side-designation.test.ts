import {
  bondingAtDesignation,
  type Designation,
  type DesignationInput,
  type EditionYear,
  editionYears,
  explain,
  type Grounding,
  InputError,
  type Readings,
} from "bondmil";
import { describe, expect, it } from "vitest";

const at = (
  year: EditionYear,
  designation: Designation,
  grounding: Grounding = "solidly-grounded",
  readings: Partial<Readings> = {},
) => bondingAtDesignation({ code: { year, readings }, designation, grounding });
const brief = (bonding: ReturnType<typeof at>) => [
  bonding.mainBondingJumper.status,
  bonding.mainBondingJumper.citation.section,
  bonding.box.bondedBy.join(" or "),
  bonding.electrodeConductor.status,
  bonding.beyond,
];
const before2020 = ["2008", "2011", "2014", "2017"] as const;
const since2020 = ["2020", "2023", "2026"] as const;
const mainPlace = (year: EditionYear) => (Number(year) >= 2023 ? "250.24(C)" : "250.24(B)");
const either = "grounded-conductor or supply-side-bonding-jumper";

describe("the service disconnect", () => {
  it.each(editionYears)("has the main bonding jumper in %s", (year) => {
    const found = at(year, "service-disconnect");
    expect(brief(found)).toEqual(["required", mainPlace(year), "main-bonding-jumper", "required", "feeder"]);
    expect(found).toMatchObject({ edition: year, namedInEdition: true, readings: [] });
    expect(found.electrodeConductor.citation.section).toBe("250.24(A)(1)");
  });

  it.each(editionYears)("has it too as an emergency disconnect in %s", (year) => {
    const found = at(year, "emergency-disconnect-as-service-disconnect");
    expect(brief(found)).toEqual(brief(at(year, "service-disconnect")));
    expect(found.namedInEdition).toBe(Number(year) >= 2020);
  });

  it("is cited as an emergency disconnect by the section of its edition", () => {
    const section = (year: EditionYear) =>
      at(year, "emergency-disconnect-as-service-disconnect").citation.section;
    expect(section("2020")).toBe("230.85(1)");
    expect(section("2023")).toBe("230.85(B)(1)");
  });
});

describe("a disconnect ahead of the service disconnect", () => {
  it.each(editionYears)("has no main bonding jumper as a meter disconnect in %s", (year) => {
    const found = at(year, "meter-disconnect");
    expect(brief(found)).toEqual(["not-required", "230.82(3)", either, "permitted", "service-conductors"]);
    expect(found.box.citation.section).toBe("250.142(A)");
    expect(found.namedInEdition).toBe(true);
  });

  it.each(since2020)("has none as an emergency disconnect that is not service equipment in %s", (year) => {
    const found = at(year, "emergency-disconnect-not-service-equipment");
    const section = { "2020": "230.85(2), (3)", "2023": "230.85(B)(2), (B)(3)", "2026": "230.70" }[
      year as "2020"
    ];
    expect(brief(found)).toEqual(["not-required", section, either, "permitted", "service-conductors"]);
    expect(found.namedInEdition).toBe(true);
  });

  it.each(before2020)("is the service disconnect where the edition does not name it, in %s", (year) => {
    const found = at(year, "emergency-disconnect-not-service-equipment");
    expect(brief(found)).toEqual(brief(at(year, "service-disconnect")));
    expect(found).toMatchObject({
      namedInEdition: false,
      mainBondingJumper: { note: "not-named-in-this-edition" },
    });
  });
});

describe("a source connected on the supply side", () => {
  it.each(before2020)("is disputed in %s", (year) => {
    const found = at(year, "supply-side-source");
    expect(brief(found)).toEqual(["disputed", "250.102(C)", either, "disputed", "conductors-of-the-source"]);
    expect(found.evidence).toBe("memory");
  });

  it("is bonded and grounded as a service in 2020", () => {
    const found = at("2020", "supply-side-source");
    expect(brief(found)).toEqual([
      "required",
      "250.25",
      "main-bonding-jumper",
      "required",
      "conductors-of-the-source",
    ]);
    expect(found.electrodeConductor.note).toBe("section-names-it");
    expect(found.readings).toEqual([]);
  });

  it.each(["2023", "2026"] as const)("keeps its electrode conductor by a reading in %s", (year) => {
    const id = "electrode-conductor-of-supply-side-source";
    const found = at(year, "supply-side-source");
    expect(found.mainBondingJumper.status).toBe("required");
    expect(found.electrodeConductor).toMatchObject({ status: "required", note: "letters-left-behind" });
    expect(found.readings).toEqual([{ id, chosen: "required" }]);
    const printed = at(year, "supply-side-source", "solidly-grounded", { [id]: "not-named" });
    expect(printed.electrodeConductor.status).toBe("permitted");
    expect(printed.mainBondingJumper.status).toBe("required");
    expect(printed.readings).toEqual([{ id, chosen: "not-named" }]);
  });

  it("has no such reading in 2020", () => {
    const readings = { "electrode-conductor-of-supply-side-source": "not-named" } as const;
    expect(at("2020", "supply-side-source", "solidly-grounded", readings).electrodeConductor.status).toBe(
      "required",
    );
  });
});

describe("an ungrounded service", () => {
  it.each(editionYears)(
    "has no main bonding jumper, yet jumpers and an electrode conductor, in %s",
    (year) => {
      const section = Number(year) >= 2023 ? "250.24(F)" : "250.24(E)";
      for (const designation of ["service-disconnect", "meter-disconnect"] as const) {
        const found = at(year, designation, "ungrounded");
        expect(found.mainBondingJumper).toMatchObject({ status: "not-required", citation: { section } });
        expect(found.box).toMatchObject({
          bondedBy: ["supply-side-bonding-jumper"],
          citation: { section: "250.92(A)" },
        });
        expect(found.electrodeConductor).toMatchObject({
          status: designation === "service-disconnect" ? "required" : "permitted",
          citation: { section },
        });
      }
    },
  );

  it("sends a source to the letter that was moved along in 2023", () => {
    const found = at("2023", "supply-side-source", "ungrounded");
    expect(found.electrodeConductor).toMatchObject({ status: "required", note: "section-names-it" });
    expect(found.mainBondingJumper.status).toBe("not-required");
    expect(found.readings).toEqual([]);
  });

  it("goes through its impedance where it has one", () => {
    const found = at("2020", "service-disconnect", "impedance");
    expect(found.mainBondingJumper).toMatchObject({
      status: "not-required",
      note: "through-the-impedance",
      citation: { section: "250.24(B) Exception No. 2" },
    });
    expect(found.box.bondedBy).toEqual(["supply-side-bonding-jumper"]);
    expect(found.electrodeConductor.citation.section).toBe("250.36(F)");
  });

  it("takes the grounded corner of a delta as a grounded conductor", () => {
    expect(brief(at("2020", "meter-disconnect", "grounded-phase"))).toEqual(
      brief(at("2020", "meter-disconnect")),
    );
  });
});

describe("a designation", () => {
  it("is plain data and told in sentences, with the reading that decides", () => {
    const found = at("2023", "supply-side-source");
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(explain(found).split(/(?<=\.) (?=[A-Z])/)).toEqual([
      "Main bonding jumper: required, as at a service disconnect [250.25].",
      "Enclosure: bonded by its main bonding jumper [250.25].",
      "Grounding electrode conductor: required, its section names the rule by a letter that was left behind; a reading [250.25].",
      "Conductors beyond: those of the source.",
      'Open reading: the grounding electrode conductor of a source on the supply side: read as "required, as in 2020".',
      "By NFPA 70-2023.",
    ]);
  });

  it("rests on its weakest section", () => {
    expect(editionYears.map((year) => at(year, "service-disconnect").evidence)).toEqual([
      "carried",
      "single",
      "bracketed",
      "single",
      "single",
      "single",
      "carried",
    ]);
    expect(at("2011", "emergency-disconnect-not-service-equipment").evidence).toBe("carried");
    expect(at("2026", "emergency-disconnect-not-service-equipment").evidence).toBe("memory");
  });

  it("is refused with everything that is wrong", () => {
    const issues = (input: unknown): readonly string[] => {
      try {
        bondingAtDesignation(input as DesignationInput);
      } catch (error) {
        if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
      }
      return [];
    };
    expect(issues({})).toEqual(["missing code", "missing designation", "missing grounding"]);
    expect(
      issues({ code: { year: "2019" }, designation: "emergency-disconnect", grounding: "earth", box: "M" }),
    ).toEqual([
      "unknown-key box",
      "unknown-value code.year",
      "unknown-value designation",
      "unknown-value grounding",
    ]);
  });
});
