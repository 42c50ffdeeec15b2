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

const twoOfOne = arrangementsOf(mainBondingJumper, {
  code: { year: "2017" },
  enclosures: ["A", "B"].map((id) => ({
    id,
    supply: { sets: [{ count: 2, size: "1 AWG", material: "copper" }] },
  })),
  conductor: { material: "aluminum" },
});

describe("arrangements", () => {
  it("say in the head of a column what is not permitted, by which section, which bar meets an area, and which reading would change a size", () => {
    const derived = arrangementsOf(systemBondingJumper, {
      code: { year: "2023" },
      source: { id: "T1", outdoors: true },
      enclosures: [{ id: "P1", supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] } }],
      conductor: { material: "copper", form: "bus" },
    });
    const [, grid] = arrangementsDocument(derived).parts;
    if (grid?.kind !== "table") throw new TypeError("what differs is a table");
    expect(grid.head).toEqual([
      "conductor",
      "A jumper in each enclosure, not permitted",
      "One jumper at the source",
      "Jumpers at the source and at the disconnect",
    ]);
    expect(grid.rows[0]?.slice(0, 3)).toEqual(["section", "not permitted [250.30(C)]", "250.30(A)(1)"]);
    const text = written(derived);
    expect(text).toContain("a bar of 0.25 in. x 0.25 in. meets it");
    expect(text).toContain(
      'read as "holds for every supply"; "holds for large supplies only" would require 16,510 cmil',
    );
    expect(text).toContain("not affiliated");
  });

  it("begin with what differs, then what is not permitted and why; what is the same is one folded line", () => {
    const document = arrangementsDocument(twoOfOne);
    const headings = document.parts.flatMap((part) => (part.kind === "heading" ? [part.text] : []));
    expect(headings).toEqual([
      "What differs",
      "Not permitted",
      "Why",
      "Connections",
      "What stays the same",
      "Cautions",
      "Notes",
    ]);
    const folded = document.parts.flatMap((part) => (part.kind === "list" ? (part.folded ?? []) : []));
    expect(folded).toEqual(["2 the same in every column"]);
  });

  it("hold the metal of each whole choice against the first, in feet and pounds", () => {
    // Aluminum Electrical Conductor Handbook, table 4-4: 61.07 lb and 97.15 lb in 1,000 ft of solid 2 and 1/0 AWG; 2 percent for the lay.
    const [, grid] = arrangementsDocument(twoOfOne).parts;
    if (grid?.kind !== "table") throw new TypeError("what differs is a table");
    expect(grid.rows.at(-1)).toEqual([
      "metal, if each conductor is 100 ft long",
      "200 ft, 12.4 lb",
      "100 ft, 9.9 lb; smaller than the first",
    ]);
    expect(written(twoOfOne)).not.toContain("Total metal");
  });

  it("names each caution once, with its section and its places", () => {
    const lines = written(twoOfOne).split("\n");
    const small = lines.filter((line) => line.includes("smaller than 1/0 AWG they may be so"));
    expect(small.map((line) => line.slice(2, line.indexOf(" Conductors")))).toEqual([
      "A jumper in each enclosure: A:",
      "A jumper in each enclosure: B:",
      "One jumper in a listed assembly: A:",
      "One jumper in a listed assembly: B:",
    ]);
    const unnamed = lines.filter((line) => line.includes("does not name aluminum"));
    expect(unnamed).toHaveLength(1);
    expect(unnamed[0]).toContain(
      "[250.28(A)] At: main bonding jumper A, main bonding jumper B (A jumper in each enclosure);",
    );
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
