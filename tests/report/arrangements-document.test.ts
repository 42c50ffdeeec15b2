import {
  type ArrangementComparison,
  arrangementsDocument,
  arrangementsOf,
  mainBondingJumper,
  render,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** Without line breaks inside of sentences. */
const written = (comparison: ArrangementComparison): string =>
  render(arrangementsDocument(comparison), { as: "text", width: 10_000 });

describe("arrangements", () => {
  it("says what is not permitted, which bar meets an area, and which reading would change a size", () => {
    const derived = arrangementsOf(systemBondingJumper, {
      code: { year: "2023" },
      source: { id: "T1", outdoors: true },
      enclosures: [{ id: "P1", supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] } }],
      conductor: { material: "copper", form: "bus" },
    });
    const text = written(derived);
    expect(text).toContain("A jumper in each enclosure (250.30(C)): NOT PERMITTED here");
    expect(text).toContain("a bar of 0.25 in. x 0.25 in. meets it");
    expect(text).toContain(
      'read as "holds for every supply"; "holds for large supplies only" would require 16,510 cmil',
    );
    expect(text).toContain("not affiliated");
  });

  it("names each caution once, with its section", () => {
    const service = arrangementsOf(mainBondingJumper, {
      code: { year: "2017" },
      enclosures: ["A", "B"].map((id) => ({
        id,
        supply: { sets: [{ count: 2, size: "1 AWG", material: "copper" }] },
      })),
      conductor: { material: "aluminum" },
    });
    const lines = written(service).split("\n");
    const small = lines.filter((line) => line.includes("smaller than 1/0 AWG they may be so"));
    expect(small.map((line) => line.slice(2, line.indexOf(" Conductors")))).toEqual([
      "A jumper in each enclosure: A:",
      "A jumper in each enclosure: B:",
      "One jumper in a listed assembly: A:",
      "One jumper in a listed assembly: B:",
    ]);
    // What is not permitted stands before all else.
    expect(lines.indexOf(small[0] ?? "")).toBeLessThan(
      lines.findIndex((line) => line.includes("): permitted")),
    );
    expect(
      lines.some((line) => line.includes("does not name aluminum") && line.endsWith("[250.28(A)]")),
    ).toBe(true);
  });

  it("give a row for each conductor of each arrangement", () => {
    const service = arrangementsOf(mainBondingJumper, {
      code: { year: "2020" },
      enclosures: [{ id: "D1", supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] } }],
      conductor: { material: "copper" },
    });
    const { rows } = arrangementsDocument(service);
    expect(rows).toHaveLength(service.arrangements.flatMap(({ conductors }) => conductors).length);
    expect(rows[0]).toMatchObject({
      arrangement: "jumper-in-each-enclosure",
      role: "main-bonding-jumper",
      size: "4 AWG",
    });
  });
});
