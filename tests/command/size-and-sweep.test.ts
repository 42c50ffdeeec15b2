import {
  editionYears,
  equipmentGroundingConductor,
  explain,
  mainBondingJumper,
  render,
  resultDocument,
  roles,
  rowsDocument,
  size,
  sweep,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { runHere } from "./run-here.js";

const jumper = ["size", "main-bonding-jumper", "--edition", "2023", "--material", "copper"];
const input = {
  code: { year: "2023" },
  supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
  conductor: { material: "copper" },
} as const;

describe("bondmil size", () => {
  it("sizes by options as the library does, in each format", async () => {
    const result = size(mainBondingJumper, input);
    for (const supply of ["3 x 600 kcmil Cu", "3x600kcmil copper", "1 x 600 kcmil cu + 2 x 600MCM Copper"]) {
      const { code, output } = await runHere([...jumper, "--supply", supply, "--as", "json"]);
      expect([code, JSON.parse(output).outcome]).toEqual([0, result.outcome]);
    }
    const words = [...jumper, "--supply", "3 x 600 kcmil Cu"];
    expect(JSON.parse((await runHere([...words, "--as", "json"])).output)).toEqual(result);
    for (const as of ["text", "markdown", "csv", "html"] as const)
      expect((await runHere([...words, "--as", as])).output).toBe(render(resultDocument(result), { as }));
    expect(explain(result)).toContain("250 kcmil");
  });

  it("asks every role the plainest question by what it goes by", async () => {
    const by = {
      supply: ["--supply", "4/0 AWG copper", "--material", "copper"],
      rating: ["--amperes", "200", "--material", "copper"],
      current: ["--amperes", "5", "--material", "copper"],
      conductor: ["--conductor", "#2", "--material", "copper"],
      "named-size": [],
    };
    for (const { id, by: what } of Object.values(roles)) {
      const { code, output } = await runHere(["size", id, "--edition", "2020", ...by[what], "--as", "json"]);
      expect([id, code, JSON.parse(output).role]).toEqual([id, 0, id]);
    }
  });

  it("takes whatever the role takes as a JSON object", async () => {
    const given = { input: JSON.stringify({ ...input, code: { year: "2011" } }) };
    const { output } = await runHere(["size", "main-bonding-jumper", "-", "--as", "json"], given);
    expect(JSON.parse(output)).toEqual(size(mainBondingJumper, { ...input, code: { year: "2011" } }));
    const wrong = await runHere(["size", "main-bonding-jumper", "-"], { input: '{"code":{"year":"2020"}}' });
    expect([wrong.code, wrong.errors]).toEqual([
      2,
      expect.stringMatching(/^bondmil: standard input is refused, 2 things are wrong:\n {2}supply: /),
    ]);
  });

  it.each([
    ["size", "requires a role: one of main-bonding-jumper"],
    ["size main-bonding-jumpers", "did you mean main-bonding-jumper?"],
    ["size main-bonding-jumper --edition 2020", "missing: --supply, --material"],
    ["size main-bonding-jumper --edition 2020 --amperes 3", "missing: --supply"],
    ["size intersystem-bonding-conductor --edition 2020 --amperes 3", "does not go by --amperes"],
    ["size main-bonding-jumper a.json --edition 2020", "leave it out beside a file"],
    ["size equipment-grounding-conductor --edition 2020 --material copper --amperes ten", 'know "ten"'],
    ["sweep main-bonding-jumper", "--supply-material and --material must be given"],
    ["sweep equipment-grounding-conductor --material copper --sets 2", "leave out --sets"],
    ["sweep intersystem-bonding-conductor", "goes by neither"],
    ["sweep main-bonding-jumper --supply-material copper --material copper --sizes 4", "4 AWG or 4/0 AWG"],
    ["sweep main-bonding-jumper jumper.json", "sweep takes no path"],
  ])("%s is told what is wrong with it", async (words, message) => {
    const { code, output, errors } = await runHere(words.split(" "));
    expect([code, output]).toEqual([3, ""]);
    expect(errors).toContain(message);
  });

  it("refuses what the edition refuses, with its place", async () => {
    const words = ["size", "equipment-grounding-conductor", "--edition", "2020", "--material", "copper"];
    const { code, errors } = await runHere([...words, "--amperes", "90000"]);
    expect([code, errors]).toEqual([2, expect.stringContaining("amperes: expected at most 6000 A")]);
    const supply = await runHere([...jumper, "--supply", "3 x 600 kcmil iron"]);
    expect([supply.code, supply.errors]).toEqual([3, expect.stringContaining("such as '4 x 500 kcmil Al'")]);
    const lines = await runHere([...jumper, "--supply", "2\n3 x 600 kcmil Cu"]);
    expect([lines.code, lines.output]).toEqual([3, ""]);
  });
});

describe("bondmil sweep", () => {
  it("has the rows of the library, one metal after the other", async () => {
    const words = [
      "sweep",
      "main-bonding-jumper",
      "--supply-material",
      "copper,aluminum",
      "--material",
      "copper",
    ];
    const more = ["--sizes", "600 kcmil,4/0", "--sets", "1,4", "--editions", "2017,2020"];
    const rows = (["copper", "aluminum"] as const).flatMap((supplyMaterial) =>
      sweep(mainBondingJumper, {
        editions: ["2017", "2020"],
        supplyMaterial,
        material: "copper",
        sizes: ["600 kcmil", "4/0 AWG"],
        counts: [1, 4],
      }),
    );
    expect(rows).toHaveLength(16);
    const lines = await runHere([...words, ...more, "--as", "json-lines"]);
    expect(
      lines.output
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line)),
    ).toEqual(rows);
    expect((await runHere([...words, ...more])).output).toBe(render(rowsDocument(rows), { as: "csv" }));
  });

  it("goes by devices where the role does", async () => {
    const { output } = await runHere(["sweep", "equipment-grounding-conductor", "--material", "aluminum"]);
    const rows = sweep(equipmentGroundingConductor, { editions: editionYears, material: "aluminum" });
    expect(output.trimEnd().split("\r\n")).toHaveLength(rows.length + 1);
  });
});
