import {
  type AnyRole,
  type Change,
  compare,
  editionYears,
  InputError,
  type ReadingComparison,
  roles,
} from "bondmil";
import { corpusCases } from "bondmil/corpus";
import { expect, it } from "vitest";

interface Line {
  readonly text: string;
  /** The same without sizes and numbers: what is new in a comparison, and not merely larger. */
  readonly sort: string;
}

const plain = (text: string): Line => ({ text, sort: text });

const cited = (section: string | null, evidence: string | null) =>
  section === null ? "" : ` [${section}, ${evidence}]`;

function textOf({ kind, what, of, before, after, ...where }: Change): string {
  const { sectionBefore, sectionAfter, evidenceBefore, evidenceAfter, because } = where;
  const was = `${before}${cited(sectionBefore, evidenceBefore)}`;
  const is = `${after}${cited(sectionAfter, evidenceAfter)}`;
  const reading = because === undefined ? "" : `; because of ${Object.values(because).join(", ")}`;
  return `  ${kind} ${what} ${of ?? ""}: ${was} -> ${is}${reading}`;
}

const withoutNumbers = <T>(value: T) =>
  typeof value === "number"
    ? "#"
    : typeof value === "string"
      ? value.replace(/\d[\d/]* (?:AWG|kcmil|cmil|A|C)\b/g, "#")
      : value;

function lineOf(change: Change): Line {
  const [of, before, after] = [change.of, change.before, change.after].map(withoutNumbers);
  return { text: textOf(change), sort: textOf({ ...change, of, before, after } as Change) };
}

/** A question that is refused has no readings. */
function otherwiseRead(role: AnyRole, input: object): ReadingComparison["otherwise"] {
  try {
    return (compare(role, { over: "readings", input } as never) as unknown as ReadingComparison).otherwise;
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

const overEditions = (role: AnyRole, input: object) =>
  compare(role, { over: "editions", input, editions: editionYears } as never).flatMap((one) => [
    plain(` ${one.edition}: ${one.effect}`),
    ...one.changes.map(lineOf),
  ]);

const overReadings = (role: AnyRole, input: object) =>
  otherwiseRead(role, input).flatMap(({ reading, alternative, effect, changes }) => [
    plain(` ${reading} as ${alternative}: ${effect}`),
    ...changes.map(lineOf),
  ]);

const asked = Object.values(roles).flatMap((role: AnyRole) =>
  corpusCases({ role: role.id }).map(({ question, edition }) => ({
    role,
    input: question.input as object,
    name: `${role.id} ${JSON.stringify(question.input)}`,
    edition,
  })),
);

/** What each asks and gives, if it gives a sort of line that none before it gave. */
function keptOf(given: readonly (readonly [string, readonly Line[]])[]): readonly string[] {
  const seen = new Set<string>();
  return given.flatMap(([name, lines]) => {
    const isNew = lines.some(({ sort }) => !seen.has(sort));
    for (const { sort } of lines) seen.add(sort);
    return isNew ? [name, ...lines.map(({ text }) => text)] : [];
  });
}

it("editions and readings differ as before", async () => {
  // A question stands in the corpus once for each edition that it is checked in.
  const questions = [...new Map(asked.map((one) => [one.name, one])).values()];
  const told = [
    ...keptOf(questions.map(({ role, input, name }) => [name, overEditions(role, input)])),
    ...keptOf(
      asked.map(({ role, input, name, edition }) => [
        `${edition} ${name}`,
        overReadings(role, { ...input, code: { year: edition } }),
      ]),
    ),
  ];
  await expect(`${told.join("\n")}\n`).toMatchFileSnapshot(
    new URL("./comparisons.txt", import.meta.url).pathname,
  );
});
