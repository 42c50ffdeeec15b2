import type { CitedEvidence, EditionYear } from "../../edition/index.js";
import type { DocumentFact, DocumentPart, DocumentRow } from "../document.js";
import { evidenceWords } from "../words/evidence-words.js";
import { capital } from "../words/names.js";

/** One thing that a result says. */
export interface Statement {
  /** Stable code, for a program. */
  readonly step: string;
  /** What it is about. */
  readonly about: string;
  readonly words: string;
  /** Whether the words say by themselves what they are about. */
  readonly isWhole: boolean;
  /** Set where another statement says it already, so that sentences leave it out. */
  readonly goesWithoutSaying?: true;
  /** Circular mils, where it states an area. */
  readonly area: number | null;
  readonly section: string | null;
  readonly evidence: CitedEvidence | null;
}

/** A caution with its stable code, for a program. */
interface ToldCaution {
  readonly code: string;
  readonly words: string;
}

/** A result in words, before it is written as a paragraph or as a document. Cautions and readings are part of it. */
export interface Told {
  /** What the result is about. */
  readonly name: string;
  readonly editions: readonly EditionYear[];
  readonly facts: readonly DocumentFact[];
  /** In the order in which one follows from another. */
  readonly statements: readonly Statement[];
  /** What to know beside them. */
  readonly beside: readonly string[];
  readonly readings: readonly string[];
  readonly cautions: readonly ToldCaution[];
  readonly row: DocumentRow;
}

/** The statements in sentences, each with its section. */
export function sentencesOf({ statements }: Pick<Told, "statements">): string {
  return statements
    .filter(({ goesWithoutSaying }) => goesWithoutSaying !== true)
    .map((one) => `${statementWords(one)}.`)
    .join(" ");
}

function statementWords({ about, words, isWhole, section }: Statement): string {
  const at = section === null ? "" : ` [${section}]`;
  return `${isWhole ? words : `${capital(about)}: ${words}`}${at}`;
}

/** Readings and cautions as the lines that follow a result. */
export function remarksOf({ readings, cautions }: Pick<Told, "readings" | "cautions">): readonly string[] {
  return [
    ...readings.map((text) => `Open reading: ${text}`),
    ...cautions.map(({ words }) => `Caution: ${words}`),
  ];
}

/** The whole result as parts of a document. */
export function partsOf(told: Told): readonly DocumentPart[] {
  const remarks = remarksOf(told);
  return [
    {
      kind: "table",
      of: "records",
      head: ["what", "in words", "where", "evidence"],
      rows: told.statements.map(({ about, words, section, evidence }) => [
        about,
        words,
        section ?? "",
        evidence === null ? "" : evidenceWords(evidence),
      ]),
    },
    ...told.beside.map((text) => ({ kind: "text", text }) as const),
    ...(remarks.length === 0 ? [] : [{ kind: "list", items: remarks } as const]),
  ];
}

/** The statements as rows for a program. */
export function rowsOf({ statements, row, cautions, editions }: Told): readonly DocumentRow[] {
  return statements.map(({ step, words, area, section, evidence }) => ({
    ...row,
    step,
    area,
    words,
    section,
    evidence,
    cautions: cautions.map(({ code }) => code).join(" "),
    ...(editions[0] !== undefined && { edition: editions[0] }),
  }));
}
