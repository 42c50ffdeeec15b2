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

// One in twenty-nine questions of the corpus, the same ones when others come along, compared over all editions and, in its own, over the readings.
const asked = Object.values(roles)
  .flatMap((role) => corpusCases({ role: role.id }).map((one) => ({ ...one, role: role as AnyRole })))
  .filter(({ check, question }) => JSON.stringify([check.id, question]).length % 29 === 0);

const cited = (section: string | null, evidence: string | null) =>
  section === null ? "" : ` [${section}, ${evidence}]`;

function lineOf({ kind, what, of, before, after, ...where }: Change): string {
  const { sectionBefore, sectionAfter, evidenceBefore, evidenceAfter, because } = where;
  const was = `${before}${cited(sectionBefore, evidenceBefore)}`;
  const is = `${after}${cited(sectionAfter, evidenceAfter)}`;
  const reading = because === undefined ? "" : `; because of ${Object.values(because).join(", ")}`;
  return `  ${kind} ${what} ${of ?? ""}: ${was} -> ${is}${reading}`;
}

it("editions and readings differ as before", async () => {
  const told = asked.flatMap(({ role, question: { input }, edition }) => [
    `${role.id} ${JSON.stringify(input)}`,
    ...compare(role, { over: "editions", input, editions: editionYears } as never).flatMap((one) => [
      ` ${one.edition}: ${one.effect}`,
      ...one.changes.map(lineOf),
    ]),
    ...readingLines(role, { ...(input as object), code: { year: edition } }),
  ]);
  await expect(`${told.join("\n")}\n`).toMatchFileSnapshot(
    new URL("./comparisons.txt", import.meta.url).pathname,
  );
});

/** A question that is refused has no readings. */
function otherwiseRead(role: AnyRole, input: object): ReadingComparison["otherwise"] {
  try {
    return (compare(role, { over: "readings", input } as never) as unknown as ReadingComparison).otherwise;
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

function readingLines(role: AnyRole, input: object): readonly string[] {
  return otherwiseRead(role, input).flatMap(({ reading, alternative, effect, changes }) => [
    ` ${reading} as ${alternative}: ${effect}`,
    ...changes.map(lineOf),
  ]);
}
