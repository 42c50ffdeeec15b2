import { compareInstallation, comparisonDocument, type Installation } from "bondmil";
import { h, type JSX } from "preact";
import { useMemo } from "preact/hooks";
import { shownBy } from "../state/answer.js";
import { DocumentView } from "./document-view.js";

const questions = {
  editions: "The same installation under every edition",
  arrangements: "Other arrangements that it could be drawn with",
  readings: "Other readings of texts that are open",
} as const;

/** What an installation can be put beside. */
export type ComparedOver = keyof typeof questions;

/** The installation beside itself, changed in one way. */
export function Compared({
  installation,
  over,
}: {
  readonly installation: Installation;
  readonly over: ComparedOver;
}): JSX.Element {
  const shown = useMemo(
    () =>
      shownBy(() =>
        comparisonDocument(compareInstallation({ over, installation }), { title: questions[over] }),
      ),
    [installation, over],
  );
  return shown.kind === "none"
    ? h("p", null, shown.why)
    : h(DocumentView, { document: shown.document, name: over });
}
