import { useResult } from "../../../src/input/given-result.js";
import { withOneError } from "../../../tables/tools/one-error.js";
import type { Sources } from "../../../tables/tools/source.js";
import type { Given } from "./answer.js";
import type { Expectation } from "./model.js";
import type { Row } from "./run-checks.js";
import { labelled } from "./text.js";

/**
 * Every row that was not met, in full: both answers, and where the expected one is printed.
 *
 * @param rows - of {@link runCorpus}
 * @param sources - the register of sources
 * @returns plain text; empty where every row was met
 * @throws `InputError` of `bondmil` for anything but rows and a register of sources
 *
 * @example
 * ```ts
 * import { runCorpus, sources, writeMisses } from "bondmil/corpus";
 *
 * const rows = runCorpus(() => ({ size: "6 AWG" }), { source: "homework-answer-load-side", edition: "2020" });
 * writeMisses(rows, sources); // => ""
 * ```
 */
export function writeMisses(rows: readonly Row[], sources: Sources): string {
  return withOneError(() =>
    useResult(
      { rows, sources },
      "runCorpus with the register of sources",
      { rows: "list", sources: "object" },
      (given) => missesIn(given.rows, given.sources),
    ),
  );
}

function missesIn(rows: readonly Row[], sources: Sources): string {
  return rows
    .filter(({ verdict }) => verdict !== "met")
    .map((row) => writeMiss(row, sources))
    .join("\n\n");
}

function writeMiss({ role, source, check, edition, given, verdict, figures }: Row, sources: Sources): string {
  const { dispute } = check;
  return [
    `${verdict}: ${check.id}, ${edition} (${role}, ${check.standing})`,
    ...(dispute === undefined
      ? [labelled("expected", sayExpected(check.expect))]
      : [
          labelled("source", sayExpected(check.expect)),
          labelled("text", `${sayExpected(dispute.expectByText)}; ${dispute.section}`),
        ]),
    labelled("given", sayGiven(given)),
    ...figures.map((figure) =>
      labelled("figure", `${figure.name}: ${figure.expected} expected, ${figure.given ?? "none"} given`),
    ),
    labelled("title", sources[source]?.title ?? source),
    labelled("locator", check.locator),
  ].join("\n");
}

/** What is expected, in one line. */
export function sayExpected(expected: Expectation): string {
  if ("error" in expected) return `error ${expected.error}`;
  if ("notLargerThan" in expected) return `not larger than ${expected.notLargerThan}`;
  if ("notSmallerThan" in expected) return `not smaller than ${expected.notSmallerThan}`;
  const { requiredArea } = expected;
  const what = "size" in expected ? expected.size : expected.outcome;
  return requiredArea === undefined ? what : `${what}, ${requiredArea} cmil required`;
}

/** What was given, in one line. */
export function sayGiven(given: Given): string {
  if (given === null) return "no answer";
  if ("thrown" in given) return `thrown: ${given.thrown}`;
  if ("errors" in given) return `error ${given.errors.join(", ")}`;
  const { requiredArea } = given;
  const what = "size" in given ? sayConductors(given.size, given.quantity) : given.outcome;
  return requiredArea == null ? what : `${what}, ${requiredArea} cmil required`;
}

function sayConductors(size: string, quantity = 1): string {
  return quantity === 1 ? size : `${quantity} x ${size}`;
}
