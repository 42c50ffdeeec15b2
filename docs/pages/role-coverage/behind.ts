import { roleIds } from "bondmil";
import { isNameless } from "../../../corpus/tools/runner/hosts.js";
import type { Corpus, Entry } from "../../../corpus/tools/runner/model.js";
import { markdownTable } from "../../../src/report/render/markdown.js";
import { inWords } from "../in-words.js";

const text = `Cited checks, and how many of them are left when what weighs less is left out, one thing at a time and all of it: inputs with something of ours, question banks with homework
sites and files without author, text of machines and of unknown voice, and places without an address of their own. The latter are counted apart: some are found by their
title at a site, some not at all. An answer that hangs on what we assumed is not cited; where one is cited and has something of ours, every other value gives the same, or the code itself says what holds
when nothing is said: copper (110.5), the table for electrodes (250.66), any increase (250.122(B)). \`npm run corpus:assumed\` shows each.`;

/** The section on what stands behind the cited checks of each role. */
export function behindSection(entries: readonly Entry[], { sources }: Corpus): string {
  const isGiven = ({ check }: Entry): boolean => check.assumed.length === 0;
  const isNamed = ({ source }: Entry): boolean => !isNameless(source, sources);
  const isKnown = ({ check }: Entry): boolean =>
    check.voice !== "generated-text" && check.voice !== "unknown";
  const foundBy = (way: "by-title" | "no" | undefined) => (entry: Entry) =>
    sources[entry.source]?.findAgain === way;
  const isFound = foundBy(undefined);
  const line = (name: string, of: readonly Entry[]): readonly string[] => {
    const cited = of.filter(({ check }) => check.standing === "cited");
    const left = cited.filter((entry) => [isGiven, isNamed, isKnown, isFound].every((test) => test(entry)));
    const counts = [
      cited,
      ...[isGiven, isNamed, isKnown].map((test) => cited.filter(test)),
      cited.filter(foundBy("by-title")),
      cited.filter(foundBy("no")),
      left,
    ];
    return [name, ...counts.map((one) => `${one.length}`)];
  };
  return [
    "## What stands behind the checks",
    text,
    markdownTable(
      [
        "role",
        "cited",
        "nothing assumed",
        "with a name behind",
        "voice known",
        "found by title",
        "not found again",
        "none of these",
      ],
      [
        ...roleIds.map((role) =>
          line(
            inWords(role),
            entries.filter((entry) => entry.role === role),
          ),
        ),
        line("all", entries),
      ],
    ),
  ].join("\n\n");
}
