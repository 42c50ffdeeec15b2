import { type EditionYear, editionYears } from "../edition/index.js";
import { member, optional, type Reader, readObject } from "../input/reader.js";
import { type Answer, type Asking, answerOf } from "./ask.js";
import { betweenRefusals } from "./between-refusals.js";
import { changesBetween, effectOf } from "./changes.js";
import type {
  CodedInput,
  ComparedResult,
  EditionComparison,
  EditionEntry,
  InputOfAnyYear,
} from "./comparison.js";
import { type Dated, explainedByReadings } from "./explained-by-readings.js";
import type { EditionsRequest } from "./shape.generated.js";

/** What a role takes, without an edition, to be compared under several. */
export interface OverEditions<Input extends CodedInput> extends EditionsRequest {
  /** What the role takes, without an edition. */
  readonly input: InputOfAnyYear<Input>;
}

/** Compares one input under several editions, the request being checked. */
export function overEditions<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  { input: given, editions = editionYears }: OverEditions<Input>,
): EditionComparison<Result> {
  const asked = editions.map((edition) => {
    const input = inEdition<Input>(given, edition);
    return { edition, input, answer: answerOf(ask, input) };
  });
  return asked.map(({ edition, answer }, place): EditionEntry<Result> => {
    const before = asked[place - 1];
    const now = asked[place];
    if (before === undefined || now === undefined)
      return { edition, ...answer, effect: "first", changes: [] };
    return { edition, ...answer, ...between(ask, before, now) };
  });
}

interface Asked<Input extends CodedInput, Result extends ComparedResult> {
  readonly edition: EditionYear;
  readonly input: Input;
  readonly answer: Answer<Result>;
}

function between<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  before: Asked<Input, Result>,
  after: Asked<Input, Result>,
): Pick<EditionEntry<Result>, "effect" | "changes"> {
  const [old, now] = [before.answer, after.answer];
  if (old.result === undefined || now.result === undefined) return betweenRefusals(old, now);
  const dated = (one: Asked<Input, Result>, result: Result): Dated<Input, Result> => ({ ...one, result });
  const changes = changesBetween(old.result, now.result);
  return {
    effect: effectOf(old.result, now.result),
    changes: explainedByReadings(ask, dated(before, old.result), dated(after, now.result), changes),
  };
}

/** Checks the input of a comparison of editions; the role knows its other members and refuses what it does not know. */
export function checkOpenInput(at: Reader): void {
  const own = typeof at.value === "object" && at.value !== null ? Object.keys(at.value) : [];
  readObject(at, [...own, "code"]);
  optional(member(at, "code"), (code) =>
    readObject(code, ["year", "readings", "amendments", "circumstances"]),
  );
}

/** An input and an edition make the input of that edition, whatever the role takes beside the code. */
function inEdition<Input extends CodedInput>(input: InputOfAnyYear<Input>, year: EditionYear): Input {
  return { ...input, code: { ...input.code, year } } as unknown as Input;
}
