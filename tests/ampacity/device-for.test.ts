import {
  currentCarryingConductors,
  deviceFor,
  dwellingConductor,
  type EditionYear,
  editionYears,
  explain,
  InputError,
  requiredByLoad,
} from "bondmil";
import { describe, expect, it } from "vitest";

type Question = Parameters<typeof deviceFor>[0];
const feeder = (amperes: number, rest: Partial<Question> = {}): Question => ({
  edition: "2023",
  conductors: { size: "500 kcmil", material: "copper", sets: 1, amperes },
  serves: "service-or-feeder",
  device: "circuit-breaker",
  ...rest,
});
const codesOf = (ask: () => unknown) => {
  try {
    ask();
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path }) => `${code} ${path}`);
  }
};

describe("the device of conductors", () => {
  it("may have the next standard rating through 800 A, and at most the ampacity above", () => {
    const of = (amperes: number) => {
      const { most, standard, limitedBy } = deviceFor(feeder(amperes));
      return [most, standard, limitedBy];
    };
    expect(of(380)).toEqual([400, 400, "next-standard-rating"]);
    expect(of(400)).toEqual([400, 400, "ampacity"]);
    expect(of(701)).toEqual([800, 800, "next-standard-rating"]);
    expect(of(801)).toEqual([801, 800, "ampacity"]);
    expect(of(1199)).toEqual([1199, 1000, "ampacity"]);
    expect(of(7000)).toEqual([7000, 6000, "ampacity"]);
    expect(of(5)).toEqual([10, 10, "next-standard-rating"]);
  });

  it("is not rounded up for taps, secondaries and several receptacles, and says by which rule", () => {
    const rule = (serves: Question["serves"]) => deviceFor(feeder(380, { serves })).citation.section;
    const most = (serves: Question["serves"]) => deviceFor(feeder(380, { serves })).most;
    expect(most("branch-circuit")).toBe(400);
    for (const serves of ["tap", "transformer-secondary", "branch-circuit-of-several-receptacles"] as const)
      expect(most(serves)).toBe(380);
    expect(rule("tap")).toBe("240.21(B), Table 240.6(A)");
    expect(rule("transformer-secondary")).toBe("240.21(C), Table 240.6(A)");
    expect(rule("branch-circuit")).toBe("240.4(B), Table 240.6(A)");
    expect(deviceFor(feeder(900)).citation.section).toBe("240.4(C), Table 240.6(A)");
  });

  it("has the limits of small conductors", () => {
    const most = (size: Question["conductors"]["size"], material: "copper" | "aluminum") =>
      deviceFor(feeder(55, { conductors: { size, material, sets: 1, amperes: 55 } })).most;
    expect(
      (["18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG"] as const).map((size) =>
        most(size, "copper"),
      ),
    ).toEqual([7, 10, 15, 20, 30, 60]);
    expect((["12 AWG", "10 AWG", "8 AWG"] as const).map((size) => most(size, "aluminum"))).toEqual([
      15, 25, 60,
    ]);
    const warm = { size: "10 AWG", material: "copper", sets: 1, amperes: 18 } as const;
    expect(deviceFor(feeder(18, { conductors: warm })).limitedBy).toBe("next-standard-rating");
  });

  it("knows the ratings of fuses alone, and the 10 A that came in 2023", () => {
    const standard = (edition: Question["edition"], amperes: number, device: Question["device"]) =>
      deviceFor(feeder(amperes, { edition, device })).standard;
    expect(standard("2020", 600.5, "fuse")).toBe(601);
    expect(standard("2020", 600.5, "circuit-breaker")).toBe(700);
    expect(editionYears.map((edition) => standard(edition, 9, "circuit-breaker"))).toEqual([
      15, 15, 15, 15, 15, 10, 10,
    ]);
    expect(standard("2020", 9, "fuse")).toBe(10);
    expect(deviceFor(feeder(5, { edition: "2020", serves: "tap" })).standard).toBeNull();
  });

  it("is judged where its rating is given; one off the list has its neighbors", () => {
    const off = deviceFor(feeder(380, { rating: 390 }));
    expect([off.permitted, off.neighbors, off.cautions]).toEqual([
      true,
      [350, 400],
      ["rating-off-the-list", "load-within-ampacity"],
    ]);
    expect(deviceFor(feeder(380, { rating: 400 }))).toMatchObject({
      permitted: true,
      neighbors: [],
      cautions: ["load-within-ampacity"],
    });
    expect(deviceFor(feeder(380, { rating: 401 })).permitted).toBe(false);
    expect(deviceFor(feeder(380)).permitted).toBeNull();
    expect(deviceFor(feeder(380, { rating: 6500 })).neighbors).toEqual([6000]);
    expect(explain(off)).toContain("Beside it on the list: 350 A and 400 A.");
  });

  it("is refused for what is no ampacity", () => {
    expect(codesOf(() => deviceFor(feeder(0)))).toEqual(["not-positive conductors.amperes"]);
    expect(codesOf(() => deviceFor({ ...feeder(9), serves: "feeder" } as never))).toEqual([
      "unknown-value serves",
    ]);
  });
});

describe("the conductors of a dwelling", () => {
  const house = { amperes: 200, material: "copper", system: "120/240-three-wire" } as const;

  it("go by the list through 2011 and by 83 percent since, which give the same at every rating of the list", () => {
    expect(editionYears.map((edition) => dwellingConductor({ edition, ...house }).by)).toEqual([
      "list",
      "list",
      ...Array.from({ length: 5 }, () => "percentage"),
    ]);
    for (const amperes of [100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400])
      for (const material of ["copper", "aluminum"] as const) {
        const sizes = editionYears.map(
          (edition) => dwellingConductor({ edition, ...house, amperes, material }).size,
        );
        expect(new Set(sizes).size).toBe(1);
      }
  });

  it("cite the list, or the allowance with the table of ampacities and what the system needs", () => {
    const section = (edition: EditionYear, more: object = {}) =>
      dwellingConductor({ edition, ...house, ...more }).citation.section;
    expect(section("2008")).toBe("Table 310.15(B)(6)");
    expect(section("2011")).toBe("Table 310.15(B)(7)");
    expect(section("2020")).toBe("310.12, Table 310.16");
    expect(section("2020", { system: "208Y/120-two-phases" })).toBe("310.12, Table 310.16");
  });

  it("are larger in a hotter place, but not by the list", () => {
    const conditions = {
      insulation: "THWN",
      place: { location: "wet", ambient: { celsius: 50 } },
      terminations: { marked: 75 },
    } as const;
    expect(dwellingConductor({ edition: "2011", ...house, conditions }).size).toBe("2/0 AWG");
    const hot = dwellingConductor({ edition: "2014", ...house, conditions });
    expect([hot.size, hot.required, hot.amperes]).toEqual(["4/0 AWG", 166, 172.5]);
    expect(hot.citation.section).toContain("Table 310.15(B)(2)(a)");
    expect(explain(hot)).toContain("4/0 AWG carries 172.5 A, at least 83 percent of the rating, 166 A");
  });

  it("are refused beyond the allowance, and where nothing reaches the rating", () => {
    expect(codesOf(() => dwellingConductor({ edition: "2023", ...house, amperes: 401 }))).toEqual([
      "out-of-range amperes",
    ]);
    const wye = { ...house, system: "208Y/120-two-phases" } as const;
    expect(codesOf(() => dwellingConductor({ edition: "2014", ...wye }))).toEqual(["unknown-value system"]);
    expect(dwellingConductor({ edition: "2017", ...wye }).size).toBe("2/0 AWG");
    const hot = {
      insulation: "THWN",
      place: { location: "wet", ambient: { celsius: 69 }, currentCarrying: 45 },
      terminations: { marked: 75 },
    } as const;
    expect(codesOf(() => dwellingConductor({ edition: "2023", ...house, conditions: hot }))).toEqual([
      "out-of-range amperes",
    ]);
    const dry = { ...hot, insulation: "THHN" } as const;
    expect(codesOf(() => dwellingConductor({ edition: "2023", ...house, conditions: dry }))).toEqual([
      "unknown-value conditions.insulation",
    ]);
  });
});

describe("what a load requires", () => {
  it("names the sections of services, feeders and branch circuits", () => {
    const of = (kind: "service" | "feeder" | "branch-circuit") => {
      const { conductors, device } = requiredByLoad({ edition: "2017", of: kind, continuous: 8, other: 2 });
      return [conductors.citation.section, device?.citation.section ?? null, conductors.amperes];
    };
    expect(of("service")).toEqual(["230.42(A)", null, 12]);
    expect(of("feeder")).toEqual(["215.2(A)(1)", "215.3", 12]);
    expect(of("branch-circuit")).toEqual(["210.19(A)(1)", "210.20(A)", 12]);
  });

  it("is refused for no load at all, and told in words", () => {
    const nothing = { edition: "2017", of: "feeder", continuous: 0, other: 0 } as const;
    expect(codesOf(() => requiredByLoad(nothing))).toEqual(["not-positive continuous"]);
    expect(codesOf(() => requiredByLoad({ ...nothing, continuous: 1e9 }))).toEqual([]);
    // 125 percent of it is no number any more.
    expect(codesOf(() => requiredByLoad({ ...nothing, continuous: 1e308, other: -1 }))).toEqual([
      "out-of-range continuous",
      "not-positive other",
    ]);
    expect(explain(requiredByLoad({ ...nothing, continuous: 40, other: 60 }))).toContain(
      "the conductors reach 110 A, 125 percent of the continuous part and the rest [215.2(A)(1)]",
    );
  });
});

describe("the current-carrying conductors", () => {
  it("are told with the reason for each neutral", () => {
    const counted = currentCarryingConductors({
      edition: "2008",
      circuits: [{ kind: "two-phases-and-neutral-of-wye" }, { kind: "three-wire-single-phase", count: 2 }],
      spares: 2,
    });
    expect(counted.circuits.map(({ each, because }) => [each, because])).toEqual([
      [3, "current-of-third-phase"],
      [2, "unbalance-only"],
    ]);
    expect(counted.count).toBe(9);
    expect(explain(counted)).toContain(
      "Spare conductors: 2. 9 conductors count [310.15(B)(2)(a), 310.15(B)(4)]",
    );
  });
});
