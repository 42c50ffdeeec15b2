import { type Citation, type CitedEvidence, type Evidence, evidenceLevels } from "../edition/index.js";
import { useResult } from "../input/given-result.js";
import { InputError, type Issue } from "../input/input-error.js";
import type { Keys } from "../input/place.js";
import { issueAt, member, readAll, readOneOf, show } from "../input/reader.js";
import { type SizingResult, sizingResultMarks } from "../rules/result.js";
import type { Step } from "../sizing/index.js";

/**
 * Lets a result through only if nothing that it rests on is weaker than a level: the rule, every step, and the ampacities of
 * assumed conductors. What no text gives, as the size of the tie of a busbar before 2023, is `memory`, whatever it is taken from. For whoever may not build on values that nobody has read. What an amendment says itself is passed over, because
 * whoever wrote it is responsible for it; the rows of the edition that it stands on are not.
 *
 * @param result - a result of any role
 * @param level - the weakest evidence that will do
 * @returns the same result
 * @throws {@link InputError} with one `evidence-too-weak` for each place that is weaker, by its path in the result;
 *   and for anything but a result and a level
 *
 * @example
 * ```ts
 * import { type EditionYear, InputError, mainBondingJumper, requireEvidence, size } from "bondmil";
 * const jumper = (year: EditionYear) =>
 *   size(mainBondingJumper, {
 *     code: { year },
 *     supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
 *     conductor: { material: "copper" },
 *   });
 * requireEvidence(jumper("2017"), "single").requiredArea; // => 105600
 * const weak = [];
 * try {
 *   requireEvidence(jumper("2008"), "single");
 * } catch (error) {
 *   if (error instanceof InputError) weak.push(...error.issues.map(({ path, received }) => `${path}: ${received}`));
 * }
 * weak; // => ["citation: carried", "steps[0]: carried", "steps[1]: carried", "steps[2]: bracketed"]
 * ```
 */
export function requireEvidence<T extends SizingResult>(result: T, level: Evidence): T {
  const least = readAll({ level }, (at) => readOneOf(member(at, "level"), evidenceLevels));
  const issues = useResult(result, "size", sizingResultMarks, (given) =>
    placesOf(given)
      .filter(({ evidence }) => isWeaker(evidence, least))
      .map((place) => issueOf(place, least, given)),
  );
  if (issues.length > 0) throw new InputError(issues);
  return result;
}

/** A place that a result rests on: where it stands in the result, and what it was asked. */
interface Place extends Citation {
  readonly keys: Keys;
  readonly decides: string;
}

function placesOf({ citation, steps, evidence, name }: SizingResult): readonly Place[] {
  const places: readonly Place[] = [
    { keys: ["citation"], decides: `the rule for the ${name}`, ...citation },
    ...steps.flatMap((step, i) => placesOfStep(step, ["steps", i])),
  ];
  // A result that was stored and read back may call itself weaker than anything that it still shows.
  const shown = places.some((place) => place.evidence !== "vouched" && !isWeaker(evidence, place.evidence));
  return shown
    ? places
    : [...places, { keys: ["evidence"], decides: "the result as a whole", section: "something", evidence }];
}

function placesOfStep(step: Step, keys: Keys): readonly Place[] {
  const own: Place = { keys, decides: decidedBy[step.kind], ...step.citation };
  if (step.kind !== "assumed") return [own];
  const ampacities = step.conductors.map(({ installed, citation }, i) => ({
    keys: [...keys, "conductors", i],
    decides: `the ampacities for ${installed.size} ${installed.material}`,
    ...citation,
  }));
  return [own, ...ampacities];
}

const decidedBy: Readonly<Record<Step["kind"], string>> = {
  sum: "how the ungrounded conductors are added",
  assumed: "when conductors of another material are replaced",
  row: "the row of the table",
  "one-eighth": "the 12.5 percent rule",
  floor: "the minimum size",
  cap: "the size above which nothing more is required",
  "rating-row": "the row for the overcurrent device",
  increase: "the increase in proportion",
  shared: "how circuits share one conductor",
  load: "the conductor for the load",
  "named-size": "the size that is named or taken over",
  "standard-size": "the standard sizes and their areas",
};

function issueOf(
  { keys, section, evidence, decides }: Place,
  least: Evidence,
  { edition }: SizingResult,
): Issue {
  const message = `${section} in the ${edition} edition decides ${decides}, and what is known of it is ${evidence}, not ${least}; read it in that edition, or accept ${evidence}`;
  const received = typeof evidence === "string" ? evidence : show(evidence);
  return { ...issueAt(keys, "evidence-too-weak", `at least ${least}`, evidence, ""), received, message };
}

/** What an amendment says of itself is neither weaker nor stronger than a level: whoever wrote it is responsible for it. */
function isWeaker(evidence: CitedEvidence, than: Evidence): boolean {
  return evidence !== "vouched" && evidenceLevels.indexOf(evidence) < evidenceLevels.indexOf(than);
}
