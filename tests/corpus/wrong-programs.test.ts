import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { editionYears, roleIds } from "bondmil";
import { describe, expect, it } from "vitest";
import { entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { validate } from "../../corpus/tools/runner/validate.js";
import {
  accountOf,
  disagreements,
  growthOf,
  judgeAll,
  settledAccount,
} from "../../corpus/tools/wrong-programs/account.js";
import { hasEffect } from "../../corpus/tools/wrong-programs/effect.js";
import { namedMistakes, programOf, wrongs } from "../../corpus/tools/wrong-programs/mistakes.js";
import { noticesOf } from "../../corpus/tools/wrong-programs/notice.js";
import { rightProgram } from "../../corpus/tools/wrong-programs/program.js";
import { pointsOf, tallyOf } from "../../corpus/tools/wrong-programs/tally.js";
import { wrongProgramsPage } from "../../docs/pages/wrong-programs/page.js";
import { check } from "./fixtures.js";

const read = (path: string): object => JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8"));
const { corpus } = validate(readDocuments());
const entries = entriesOf(corpus ?? { files: [] });
const judged = judgeAll(entries, namedMistakes);
const mistake = (id: string) => {
  const found = namedMistakes.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no mistake ${id}`);
  return found;
};

describe("the list of mistakes", () => {
  it("keeps its schema, names each once, and knows the roles", () => {
    const ajv = new Ajv2020({ strict: true, strictRequired: false, strictTypes: false, allErrors: true });
    for (const name of ["checks", "inputs"]) ajv.addSchema(read(`../../corpus/schema/${name}.schema.json`));
    ajv.addSchema(
      read("../../tables/schema/editions.schema.json"),
      "../../tables/schema/editions.schema.json",
    );
    const isList = ajv.compile(read("../../corpus/schema/wrong-programs.schema.json"));
    expect(isList(read("../../corpus/wrong-programs/mistakes.json")), JSON.stringify(isList.errors)).toBe(
      true,
    );
    expect(new Set(namedMistakes.map(({ id }) => id)).size).toBe(namedMistakes.length);
    expect(namedMistakes.flatMap(({ roles }) => roles).filter((role) => !roleIds.includes(role))).toEqual([]);
  });

  it("has at least 100 of them, and a program for each and no other", () => {
    expect(namedMistakes.length).toBeGreaterThanOrEqual(100);
    expect(Object.keys(wrongs).sort()).toEqual(namedMistakes.map(({ id }) => id).sort());
  });
});

describe("the wrong programs", () => {
  it("are noticed as the account says, which may only shrink", () =>
    expect(disagreements(judged, settledAccount)).toEqual([]));

  it("are unnoticed no more often than this", () => {
    const points = pointsOf(judged, settledAccount);
    const { unnoticed } = tallyOf(points, ({ year }) => year !== "2026");
    expect(unnoticed).toBeLessThanOrEqual(20);
    expect(tallyOf(points, ({ year }) => year === "2026").unnoticed).toBeLessThanOrEqual(20);
  });

  it.each(roleIds)("the naive one fails for the %s in every edition up to 2023", (role) => {
    const naive = judged.find((one) => one.mistake.id === "naive-twelve-lines" && one.role === role);
    const noticed = [...(naive?.notices.keys() ?? [])];
    expect(editionYears.filter((year) => year !== "2026" && !noticed.includes(year))).toEqual([]);
  });

  it("leave the library as it was", () => {
    const asked = {
      role: "main-bonding-jumper",
      year: "2017",
      input: {
        supply: { sets: [{ count: 4, size: "750 kcmil", material: "aluminum" }] },
        conductor: { material: "copper" },
      },
    } as const;
    const before = JSON.stringify(rightProgram(asked));
    const own = namedMistakes.filter(({ roles }) => roles.includes(asked.role));
    for (const one of own) programOf(one)(asked);
    expect(JSON.stringify(rightProgram(asked))).toBe(before);
  });
});

describe("a wrong program", () => {
  const aluminum = {
    ...check,
    input: {
      supply: { sets: [{ count: 1, size: "250 kcmil", material: "aluminum" }] },
      conductor: { material: "copper" },
    },
    expect: { size: "4 AWG" },
  } as const;
  const { figures: _figures, ...plain } = aluminum;
  const of = (one: object) =>
    [
      ...noticesOf(mistake("supply-material-ignored"), "main-bonding-jumper", [
        {
          role: "main-bonding-jumper",
          source: "handbook",
          check: { ...plain, holds: ["2017", "2020"], ...one } as never,
        },
      ]),
    ].map(([year, { by, stated }]) => [year, by, stated]);

  it("is noticed by a published answer, in the edition that its source states or by another", () => {
    expect(of({ stated: null })).toEqual([
      ["2017", "published", false],
      ["2020", "published", false],
    ]);
    expect(of({ stated: "2017", holds: ["2017"] })).toEqual([["2017", "published", true]]);
  });

  it("is noticed only by arithmetic where the answer is ours, and not where its answer is the same", () => {
    expect(of({ standing: "arithmetic", holds: ["2017"] })).toEqual([["2017", "arithmetic", false]]);
    const copper = { supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } };
    expect(of({ input: { ...plain.input, ...copper } })).toEqual([]);
  });

  it("is not noticed by what it does not show", () => {
    const wide = { expect: { size: "4 AWG", requiredArea: 41740 }, figures: { sum: 250000 } };
    expect(
      of({
        ...wide,
        input: { ...plain.input, supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } },
      }),
    ).toEqual([]);
  });

  it("has an effect where the grid shows one", () => {
    const early = mistake("cap-in-every-edition");
    expect(hasEffect(early, "main-bonding-jumper", "2011")).toBe(true);
    expect(hasEffect(early, "main-bonding-jumper", "2023")).toBe(false);
  });
});

describe("the account", () => {
  const one = mistake("intersystem-busbar-early");
  const none = judgeAll([], [one]);

  it("made without any check has every edition, by its effect", () => {
    const { unnoticed, withoutEffect } = accountOf(none);
    expect(unnoticed).toEqual({
      "intersystem-bonding-conductor": { [one.id]: ["2008", "2011", "2014"] },
    });
    expect(withoutEffect).toEqual({
      "intersystem-bonding-conductor": { [one.id]: ["2017", "2020", "2023", "2026"] },
    });
  });

  it("names what grew, and what is noticed though it is listed", () => {
    const made = accountOf(none);
    const settled = {
      ...made,
      unnoticed: { "intersystem-bonding-conductor": { [one.id]: ["2008", "2011"] } },
    } as const;
    expect(growthOf(made, settled)).toEqual([`${one.id} of the intersystem-bonding-conductor in 2014`]);
    expect(disagreements(none, settled)).toEqual([
      `${one.id} of the intersystem-bonding-conductor in 2014 is noticed by no check any more`,
    ]);
    const all = judgeAll(entries, [one]);
    expect(disagreements(all, made)[0]).toBe(
      `${one.id} of the intersystem-bonding-conductor in 2008 is noticed now: settle the account, it may only shrink`,
    );
  });

  it("is told on the page by letters, with what no check notices", () => {
    const text = wrongProgramsPage({ systems: [one] }, none, accountOf(none));
    expect(text).toContain("| `intersystem-busbar-early` | - | - | - |  |  |  |  |  |");
    expect(text).toContain("| intersystem bonding conductor | `intersystem-busbar-early` | 2008 to 2014 |");
  });
});
