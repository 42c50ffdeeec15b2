import { type Check, checkDocument, checkOf, render } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkFound, checkRest, piece } from "../installation/found.js";
import { demo, installation, service, setsOf } from "../installation/installations.js";

const write = (check: Check): string => render(checkDocument(check), { as: "text", width: 10_000 });
const onOneLine = (text: string): string => text.replace(/\s+/g, " ");
const written = checkOf(demo("print-works"));
const lines = write(written).split("\n");

/** A paragraph as one line: its lines have one indent and end before an empty line. */
function paragraphAt(place: number): string {
  const [first = "", ...rest] = lines.slice(place);
  const indent = /^ */.exec(first)?.[0] ?? "";
  const end = rest.findIndex((line) => line === "" || /^ */.exec(line)?.[0] !== indent);
  return [first, ...rest.slice(0, end).map((line) => line.trim())].join(" ");
}

describe("a written check", () => {
  it("says of every finding what is there, what is required, by how much it is short, and what can be done", () => {
    const under = (heading: string) => paragraphAt(lines.indexOf(heading) + 1);
    expect(under("SHORT: main bonding jumper PV")).toBe(
      "  there is: 1 x 6 AWG copper at PV; required: 1 x 4 AWG copper (at least 41,740 cmil), neutral bar of PV to equipment grounding bar of PV; short by: 15,500 cmil each; section: 250.28(D)(1); judged by: NFPA 70-2020, that of the installation; what to do: replace it by 1 x 4 AWG copper",
    );
    expect(under("TOO FEW: grounded conductor lateral")).toBe(
      "  there is: 4 x 1/0 AWG copper; required: 5 x 1/0 AWG copper (at least 105,600 cmil), neutral terminal of vault to grounded conductor in CT cabinet; short by: 1 more; section: 250.24(C)(2); judged by: NFPA 70-2020, that of the installation; what to do: install 1 x 1/0 AWG copper, neutral terminal of vault to grounded conductor in CT cabinet",
    );
    expect(under("NOT PERMITTED: old jumper behind the cover at T2 case")).toBe(
      '  there is: "old jumper behind the cover", 1 x 1/0 AWG copper at T2 case; section: 250.30(A); judged by: NFPA 70-2020, that of the installation; what to do: remove it',
    );
    expect(under("MISSING: other piping bonding jumper compressed air")).toContain(
      "; or bond by the equipment grounding conductor of the circuit that is likely to energize it [250.104(B)]",
    );
  });

  it("lists findings by what is to be done, then what is as required in one line with its reserves", () => {
    const headings = lines.filter((_, i) => /^-+$/.test(lines[i + 1] ?? ""));
    expect(headings.slice(0, 5)).toEqual([
      "To be removed",
      "To be moved",
      "To be replaced",
      "To be installed",
      "As required",
    ]);
    expect(paragraphAt(lines.indexOf("As required") + 2)).toBe(
      "30 of 40 as required, 27 of them without a reserve. With a reserve, of one conductor: main bonding jumper MSB 25,000 cmil; supply-side bonding jumper entrance 25,000 cmil; equipment grounding conductor F5 62,200 cmil.",
    );
  });

  it("says evidence once, and by name only where it is weaker", () => {
    const one = () => write(checkOf({ ...demo("print-works"), installed: { rest: "as-scheduled" } }));
    const evidence = (text: string) => text.split("\n").filter((line) => line.startsWith("Evidence: "));
    expect(evidence(one())).toEqual(["Evidence: the same in the editions before and after"]);
    const weak = {
      ...written,
      conductors: written.conductors.map((c, i) => (i === 0 ? { ...c, evidence: "memory" as const } : c)),
    };
    expect(evidence(write(weak))).toEqual([
      "Evidence: the same in the editions before and after; weaker, from memory: main bonding jumper MSB",
    ]);
  });

  it("says that nothing is listed, that nothing is to be done, and what may stay", () => {
    const bare = installation({ services: [service({ electrodes: [] })] }, "2017");
    expect(write(checkOf(bare))).toContain("Nothing is listed as installed. There is nothing to check.");
    expect(write(checkOf(bare))).not.toMatch(/MISSING|As required/);
    expect(checkDocument(checkOf(bare)).rows).toMatchObject([
      { id: "", verdict: "nothing-listed", finding: null },
    ]);
    const rest = write(checkRest(bare, []));
    expect(rest).toContain("No findings. 0 of 2 as required. 2 taken as scheduled.");
    const meter = {
      ...service({ electrodes: [] }),
      boxes: [{ id: "M1", kind: "meter", bondedBy: "grounded-conductor" }],
    };
    const runs = ["M1", "D1"].map((to, i) => ({
      id: `R${i}`,
      from: i === 0 ? "U1" : "M1",
      to,
      supply: setsOf(1, "3/0 AWG"),
      raceways: { count: 1, kind: "nonmetallic" },
    }));
    const needless = checkRest(installation({ services: [{ ...meter, runs } as never] }, "2017"), [
      piece("supply-side-bonding-jumper M1", "4 AWG"),
    ]);
    expect(onOneLine(write(needless))).toContain(
      "Not required, and may stay: supply-side bonding jumper M1 (1 x 4 AWG copper).",
    );
  });

  it("names the edition that something was built under, and where jumpers are otherwise than drawn", () => {
    const bare = installation({ services: [service({ electrodes: [] })] }, "2023");
    const old = piece("main-bonding-jumper D1", "4 AWG", { edition: "2011" });
    expect(onOneLine(write(checkRest(bare, [old])))).toContain(
      "judged by: NFPA 70-2011 as printed, under which it was built;",
    );
    expect(onOneLine(write({ ...written, arrangedAsFound: ["T1"] }))).toContain(
      "The jumpers of T1 were found at another lawful place than drawn",
    );
  });

  it("has the findings as rows, and the conductors without any", () => {
    const rows = checkDocument(written).rows;
    expect(rows).toHaveLength(written.findings.length + 30);
    expect(rows.find(({ id }) => id === "grounded-conductor lateral")).toMatchObject({
      todo: "install",
      finding: "too-few",
      foundQuantity: 4,
      foundSize: "1/0 AWG",
      requiredQuantity: 5,
      requiredSize: "1/0 AWG",
      requiredMaterial: "copper",
      requiredFrom: "neutral terminal of vault",
      requiredTo: "grounded conductor in CT cabinet",
      more: 1,
      shortBy: null,
      remedies: "install 1 x 1/0 AWG copper, neutral terminal of vault to grounded conductor in CT cabinet",
      edition: "2020",
      editionOf: "installation",
    });
    expect(rows.find(({ id }) => id === "equipment-grounding-conductor F5")).toMatchObject({
      finding: null,
      verdict: "as-required",
      reserve: 62_200,
    });
  });

  it("holds every finding in every format", () => {
    const check = checkFound(installation({ services: [service({ electrodes: [] })] }, "2017"), [
      piece("main-bonding-jumper D1", "4 AWG"),
    ]);
    for (const as of ["text", "markdown", "html"] as const) {
      const text = render(checkDocument(check), { as });
      for (const said of ["SHORT", "MISSING", "1 x 1/0 AWG copper", "250.28(D)(1)", "63,860 cmil"])
        expect(text.replace(/\s+/g, " ")).toContain(said);
    }
    const csv = render(checkDocument(check), { as: "csv" }).split("\n");
    expect(csv[1]).toContain("replace,short,main-bonding-jumper D1,with-findings");
    expect(csv[2]).toContain("install,missing,grounded-conductor R1,with-findings");
  });
});
