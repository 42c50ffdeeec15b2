import { compareInstallation, comparisonDocument, type Installation } from "bondmil";
import { h, type JSX } from "preact";
import { useMemo } from "preact/hooks";
import { shownBy } from "../state/answer.js";
import { DocumentView } from "./document-view.js";

const questions = {
  edition: "The same installation under every edition",
  arrangement: "Other arrangements that it could be drawn with",
  reading: "Other readings of texts that are open",
} as const;

/** What an installation can be put beside. */
export type ComparedBy = keyof typeof questions;

/** The installation beside itself, changed in one way. */
export function Compared({
  installation,
  by,
}: {
  readonly installation: Installation;
  readonly by: ComparedBy;
}): JSX.Element {
  const shown = useMemo(
    () =>
      shownBy(() => comparisonDocument(compareInstallation({ by, installation }), { title: questions[by] })),
    [installation, by],
  );
  return shown.kind === "none"
    ? h("p", null, shown.why)
    : h(DocumentView, { document: shown.document, name: by });
}
