import { type ConductorSize, InputError, racewayFill } from "bondmil";
import { describe, expect, it } from "vitest";

const edition = "2017";
const thhn = (count: number, size: ConductorSize) => ({ count, size, insulation: "THHN" }) as const;

function issuesOf(question: Parameters<typeof racewayFill>[0]): readonly (readonly [string, string])[] {
  try {
    racewayFill(question);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => [code, path] as const);
    throw error;
  }
  return [];
}

describe("raceway fill", () => {
  // Modern Commercial Wiring 2018, problem 6-8.
  it("adds unlike conductors and takes the smallest trade size", () => {
    const filled = racewayFill({
      edition,
      raceway: "rigid-metal",
      conductors: [thhn(1, "12 AWG"), thhn(1, "10 AWG"), thhn(3, "8 AWG")],
    });
    expect(filled).toMatchObject({
      squareInches: 0.1442,
      permittedSquareInches: 0.22,
      tradeSize: "3/4",
      fits: true,
    });
    expect(filled.byRounding).toBe(false);
  });

  // Forum thread on Annex C1: eight 8 AWG THW in tubing 1, 0.346 / 0.0437 = 7.918.
  it("rounds a count of one area up from 0.8, and only such a count", () => {
    const eight = { count: 8, size: "8 AWG", insulation: "THW" } as const;
    const tubing = { edition, raceway: "electrical-metallic-tubing", tradeSize: "1" } as const;
    expect(racewayFill({ ...tubing, conductors: [eight] })).toMatchObject({ fits: true, byRounding: true });
    const mixed = racewayFill({ ...tubing, conductors: [{ ...eight, count: 7 }, thhn(1, "6 AWG")] });
    expect(mixed).toMatchObject({ fits: false, byRounding: false, smallestTradeSize: "1-1/4" });
    expect(racewayFill({ ...tubing, conductors: [{ ...eight, count: 9 }] }).fits).toBe(false);
  });

  it("rounds up where exactly 0.8 of a conductor has room, and not where it has less", () => {
    // Tubing 1-1/2 has 0.814 in2 for more than two conductors: eight of 0.0925 in2 leave 0.074 in2, 0.8 of one.
    const nine = (squareInches: number) =>
      racewayFill({
        edition,
        raceway: "electrical-metallic-tubing",
        tradeSize: "1-1/2",
        conductors: [{ count: 9, squareInches }],
      });
    expect(nine(0.0925)).toMatchObject({ permittedSquareInches: 0.814, fits: true, byRounding: true });
    expect(nine(0.0926)).toMatchObject({ fits: false, withoutAdded: null });
  });

  // Exam question on the 0.8 rule: 2.013 / 0.7073 = 2.846.
  it("fills a nipple to 60 percent, and says where its count is rounded up", () => {
    const filled = racewayFill({
      edition,
      raceway: "electrical-metallic-tubing",
      nipple: true,
      conductors: [thhn(3, "500 kcmil")],
    });
    expect(filled).toMatchObject({ tradeSize: "2", permittedPercent: 60, byRounding: true });
    expect(filled.cautions).toContain("rounded-up-in-nipple");
    expect(filled.citations.map(({ section }) => section)).toContain("Chapter 9 note 4");
  });

  // Note 7 has its sentence on a single conductor since 2017; 0.166 / 0.1855 = 0.89.
  it("lets a single conductor lack a part of its space only where the note says so", () => {
    const one = { raceway: "rigid-metal", tradeSize: "1/2", conductors: [thhn(1, "1/0 AWG")] } as const;
    expect(racewayFill({ ...one, edition: "2017" }).fits).toBe(true);
    expect(racewayFill({ ...one, edition: "2011" }).fits).toBe(false);
  });

  it("counts bare conductors by their overall area, and says what an added one changes", () => {
    const filled = racewayFill({
      edition: "2023",
      raceway: "pvc-schedule-80",
      tradeSize: "2",
      conductors: [{ count: 4, size: "3/0 AWG", insulation: "THWN-2" }],
      added: [{ count: 1, size: "6 AWG", bare: "stranded" }],
    });
    expect(filled.squareInches).toBe(1.0986);
    expect(filled.withoutAdded?.squareInches).toBe(1.0716);
    expect(filled.fits).toBe(true);
    expect(filled.conductors[1]?.squareInches).toBe(0.027);
  });

  it("takes RHW as large as it is with its covering, or without", () => {
    const rhw = { count: 1, size: "10 AWG", insulation: "RHW" } as const;
    const area = (one: object) =>
      racewayFill({ edition, raceway: "rigid-metal", conductors: [{ ...rhw, ...one }] }).squareInches;
    expect([area({}), area({ withoutCovering: true }), area({ insulation: "THHN" })]).toEqual([
      ...[0.0437, 0.0333, 0.0211],
    ]);
  });

  it("cites each place once, and the note that rounds where it decides", () => {
    const sections = (count: number) =>
      racewayFill({
        edition,
        raceway: "electrical-metallic-tubing",
        tradeSize: "1",
        conductors: [
          { count: count - 1, size: "8 AWG", insulation: "THW" },
          { count: 1, size: "8 AWG", insulation: "THW" },
        ],
      }).citations.map(({ section }) => section);
    expect(sections(7)).toEqual(["Chapter 9 Table 1", "Chapter 9 Table 4", "Chapter 9 Table 5"]);
    expect(sections(8)).toEqual([
      "Chapter 9 Table 1",
      "Chapter 9 note 7",
      "Chapter 9 Table 4",
      "Chapter 9 Table 5",
    ]);
  });

  it("takes stated areas to the next ten-thousandth", () => {
    const filled = racewayFill({
      edition,
      raceway: "rigid-metal",
      conductors: [
        { count: 1, squareInches: 0.20001 },
        { count: 1, squareInches: 0.3 },
      ],
    });
    expect(filled.conductors.map((one) => one.squareInches)).toEqual([0.2001, 0.3]);
  });

  it("warns of three alike conductors that may wedge", () => {
    const three = { edition, raceway: "electrical-metallic-tubing", tradeSize: "2" } as const;
    // 2.067 / 0.642 = 3.2
    expect(racewayFill({ ...three, conductors: [thhn(3, "250 kcmil")] }).cautions).toEqual(["may-jam"]);
    expect(racewayFill({ ...three, conductors: [thhn(3, "3/0 AWG")] }).cautions).toEqual([]);
    expect(racewayFill({ ...three, conductors: [thhn(4, "250 kcmil")] }).cautions).toEqual([]);
    const unlike = [thhn(2, "250 kcmil"), thhn(1, "3/0 AWG")];
    expect(racewayFill({ ...three, conductors: unlike }).cautions).toEqual([]);
  });

  it("refuses what the tables do not list and what no trade size takes", () => {
    const tubing = { edition, raceway: "electrical-metallic-tubing" } as const;
    expect(issuesOf({ ...tubing, conductors: [thhn(40, "500 kcmil")] })).toEqual([
      ["out-of-range", "conductors"],
    ]);
    expect(issuesOf({ ...tubing, conductors: [thhn(1, "6 AWG")], added: [thhn(40, "500 kcmil")] })).toEqual([
      ["out-of-range", "added"],
    ]);
    expect(issuesOf({ ...tubing, tradeSize: "5", conductors: [thhn(1, "1250 kcmil")] })).toEqual([
      ["unknown-value", "tradeSize"],
      ["unknown-value", "conductors[0].size"],
    ]);
    expect(issuesOf({ ...tubing, conductors: [{ count: 1, size: "6 AWG", bare: "solid" }] })).toEqual([
      ["unknown-value", "conductors[0].size"],
    ]);
    for (const one of [
      { ...thhn(1, "3 AWG"), compact: true },
      { count: 1, size: "4 AWG", insulation: "TW", compact: true },
      { count: 1, size: "4 AWG", insulation: "RHW-2", compact: true, withoutCovering: true },
    ] as const)
      expect(issuesOf({ ...tubing, conductors: [one] })).toEqual([["unknown-value", "conductors[0].size"]]);
  });

  it("says where the table has no conductor of that kind at all", () => {
    expect(() =>
      racewayFill({
        edition,
        raceway: "electrical-metallic-tubing",
        conductors: [{ count: 1, size: "4 AWG", insulation: "TW", compact: true }],
      }),
    ).toThrow("compact TW is not in the table");
  });

  it("names the sizes that the table of a conductor has", () => {
    try {
      racewayFill({
        edition,
        raceway: "electrical-metallic-tubing",
        conductors: [{ count: 1, size: "3 AWG", insulation: "THHN", compact: true }],
      });
      expect.unreachable();
    } catch (error) {
      const { alternatives = [], expected } = (error as InputError).issues[0] ?? {};
      expect(expected).toBe("compact THHN from 6 AWG to 1000 kcmil, as the table lists it");
      expect([alternatives[0], alternatives.at(-1)]).toEqual(["6 AWG", "1000 kcmil"]);
      expect(alternatives).not.toContain("3 AWG");
    }
  });
});
