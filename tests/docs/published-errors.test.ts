import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Check, Corpus, Dispute } from "../../corpus/tools/runner/model.js";
import { mistakes } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { mistakeSentences } from "../../docs/pages/published-errors/mistake-sentences.js";
import { publishedErrorsPage } from "../../docs/pages/published-errors/page.js";
import { directionOf, tallyOf } from "../../docs/pages/published-errors/tally.js";
import type { Source } from "../../tables/tools/source.js";
import { check, disputed, fileOf, source } from "../corpus/fixtures.js";

const says = mistakeSentences(readDocuments().checksSchema);

function corpusOf(checks: readonly Check[], changes: Partial<Source> = {}): Corpus {
  return { files: [fileOf(checks)], sources: { handbook: { ...source, ...changes } } } as unknown as Corpus;
}

function disputedAs(id: string, changes: Partial<Dispute>, expect = disputed.expect): Check {
  return { ...disputed, id, expect, dispute: { ...(disputed.dispute as Dispute), ...changes } };
}

const derived: Check = { ...check, id: "derived", standing: "arithmetic" };
const wrong = disputedAs("wrong", {});
const open = disputedAs("open", { mistake: null });

describe("the tally of published errors", () => {
  it("counts what others print, and as wrong only what the text leaves no room for", () => {
    const { answers, errors, open: left } = tallyOf(corpusOf([check, derived, wrong, open]));
    expect(answers.map((one) => one.check.id)).toEqual(["one-service", "wrong", "open"]);
    expect(errors.map((one) => one.check.id)).toEqual(["wrong"]);
    expect(left.map((one) => one.check.id)).toEqual(["open"]);
  });

  it("does not count a source that repeats another one", () => {
    expect(tallyOf(corpusOf([check, wrong], { copies: "another" })).answers).toEqual([]);
  });

  it("tells smaller from larger by the area", () => {
    const direction = (one: Check) => tallyOf(corpusOf([one])).errors.map(directionOf);
    expect(direction(wrong)).toEqual(["smaller"]);
    expect(direction(disputedAs("larger", {}, { size: "1/0 AWG" }))).toEqual(["larger"]);
    expect(direction(disputedAs("none", {}, { outcome: "not-required" }))).toEqual(["other"]);
    expect(direction(disputedAs("same", {}, { size: "4 AWG" }))).toEqual(["other"]);
  });
});

describe("the page of published errors", () => {
  const ten = Array.from({ length: 9 }, (_, index): Check => ({ ...check, id: `right-${index}` }));
  const page = publishedErrorsPage(corpusOf([...ten, wrong]), says);

  it("has counts, shares from ten answers on, and no share of fewer", () => {
    expect(page).toContain("| contradict the code | 1 | 1 |");
    expect(page).toContain("| share | 10 % |  |");
    expect(page).toContain("| handbook | 1 | 1 | 10 | 1 | 10 % | 1 |  |");
    expect(page).toContain("| 2017 | 10 | 1 | 10 % |");
    expect(page).toContain("| main bonding jumper | 10 | 1 | 10 % |");
    expect(publishedErrorsPage(corpusOf([wrong]), says)).toContain("| handbook | 1 | 1 | 1 | 1 |  | 1 |  |");
  });

  it("gives its shares without what weighs less", () => {
    const askers: Check = { ...wrong, id: "asked", voice: "asker" };
    const machine: Check = { ...wrong, id: "machine", voice: "generated-text" };
    const ours: Check = { ...check, id: "ours", assumed: ["supply"] };
    const tenAndMore = [...ten, wrong, askers, machine, ours];
    const weighed = publishedErrorsPage(corpusOf(tenAndMore), says);
    expect(weighed).toContain("| all published answers | 12 | 1 | 1 | 2 | 17 % |");
    expect(weighed).toContain("| without text that a machine wrote | 11 | 1 | 1 | 1 | 9 % |");
    expect(weighed).toContain("| only where the source gives the whole input | 11 | 1 | 1 | 2 | 18 % |");
    expect(weighed).toContain("| all of these left out | 10 | 1 | 1 | 1 | 10 % |");
    expect(weighed).toContain("which are not published answers | 13 | 1 | 1 | 3 | 23 % |");
    expect(weighed).toContain("| wrong guesses of askers, not counted | 1 | 1 |");
    expect(weighed).toContain("| author | 11 | 1 | 9 % | 10 | 1 | 10 % |");
    expect(weighed).toContain("| 2017 | 12 | 2 | 17 % | 10 | 1 | 10 % |");
    const bank = publishedErrorsPage(corpusOf(tenAndMore, { kind: "question-bank" }), says);
    expect(bank).toContain("files without author | 0 | 0 | 0 | 0 |  |");
    const lost = publishedErrorsPage(corpusOf(tenAndMore, { url: null, findAgain: "no" }), says);
    expect(lost).toContain("| without what has no address of its own | 0 | 0 | 0 | 0 |  |");
  });

  it("explains every mistake", () => {
    for (const mistake of mistakes) expect(page).toContain(`| \`${mistake}\` | ${says[mistake]} |`);
    expect(page).toContain(`| \`wrong-row\` | ${says["wrong-row"]} | 1 | 1 | 1 | 0 |`);
  });

  it("names a source by title and place, and nothing else of it", () => {
    const url = "https://example.org/some-author";
    const named = publishedErrorsPage(corpusOf([wrong], { url, publisher: "Some Author" }), says);
    expect(named).toContain(
      "| A handbook | page 1 | 2017 | main bonding jumper | 6 AWG | 4 AWG | Table 250.102(C)(1) | `wrong-row` | `wrong` |",
    );
    expect(named).not.toMatch(/some.author/i);
  });

  it("adds up in the written page", () => {
    const written = readFileSync(new URL("../../docs/published-errors.md", import.meta.url), "utf8");
    const part = (title: string): string => written.split(`\n## ${title}\n`)[1]?.split("\n## ")[0] ?? "";
    const sum = (title: string, column: number): number =>
      [...part(title).matchAll(/^\|(?! ---)(.*)\|$/gm)]
        .slice(1)
        .map((row) => Number(row[1]?.split("|")[column]))
        .reduce((total, one) => total + one, 0);
    const total = Number(/contradict the code \| (\d+)/.exec(part("At a glance"))?.[1]);
    expect(total).toBeGreaterThan(20);
    expect(sum("By kind of source", 4)).toBe(total);
    expect(sum("By mistake", 2)).toBe(total);
    expect(sum("By edition", 2)).toBe(total);
    expect(sum("By conductor", 2)).toBe(total);
    expect(part("The answers").match(/^\| /gm)).toHaveLength(total + 2);
  });
});
