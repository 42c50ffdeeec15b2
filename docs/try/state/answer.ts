import {
  type Document,
  InputError,
  type Installation,
  type Issue,
  readInstallation,
  reportDocument,
  type Schedule,
  scheduleOf,
} from "bondmil";
import { type Json, pathOf } from "./data.js";

/** What the library says of a document: the schedule with its report, or what is wrong with the document. */
export type Answer =
  | {
      readonly kind: "sized";
      readonly installation: Installation;
      /** The report with its drawing, which is what is seen first. */
      readonly report: Document;
      /** The schedule, worked out when it is first used. */
      readonly schedule: () => Schedule;
    }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

/** Asks the library. Whatever it refuses it refuses with issues; anything else is a fault of the page and is not hidden. */
export function answerTo(document: Json): Answer {
  try {
    const installation = readInstallation(document);
    const report = reportDocument(installation);
    return { kind: "sized", installation, report, schedule: once(() => scheduleOf(installation)) };
  } catch (error) {
    if (error instanceof InputError) return { kind: "issues", issues: error.issues };
    throw error;
  }
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

type Part = Document["parts"][number];

/** A document with the section of its drawing apart, so that the drawing can be seen before the rest. */
export function drawingApart({ parts }: Document): {
  readonly drawing: readonly Part[];
  readonly rest: readonly Part[];
} {
  const at = (wanted: Part["kind"]): readonly number[] =>
    parts.flatMap(({ kind }, i) => (kind === wanted ? [i] : []));
  const [first, ...others] = at("drawing");
  if (first === undefined) return { drawing: [], rest: parts };
  const last = others.at(-1) ?? first;
  const heading =
    at("heading")
      .filter((i) => i < first)
      .at(-1) ?? first;
  return {
    drawing: parts.slice(heading, last + 1),
    rest: [...parts.slice(0, heading), ...parts.slice(last + 1)],
  };
}

/** The document that a part of the page shows, or why there is none. */
export type Shown =
  | { readonly kind: "document"; readonly document: Document }
  | { readonly kind: "none"; readonly why: string };

/** A document that the library makes, with its issues as the reason where it makes none. */
export function shownBy(make: () => Document): Shown {
  try {
    return { kind: "document", document: make() };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const why = error.issues.map(({ path, message }) => (path === "" ? message : `${path}: ${message}`));
    return { kind: "none", why: why.join(" ") };
  }
}

/** What is said aloud when a document was changed. */
export function summaryOf(answer: Answer): string {
  if (answer.kind === "issues") {
    const { length } = answer.issues;
    return `No sizes: ${length === 1 ? "one thing is" : `${length} things are`} missing or wrong.`;
  }
  const { conductors, violations, edition } = answer.schedule();
  const sized = conductors.filter(({ quantity }) => quantity > 0).length;
  const { length } = violations;
  const forbidden = length === 0 ? "no violation" : length === 1 ? "1 violation" : `${length} violations`;
  return `${edition} edition: ${sized} conductors sized, ${forbidden}.`;
}

/** Issues by the place that they are of. */
export function issuesByPath(answer: Answer): ReadonlyMap<string, readonly Issue[]> {
  const by = new Map<string, Issue[]>();
  if (answer.kind === "sized") return by;
  for (const issue of answer.issues) {
    const path = pathOf(issue.keys);
    by.set(path, [...(by.get(path) ?? []), issue]);
  }
  return by;
}
