import { roleIds } from "../../../src/index.js";
import type { Entry } from "../runner/model.js";
import { casesIn } from "../runner/run-checks.js";
import { type Default, withDefaults } from "./defaults.js";
import { type Acceptable, otherReadings } from "./open-readings.js";

/** One check under one edition, with nothing left to look up. */
interface FlatCheck {
  readonly id: string;
  readonly source: string;
  readonly role: string;
  readonly edition: string;
  /** Whether the text of the edition was not read, so that the answer is that of the edition before. */
  readonly carried: boolean;
  readonly stated: string | null;
  readonly input: object;
  /** What an implementation must give: of a disputed check, the answer of the text. */
  readonly expected: object;
  /** What the source says instead; `null` where it is not disputed. */
  readonly published: object | null;
  /** What other readings of an open sentence give; a program that follows one of them is not wrong. */
  readonly acceptable: readonly Acceptable[];
  readonly figures: object | null;
  readonly standing: string;
  readonly voice: string;
  readonly assumed: readonly string[];
}

/** The members of a line in their order, with what they hold; docs and package descriptions are made from this. */
export const flatFields = [
  ["id", "string", "id of the check; one check has a line for each edition"],
  ["source", "string", "id in tables/sources.json"],
  ["role", "string", "what the conductor is there for"],
  ["edition", "string", "year of the edition of the question"],
  [
    "carried",
    "boolean",
    "whether the text of the edition was not read, so that the answer is that of the edition before",
  ],
  ["stated", "string", "edition that the source states; null where it states none"],
  ["input", "object", "the question, with every default applied"],
  ["expected", "object", "what has to be given; of a disputed check the answer of the text"],
  ["published", "object", "what the source says instead; null where it is not disputed"],
  [
    "acceptable",
    "array",
    "what other readings of an open sentence give: reading and alternative of tables/readings.json, and expected; empty where none has a say",
  ],
  [
    "figures",
    "object",
    "areas in circular mils that the source prints on its way; null where it prints none",
  ],
  ["standing", "string", "how far the check counts"],
  ["voice", "string", "who says it"],
  ["assumed", "array", "places in the input that are ours"],
] as const satisfies readonly (readonly [keyof FlatCheck, string, string])[];

/** Every check under every edition as JSON Lines, by role. */
export function flatLines(entries: readonly Entry[], defaults: readonly Default[]): string {
  return casesIn(roleIds.flatMap((role) => entries.filter((entry) => entry.role === role)))
    .map(({ role, source, edition, check, question }): FlatCheck => {
      const { id, carried = [], stated, expect, figures, dispute, standing, voice, assumed } = check;
      return {
        id,
        source,
        role,
        edition,
        carried: carried.includes(edition),
        stated,
        input: withDefaults(role, check.input, defaults),
        expected: dispute?.expectByText ?? expect,
        published: dispute === undefined ? null : expect,
        acceptable: otherReadings(question),
        figures: (dispute === undefined ? figures : undefined) ?? null,
        standing,
        voice,
        assumed,
      };
    })
    .map((line) => `${JSON.stringify(line)}\n`)
    .join("");
}
