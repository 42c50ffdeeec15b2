import type { Answer } from "./answer.js";
import type { Expectation, Sources } from "./model.js";
import type { Run } from "./run-checks.js";
import { labelled } from "./text.js";

/** Every run that was not met, in full: both answers, and where the expected one is printed. */
export function writeMisses(runs: readonly Run[], sources: Sources): string {
  return runs
    .filter(({ verdict }) => verdict !== "met")
    .map((run) => writeMiss(run, sources))
    .join("\n\n");
}

function writeMiss({ entry, edition, answer, verdict, figures }: Run, sources: Sources): string {
  const { role, source, check } = entry;
  const { dispute } = check;
  return [
    `${verdict}: ${check.id}, ${edition} (${role}, ${check.standing})`,
    ...(dispute === undefined
      ? [labelled("expected", sayExpected(check.expect))]
      : [
          labelled("source", sayExpected(check.expect)),
          labelled("text", `${sayExpected(dispute.expectByText)}; ${dispute.section}`),
        ]),
    labelled("given", sayAnswer(answer)),
    ...figures.map(({ name, expected, given }) =>
      labelled("figure", `${name}: ${expected} expected, ${given ?? "none"} given`),
    ),
    labelled("title", sources[source]?.title ?? source),
    labelled("locator", check.locator),
  ].join("\n");
}

function sayExpected(expected: Expectation): string {
  if ("error" in expected) return `error ${expected.error}`;
  const { requiredArea } = expected;
  const what = "size" in expected ? expected.size : expected.outcome;
  return requiredArea === undefined ? what : `${what}, ${requiredArea} cmil required`;
}

function sayAnswer(answer: Answer): string {
  if (answer.kind === "refused") return `error ${answer.codes.join(", ")}`;
  if (answer.kind === "crashed") return `crashed: ${answer.message}`;
  return `${answer.size ?? answer.outcome}, ${answer.requiredArea} cmil required`;
}
