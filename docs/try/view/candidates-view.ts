import { h, type JSX } from "preact";
import { useMemo } from "preact/hooks";
import { candidatesIn, candidateWords, type OpenRun, withCandidate } from "../state/candidates.js";
import type { Json } from "../state/data.js";
import { DocumentView } from "./document-view.js";
import { useForm } from "./form-context.js";

/** The lawful ways to supply each run whose conductors are yet to be chosen. */
export function CandidatesView({ document }: { readonly document: Json }): JSX.Element {
  const candidates = useMemo(() => candidatesIn(document), [document]);
  if (candidates.kind === "open")
    return h(
      "div",
      null,
      candidates.runs.map((one) => h(RunView, { key: one.run, open: one })),
    );
  return h(
    "p",
    null,
    candidates.why === ""
      ? "The conductors of every run are chosen. To see what could supply a run, give its ungrounded conductors as “to be chosen, from candidates”."
      : candidates.why,
  );
}

function RunView({ open }: { readonly open: OpenRun }): JSX.Element {
  const { document, change } = useForm();
  return h(
    "div",
    null,
    h("h3", null, `For ${open.run}`),
    h(
      "div",
      { class: "offered" },
      open.offered.map((one) =>
        h(
          "button",
          {
            key: candidateWords(one),
            type: "button",
            onClick: () => change(withCandidate(document, open.keys, one)),
          },
          `Take ${candidateWords(one)}`,
        ),
      ),
    ),
    h(DocumentView, { document: open.document, name: `candidates ${open.run}` }),
  );
}
