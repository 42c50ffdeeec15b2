import { type EditionYear, editionYears } from "../edition/index.js";
import { member, optional, type Reader, readObject } from "../input/reader.js";
import { type Answer, ask, checkRequest, readYears, type Sizing } from "./ask.js";
import { changesBetween, citedIn, effectOf, outcomeName } from "./changes.js";
import type {
  Change,
  CodedInput,
  ComparedResult,
  EditionComparison,
  EditionEntry,
  InputOfAnyYear,
} from "./comparison.js";
import { type Dated, explainedByReadings } from "./explained-by-readings.js";

/** One input for one sizing function, to be held under several editions. */
export interface EditionsRequest<Input extends CodedInput, Result extends ComparedResult> {
  /** A sizing function of the library. */
  readonly size: (input: Input) => Result;
  /** What it takes, without an edition. */
  readonly input: NoInfer<InputOfAnyYear<Input>>;
  /** Editions in the order in which they are wanted; all of them, oldest first, unless told. */
  readonly years?: readonly EditionYear[];
}

/**
 * Holds one input under every edition: the result of each, or why it refuses the input, and against the entry before what changed
 * and why. Numbers that changed are told apart from rules that changed, from texts that are open and read otherwise, from the same rule
 * in another place, and from what is merely known better or worse.
 *
 * @param request - a sizing function, its input without edition, and the editions
 * @returns one entry for each edition, plain JSON; areas in circular mils
 * @throws {@link InputError} if the request itself is wrong; what an edition refuses stands in its entry
 *
 * @example
 * ```ts
 * import { compareEditions, sizeWaterPipingBondingJumper } from "bondmil";
 * const editions = compareEditions({
 *   size: sizeWaterPipingBondingJumper,
 *   input: {
 *     of: "service",
 *     supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
 *     jumper: { material: "copper" },
 *   },
 *   years: ["2014", "2017", "2020"],
 * });
 * editions.map(({ edition, result, effect }) => [edition, result?.requiredArea, effect]);
 * // => [["2014", 167800, "first"], ["2017", 375000, "larger"], ["2020", 167800, "smaller"]]
 * const rules = editions[2]?.changes.filter(({ kind }) => kind === "policy");
 * rules?.map(({ what, of, before, after }) => [what, of, before, after]);
 * // => [["governs", null, "one-eighth", "cap"], ["cap", "largest-size", null, 167800]]
 * ```
 */
export function compareEditions<Input extends CodedInput, Result extends ComparedResult>(
  request: EditionsRequest<Input, Result>,
): EditionComparison<Result> {
  checkRequest(request, ["size", "input", "years"], (at) => {
    readYears(at);
    checkInput(member(at, "input"));
  });
  const { size, years = editionYears } = request;
  const asked = years.map((edition) => {
    const input = inEdition<Input>(request.input, edition);
    return { edition, input, answer: ask(size, input) };
  });
  return asked.map(({ edition, answer }, place): EditionEntry<Result> => {
    const before = asked[place - 1];
    const now = asked[place];
    if (before === undefined || now === undefined)
      return { edition, ...answer, effect: "first", changes: [] };
    return { edition, ...answer, ...between(size, before, now) };
  });
}

interface Asked<Input extends CodedInput, Result extends ComparedResult> {
  readonly edition: EditionYear;
  readonly input: Input;
  readonly answer: Answer<Result>;
}

function between<Input extends CodedInput, Result extends ComparedResult>(
  size: Sizing<Input, Result>,
  before: Asked<Input, Result>,
  after: Asked<Input, Result>,
): Pick<EditionEntry<Result>, "effect" | "changes"> {
  const [old, now] = [before.answer, after.answer];
  if (old.result === undefined || now.result === undefined) return betweenRefusals(old, now);
  const dated = (one: Asked<Input, Result>, result: Result): Dated<Input, Result> => ({ ...one, result });
  const changes = changesBetween(old.result, now.result);
  return {
    effect: effectOf(old.result, now.result),
    changes: explainedByReadings(size, dated(before, old.result), dated(after, now.result), changes),
  };
}

/** An edition that refuses what another takes has another rule; two that refuse it alike have nothing to tell. */
function betweenRefusals<Result extends ComparedResult>(
  old: Answer<Result>,
  now: Answer<Result>,
): Pick<EditionEntry<Result>, "effect" | "changes"> {
  const [before, after] = [nameOf(old), nameOf(now)];
  const change: Change = {
    kind: "policy",
    what: "outcome",
    of: null,
    before,
    after,
    ...citedIn(old.result?.citation, now.result?.citation),
  };
  const alike = (old.result === undefined) === (now.result === undefined);
  return { effect: alike ? "same" : "other-outcome", changes: before === after ? [] : [change] };
}

function nameOf<Result extends ComparedResult>({ result, refused }: Answer<Result>): string {
  if (result !== undefined) return outcomeName(result);
  return `refused: ${(refused ?? []).map(({ code, path }) => `${code} ${path}`).join(", ")}`;
}

function checkInput(at: Reader): void {
  // The function knows the other members of its input and refuses what it does not know.
  const own = typeof at.value === "object" && at.value !== null ? Object.keys(at.value) : [];
  if (!readObject(at, [...own, "code"])) return;
  optional(member(at, "code"), (code) =>
    readObject(code, ["year", "readings", "amendments", "circumstances"]),
  );
}

/** An input and an edition make the input of that edition, whatever the function takes beside the code. */
function inEdition<Input extends CodedInput>(input: InputOfAnyYear<Input>, year: EditionYear): Input {
  return { ...input, code: { ...input.code, year } } as unknown as Input;
}
