import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { editionYears } from "bondmil";
import { afterAll, describe, expect, it } from "vitest";
import { violationSections } from "../../src/installation/violations/sections.js";
import type { ChannelsFile } from "../../tables/tools/generator/channels.js";
import { collect } from "../../tables/tools/generator/collect.js";
import {
  checkExtracts,
  type Extract,
  type ExtractsFile,
  levelsOf,
} from "../../tables/tools/generator/extracts.js";
import { known, type Seen, type Witness } from "../../tables/tools/generator/ladder.js";
import type { Said, Statement } from "../../tables/tools/generator/statements.js";
import { withstandLevels } from "../../tables/tools/generator/withstand-levels.js";
import { copyRepository } from "./repository-copy.js";

const copy = copyRepository();
afterAll(copy.remove);

/** Everything up to the description of the real files is invented, for the rule alone. */
function witness(edition: string | null, channel: Witness["channel"], more: Partial<Witness> = {}): Witness {
  const dated = edition === null ? "undated" : "stated";
  return { source: `invented-${edition}-${channel}`, edition, dated, channel, ...more };
}

function seen(of: Witness, says: Seen["says"] = "agrees"): Seen {
  return { of, says };
}

describe("the rule of evidence", () => {
  const before = seen(witness("2011", "derived-official-code"));
  const after = seen(witness("2017", "print"));

  it("never calls single what rests on an inferred edition: alone it carries, beside an edition that agrees it brackets", () => {
    const inferred = seen(witness("2014", "print", { dated: "inferred" }));
    expect(known([inferred], "2014").level).toBe("carried");
    expect(known([inferred, after], "2014").level).toBe("bracketed");
    expect(known([inferred, seen(witness("2014", "print"))], "2014").level).toBe("single");
    const both = [inferred, seen(witness("2014", "state-reprint", { dated: "inferred" }))];
    expect(known(both, "2014").level).toBe("carried");
  });

  it("carries what stands at another place on one side, and knows nothing of what differs there", () => {
    expect(known([before, after], "2014").level).toBe("bracketed");
    expect(known([before, { ...after, says: "moved" }], "2014").level).toBe("carried");
    expect(known([before, { ...after, says: "differs" }], "2014").level).toBe("memory");
    expect(known([{ ...after, says: "moved" }], "2014").level).toBe("memory");
  });

  it("names the sources that a level rests on", () => {
    const support = seen(witness(null, null, { holds: ["2014"] }));
    expect(known([before, after, support], "2014").sources).toEqual([
      "invented-2011-derived-official-code",
      "invented-2017-print",
      "invented-null-null",
    ]);
    expect(known([before, seen(witness("2014", "print"))], "2014").sources).toEqual(["invented-2014-print"]);
  });
});

describe("extracts", () => {
  const said: Said = { at: "250.9(B)", is: { cap: "set" } };
  const statement: Statement = {
    file: "policies",
    path: ["roof", "cap"],
    said: { "2014": said, "2017": said, "2020": { at: "250.9", is: { cap: "set" } } },
  };
  const sources = { invented: {} };
  const channels = { editions: {}, readThrough: { invented: "print" } } as unknown as ChannelsFile;
  const file = (passage: Said & { readonly judged?: string }, more: Partial<Extract> = {}): ExtractsFile => ({
    source: "invented",
    extracts: [
      { edition: "2017", dated: "stated", channel: "print", policies: { roof: { cap: passage } }, ...more },
    ],
  });
  const level = (one: ExtractsFile, year: "2014" | "2017" | "2020") =>
    levelsOf([statement], [one])("policies", ["roof", "cap"], year).level;
  const faults = (one: ExtractsFile) => checkExtracts(one, [statement], sources, channels);

  it("give the statement that they bear out its level, and its neighbors theirs", () => {
    expect((["2014", "2017", "2020"] as const).map((year) => level(file(said), year))).toEqual([
      "carried",
      "single",
      "carried",
    ]);
    expect(faults(file(said))).toEqual([]);
  });

  it("bear out a section that is cited without its paragraph, and no paragraph by the section alone", () => {
    expect(level(file({ ...said, at: "250.9(B)(2)" }), "2017")).toBe("single");
    expect(level(file({ ...said, at: "250.9" }), "2017")).toBe("memory");
  });

  it("are refused where they contradict what we say, until somebody judges which is right", () => {
    const other = { at: "250.9(B)", is: { cap: "none" } };
    expect(faults(file(other))).toEqual([
      'contradicts policies/roof/cap of 2017: it says {"cap":"none"} at 250.9(B), we say {"cap":"set"} at 250.9(B); judge which is right',
    ]);
    expect(faults(file({ ...said, at: "250.8" }))).toHaveLength(1);
    const judged = file({ ...other, judged: "invented" });
    expect([faults(judged), level(judged, "2017"), level(judged, "2014")]).toEqual([[], "memory", "memory"]);
    expect(faults(file({ ...said, judged: "invented" }))).toEqual([
      "has a judgment on policies/roof/cap, where it says what we do",
    ]);
  });

  it("are refused where their source, their kind or their statement is unknown", () => {
    expect(checkExtracts(file(said), [statement], {}, channels)).toEqual([
      "invented is not in the register of sources",
    ]);
    expect(faults(file(said, { datedBy: "nobody" }))).toEqual(["nobody is not in the register of sources"]);
    expect(faults(file(said, { channel: null }))).toHaveLength(1);
    expect(faults(file(said, { policies: { roof: { hat: said } } }))).toEqual([
      "speaks of policies/roof/hat, which there is not",
    ]);
  });
});

describe("the levels of the wording", () => {
  const tables = join(import.meta.dirname, "../../tables");
  const { sections, placements, ratingPolicies } = collect(tables).collected;
  const at = (topic: string, year: "2008" | "2014" | "2017" | "2026") =>
    sections[topic]?.sections[year].slice(0, 2);

  it("do not cite the busbar of 2017 in the editions before it", () => {
    expect(at("intersystem-busbar", "2008")?.[0]).toBe("250.94");
    expect(at("intersystem-busbar", "2014")).toEqual(["250.94", "carried"]);
    expect(at("intersystem-busbar", "2017")).toEqual(["250.94(B)", "single"]);
  });

  it("cite the opening sentence of 2026, and its limit by its letter", () => {
    expect(at("equipment-grounding-by-device", "2026")).toEqual(["250.122", "carried"]);
    const { rule, cap } = ratingPolicies["equipment-grounding-conductor"]?.["2026"].basis ?? {};
    expect([rule?.[0], cap?.[0]]).toEqual(["250.122", "250.122(A)"]);
  });

  it("are single for what was read in 2017", () => {
    for (const topic of [
      "number-of-disconnects",
      "emergency-disconnect-as-service",
      "emergency-disconnect-ahead",
      "structural-metal-grounded",
    ])
      expect([topic, at(topic, "2017")?.[1]]).toEqual([topic, "single"]);
    for (const fact of ["assembly-divided", "emergency-disconnect-exists"])
      expect([fact, placements[fact]?.citations["2017"][1]]).toEqual([fact, "single"]);
  });

  it("name a source wherever they are more than memory, and none is single without an edition that is stated", () => {
    const all = Object.values(sections).flatMap((topic) => editionYears.map((year) => topic.sections[year]));
    expect(all.filter(([, level, own]) => level !== "memory" && own.length === 0)).toEqual([]);
    const nom = JSON.parse(
      readFileSync(join(tables, "extracts/nom-001-sede-2012.json"), "utf8"),
    ) as ExtractsFile;
    expect(nom.extracts.map(({ dated, datedBy }) => [dated, datedBy])).toEqual([
      ["stated", "nema-on-mexican-code-2012"],
    ]);
  });
});

describe("the levels of the constants, and of what violations cite", () => {
  const tables = join(import.meta.dirname, "../../tables");
  const { collected } = collect(tables);
  const conductors = collected.tables.find(({ id }) => id === "conductor-properties");

  it("are those of passages: without one a constant is from memory, and what is no channel only carries", () => {
    expect(collected.withstandLevels).toEqual({
      formula: "single",
      sizes: "bracketed",
      crossCheck: "carried",
    });
    if (conductors === undefined) throw new Error("the table of conductors is gone");
    const unread = withstandLevels(collected.withstand, levelsOf([], []), conductors);
    expect(unread).toEqual({ formula: "memory", sizes: "bracketed", crossCheck: "memory" });
  });

  it("name their sources wherever they are more than memory", () => {
    const computed = Object.values(collected.sections).map((topic) => topic.sections);
    const cited = Object.values(violationSections).flat();
    expect(cited.length).toBeGreaterThan(20);
    for (const topic of cited)
      for (const year of editionYears) {
        const { section, evidence } = topic[year];
        const same = computed.filter((own) => own[year][0] === section && own[year][1] === evidence);
        const sources = same.flatMap((own) => own[year][2]);
        expect([section, year, sources.length > 0]).toEqual([section, year, evidence !== "memory"]);
      }
  });

  it("follow the text of 2023 in its paragraph on ranges, which was an exception before", () => {
    const at = (year: "2020" | "2023") =>
      collected.sections["frame-by-grounded-conductor"]?.sections[year][0];
    expect([at("2020"), at("2023")]).toEqual(["250.140 Exception", "250.140(B)"]);
  });
});

describe("a level that is typed by hand", () => {
  it("is refused in a file of statements, and taken for stale in a file of evidence", () => {
    const statements = copy.path("tables/sections.json");
    const text = readFileSync(statements, "utf8");
    const typed = JSON.parse(text) as { topics: Record<string, { sections: Record<string, unknown>[] }> };
    const [first] = typed.topics["water-pipe-continuity"]?.sections ?? [];
    Object.assign(first ?? {}, { level: "confirmed" });
    writeFileSync(statements, JSON.stringify(typed));
    expect(copy.generate()).toEqual({ ok: false, said: expect.stringContaining("additional properties") });
    writeFileSync(statements, text);

    const evidence = copy.path("tables/evidence/sections.json");
    const computed = readFileSync(evidence, "utf8");
    writeFileSync(evidence, computed.replaceAll('"memory"', '"confirmed"'));
    expect(copy.generate().ok).toBe(true);
    expect(readFileSync(evidence, "utf8")).toBe(computed);
  });
});
