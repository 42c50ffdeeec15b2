import { checkDocument, checkOf, conductorSizes, type Installation, type Schedule } from "bondmil";
import { h, type JSX } from "preact";
import { useMemo } from "preact/hooks";
import { shownBy } from "../state/answer.js";
import type { Json } from "../state/data.js";
import { type FoundLine, foundLines, withFound } from "../state/found.js";
import { DocumentView } from "./document-view.js";
import { useForm } from "./form-context.js";

/** What the found conductors are put in and held against the schedule by. */
export interface FoundProps {
  readonly installation: Installation;
  readonly schedule: Schedule;
  readonly document: Json;
}

/** Every required wire with the size that was found in its place, and the check of what was found. */
export function FoundView({ installation, schedule, document }: FoundProps): JSX.Element {
  const lines = useMemo(() => foundLines(schedule, document), [schedule, document]);
  const shown = useMemo(() => shownBy(() => checkDocument(checkOf(installation))), [installation]);
  return h(
    "div",
    null,
    h(
      "p",
      null,
      "Give the size of each conductor that was seen. What is not listed is missing, unless everything else is said to be as scheduled. Materials and numbers, and what stands in place of a conductor, are given under What was found on site.",
    ),
    h(
      "div",
      { class: "found" },
      lines.map((line, i) => h(FoundRow, { key: `${line.name} ${i}`, line, at: i })),
    ),
    shown.kind === "none"
      ? h("p", null, shown.why)
      : h(DocumentView, { document: shown.document, name: "check" }),
  );
}

function FoundRow({ line, at }: { readonly line: FoundLine; readonly at: number }): JSX.Element {
  const { document, change } = useForm();
  const id = `found:${at}`;
  const take = (event: Event): void =>
    change(withFound(document, line, (event.currentTarget as HTMLSelectElement).value), id);
  return h(
    "div",
    { class: "field" },
    h("label", { for: id }, `${line.name}, required ${line.required}`),
    h(
      "select",
      { id, value: line.size, onChange: take },
      h("option", { value: "" }, "not seen"),
      conductorSizes.map((size) => h("option", { key: size, value: size }, size)),
    ),
  );
}
