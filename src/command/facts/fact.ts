/** An option as it is described and read. */
export interface OptionFact {
  readonly name: string;
  /** What stands for its value; an option without one is on or off. */
  readonly value?: string;
  /** What is allowed; none for free text. */
  readonly choices?: readonly string[];
  /** Whether several may be given, with commas between. */
  readonly several?: boolean;
  readonly says: string;
}

/** What may stand behind the name of a subcommand, apart from options. */
export type Operand = "role" | "installation" | "question" | "input" | "new-file";

/** A subcommand as it is described and read. */
export interface SubcommandFact {
  readonly name: SubcommandName;
  readonly says: string;
  /** What it takes beside options, in this order. */
  readonly takes: readonly Operand[];
  readonly more: readonly string[];
  readonly options: readonly OptionFact[];
  readonly examples: readonly (readonly [line: string, says: string])[];
}

export type SubcommandName =
  | "begin"
  | "schedule"
  | "report"
  | "check"
  | "compare"
  | "supplies"
  | "size"
  | "sweep"
  | "stream"
  | "corpus";

/** The ways in which a document can be written. */
export const formats = ["text", "markdown", "csv", "json", "html"] as const;

/** The format of the output; the same word with every subcommand. */
export function as(choices: readonly string[], says: string): OptionFact {
  return { name: "as", value: "format", choices, says };
}

/** What a reader has to know of a paper: what place it is about, who made it, and when. */
export const titleBlock: readonly OptionFact[] = [
  { name: "place", value: "place", says: "Where the installation is, for the title block." },
  { name: "prepared-by", value: "name", says: "Who prepared it, for the title block." },
  {
    name: "date",
    value: "date",
    says: "The date for the title block, as it is to be read; none by default.",
  },
];
