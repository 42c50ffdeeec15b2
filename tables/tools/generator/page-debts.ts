import { editionYears } from "../../../src/edition/edition-year.js";
import { type Channel, type ChannelsFile, channelsFor } from "./channels.js";
import { countByLevel, type Debt, debtKinds, owedLevels } from "./debts.js";

/** The list of everything that is not confirmed, with the channels that could settle it. */
export function debtsPage(debts: readonly Debt[], channels: ChannelsFile): string {
  return `${[head, countsOf(debts), ...editionYears.map((year) => editionPart(year, debts, channels))].join("\n\n")}\n`;
}

const head = [
  '<!-- Generated from the files of this folder by "npm run generate"; do not edit. -->',
  "# Not confirmed",
  "",
  "Every value and every wording that was not read through two channels of different kind, with its level and the channels that could",
  "settle it, by their names in the edition's list. For what is `single`, only channels of another kind than the one it was read through are",
  "named. A fact of placement is as sure as its section; a reading stays open however often the text is read, and its line is about the",
  "wording that its default rests on. A witness sheet settles the cells of a table: see docs/validating-a-table.md.",
  "",
  "`npm run tables:check` fails when this list grows or shrinks without a change of `tables/debts.json`.",
].join("\n");

const title: Readonly<Record<Debt["kind"], string>> = {
  table: "Tables",
  cell: "Cells of tables that differ from their table",
  policy: "Policies",
  "named size": "Sizes that sections name",
  section: "Sections",
  placement: "Facts of placement",
  reading: "Defaults of readings",
  constant: "Constants",
};

function countsOf(debts: readonly Debt[]): string {
  const row = (name: string, of: readonly Debt[]): string => {
    const counts = countByLevel(of);
    return `| ${[name, ...owedLevels.map((level) => counts[level])].join(" | ")} |`;
  };
  return [
    `| values | ${owedLevels.join(" | ")} |`,
    `| --- |${" ---: |".repeat(owedLevels.length)}`,
    ...editionYears.map((year) =>
      row(
        year,
        debts.filter(({ edition }) => edition === year),
      ),
    ),
    row("all", debts),
  ].join("\n");
}

function editionPart(
  year: (typeof editionYears)[number],
  debts: readonly Debt[],
  channels: ChannelsFile,
): string {
  const own = debts.filter(({ edition }) => edition === year);
  const parts = debtKinds
    .map((kind) => ({ kind, lines: own.filter((debt) => debt.kind === kind) }))
    .filter(({ lines }) => lines.length > 0)
    .map(
      ({ kind, lines }) =>
        `### ${title[kind]}, ${year}\n\n${lines.map((debt) => line(debt, channels)).join("\n")}`,
    );
  const list = channels.editions[year].map(channelLine);
  return [
    `## ${year}`,
    `Channels:\n\n${list.length === 0 ? "- none known" : list.join("\n")}`,
    ...parts,
  ].join("\n\n");
}

const seenWords: Readonly<Record<Channel["seen"], string>> = {
  "in-part": "read in part",
  "front-matter": "only its first pages were seen",
  reported: "named elsewhere, not seen",
  memory: "not seen",
};

function channelLine({ id, kind, title: name, seen, note }: Channel): string {
  return `- \`${id}\` (${kind}): ${name}; ${seenWords[seen]}.${note === undefined ? "" : ` ${note}`}`;
}

function line(debt: Debt, channels: ChannelsFile): string {
  const able = channelsFor(channels, debt).map(({ id }) => id);
  const by = able.length === 0 ? "no channel known" : able.join(", ");
  return `- ${debt.what} (${debt.section}): ${debt.level}; ${by}`;
}
