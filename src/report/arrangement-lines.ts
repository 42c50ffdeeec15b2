import { rectangularBarsFor } from "../engineering/rectangular-bar.js";
import type { Arrangement, Connection } from "../installation/arrangements/arrangement.js";
import { keyOf } from "../installation/conductor-identity.js";
import { conductorWords, endWords } from "../installation/conductor-words.js";
import type { ScheduledConductor } from "../installation/schedule.js";
import { writtenArea } from "../units/area.js";
import { tellSizing } from "./told/sizing.js";
import { sentencesOf } from "./told/told.js";
import { arrangementNames, connectionNames, connectionWords } from "./words/arrangement-words.js";
import { evidenceWords } from "./words/evidence-words.js";
import { capital } from "./words/names.js";
import { governingWords } from "./words/schedule-words.js";
import { shortSize } from "./words/variant-words.js";

/** One thing in every arrangement. */
export interface ArrangementLine {
  readonly name: string;
  readonly differs: boolean;
  /** A cell for each arrangement, in their order. */
  readonly short: readonly string[];
  /** A sentence for each different content, with the arrangements that it is of where it is not that of all. */
  readonly why: readonly string[];
}

/** The conductors of all arrangements, each with what it is in every one. */
export function conductorLines(arrangements: readonly Arrangement[]): readonly ArrangementLine[] {
  const all = arrangements.flatMap(({ conductors }) => conductors);
  const identities = [...new Map(all.map((one) => [keyOf(one), one])).entries()];
  return identities.map(([key, some]) =>
    lineOf(
      conductorWords(some),
      arrangements.map(({ id, conductors }) => {
        const own = conductors.find((one) => keyOf(one) === key);
        return {
          id,
          short: own === undefined ? "none" : shortSize(own),
          whole: own === undefined ? null : wholeConductor(own),
        };
      }),
    ),
  );
}

/** The kinds of connection of all arrangements, each with what is said of it in every one. */
export function connectionLines(arrangements: readonly Arrangement[]): readonly ArrangementLine[] {
  const kinds = [...new Set(arrangements.flatMap(({ connections }) => connections.map(({ kind }) => kind)))];
  return kinds.map((kind) =>
    lineOf(
      connectionNames[kind],
      arrangements.map(({ id, connections }) => {
        const said = connections.filter((one) => one.kind === kind).map(connectionSentence);
        return { id, short: said.join("; "), whole: said.length === 0 ? null : said.join("; ") };
      }),
    ),
  );
}

interface Entry {
  readonly id: Arrangement["id"];
  readonly short: string;
  /** `null` where the arrangement has no such thing. */
  readonly whole: string | null;
}

function lineOf(name: string, entries: readonly Entry[]): ArrangementLine {
  const contents = [...new Set(entries.map(({ whole }) => whole))];
  const why = contents.flatMap((content) => {
    if (content === null) return [];
    const own = entries.filter(({ whole }) => whole === content).map(({ id }) => arrangementNames[id]);
    const where = own.length === entries.length ? "" : ` (${own.join(", ")})`;
    return [`${name}${where}: ${content}`];
  });
  return { name, differs: contents.length > 1, short: entries.map(({ short }) => short), why };
}

function wholeConductor(conductor: ScheduledConductor): string {
  const { from, to, result } = conductor;
  const { governs, evidence } = result;
  const decided = governs === null ? "" : `decided by ${governingWords[governs]}; `;
  const ends = capital(`from ${endWords(from)} to ${endWords(to)}`);
  return `${shortSize(conductor)}${barFor(conductor)}. ${sentencesOf(tellSizing(result))} ${ends}; ${decided}evidence: ${evidenceWords(evidence)}.`;
}

/** For an area without a standard size, a bar that has it. */
function barFor({ result: { outcome } }: ScheduledConductor): string {
  if (outcome.kind !== "area-only") return "";
  const { requiredArea } = outcome;
  const bar = rectangularBarsFor(requiredArea).find(({ thickness }) => thickness === 0.25);
  const example = bar === undefined ? "" : `; a bar of ${bar.thickness} in. x ${bar.width} in. meets it`;
  return ` (${writtenArea(requiredArea, "mm2")}, ${writtenArea(requiredArea, "in2")})${example}`;
}

function connectionSentence({ at, note, citation }: Connection): string {
  const places = at.length === 0 ? "" : `${at.join(", ")}: `;
  return `${places}${connectionWords[note]} [${citation.section}]`;
}
