import { editionYears, type Role } from "bondmil";
import { markdownTable } from "../../../src/report/render/markdown.js";
import type { Collected } from "../../../tables/tools/generator/collected.js";
import { inWords } from "../in-words.js";
import { namesBehind } from "../role-coverage/basis.js";
import { changesOf } from "../tables/editions.js";

/** What each edition changed in the rules of a conductor; the same change of several sets of policies in one line. */
export function changesPart(role: Role, from: Collected): string {
  const names = new Set([...namesBehind(role), role]);
  const sets = Object.keys({ ...from.policies, ...from.ratingPolicies }).filter((set) => names.has(set));
  const lines = editionYears.slice(1).flatMap((after, i) => {
    const before = editionYears[i] ?? after;
    const alike = new Map<string, { readonly where: string[]; readonly cells: readonly string[] }>();
    for (const change of changesOf(from, names, before, after)) {
      const [where = "", field = ""] = change.what.split(": ");
      const cells = [
        change.isMove ? `section on ${inWords(field === "" ? where : field)}` : inWords(field),
        ...[change.before, change.after].map(say),
        change.evidence,
      ];
      const key = cells.join("|");
      const found = alike.get(key);
      const named = change.isMove && field === "" ? [] : [inWords(where)];
      if (found === undefined) alike.set(key, { where: named, cells });
      else found.where.push(...named);
    }
    return [...alike.values()].map(({ where, cells: [field = "", ...cells] }) => [
      after,
      where.length === sets.length && field !== ""
        ? field
        : [where.join(", "), field].filter((part) => part !== "").join(": "),
      ...cells,
    ]);
  });
  return [
    "## What each edition changed",
    "In the rules of this conductor, with the evidence before and after: a change next to `memory` or `carried` may be a gap in what was read. Cells of the tables are in [what changed between editions](../editions.md).",
    lines.length === 0
      ? "Nothing that the library knows of."
      : markdownTable(["edition", "what", "before", "since", "evidence"], lines),
  ].join("\n\n");
}

function say(value: string): string {
  return value === "true" ? "yes" : value === "false" ? "no" : inWords(value);
}
