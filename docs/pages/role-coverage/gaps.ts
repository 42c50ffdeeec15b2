import { type EditionYear, editionYears, type Role, roleIds } from "bondmil";
import { countHosts } from "../../../corpus/tools/runner/hosts.js";
import type { Corpus, Entry } from "../../../corpus/tools/runner/model.js";
import { markdownTable } from "../../../src/report/render/markdown.js";
import type { Sources } from "../../../tables/tools/source.js";
import { inWords } from "../in-words.js";

/** What every role is to have at least: places in outside sources, and publishers of these. */
const wanted = { places: 5, hosts: 3 } as const;

const rolesText = `Every role is to have ${wanted.places} different places in outside sources, from ${wanted.hosts} hosts. A place is a source with a locator, so that
several checks from one place count once, and a source that copies another counts as that one. A host is one bank, one site or one author under whatever names; repositories count as one.
The code's own text and what only follows from it is not outside evidence and is not counted, nor is what somebody says who asks, nor what cannot be found again; an answer that contradicts the
text is, because it was found and read.`;

const editionsText = `Editions without any check whose source states them, and those where the code's own text is the only such source. Checks that hold there
because texts were compared do not fill a gap.`;

/** The section on what the corpus lacks. */
export function gapsSection(entries: readonly Entry[], { sources }: Corpus): string {
  const short = roleIds.map((role) => shortage(entries, sources, role)).filter((row) => row !== null);
  return [
    "## What could not be filled",
    rolesText,
    short.length === 0
      ? "No role falls short."
      : markdownTable(["role", "places", "hosts", "falls short in"], short),
    editionsText,
    markdownTable(
      ["role", "no source states", "only the code's text states"],
      roleIds.map((role) => unstatedRow(entries, role)),
    ),
  ].join("\n\n");
}

function shortage(entries: readonly Entry[], sources: Sources, of: Role): readonly string[] | null {
  const outside = entries.filter(
    ({ role, source, check }) => role === of && isOutside(check) && sources[source]?.findAgain !== "no",
  );
  const original = (source: string): string => sources[source]?.copies ?? source;
  const places = new Set(
    outside.map(({ source, check }) => JSON.stringify([original(source), check.locator])),
  );
  const hosts = countHosts(outside, sources);
  const short = [places.size < wanted.places ? "places" : "", hosts < wanted.hosts ? "hosts" : ""].filter(
    (lack) => lack !== "",
  );
  return short.length === 0 ? null : [inWords(of), `${places.size}`, `${hosts}`, short.join(" and ")];
}

function unstatedRow(entries: readonly Entry[], of: Role): readonly string[] {
  const stating = (year: EditionYear): readonly Entry[] =>
    entries.filter(({ role, check }) => role === of && check.stated === year);
  const none = editionYears.filter((year) => stating(year).length === 0);
  const textOnly = editionYears.filter((year) => {
    const here = stating(year);
    return here.length > 0 && here.every(({ check }) => !isOutside(check));
  });
  return [inWords(of), listed(none), listed(textOnly)];
}

function isOutside({ standing, voice }: Entry["check"]): boolean {
  return (standing === "cited" || standing === "disputed") && voice !== "asker";
}

function listed(years: readonly EditionYear[]): string {
  return years.length === 0 ? "none" : years.join(", ");
}
