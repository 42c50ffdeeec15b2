import type { Issue } from "bondmil";
import { h, type JSX } from "preact";

/** What is wrong at a place, in the words of the library; read aloud with the control that it describes. */
export function Notes({
  id,
  issues,
}: {
  readonly id: string;
  readonly issues: readonly Issue[];
}): JSX.Element {
  return h(
    "ul",
    { class: "notes", id },
    issues.map(({ message }) => h("li", { key: message }, message)),
  );
}
