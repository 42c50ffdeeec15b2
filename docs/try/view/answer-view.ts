import { h, type JSX } from "preact";
import { useMemo } from "preact/hooks";
import { type Answer, drawingApart } from "../state/answer.js";
import type { Json, Keys } from "../state/data.js";
import { CandidatesView } from "./candidates-view.js";
import { Compared } from "./compared.js";
import { DocumentView } from "./document-view.js";
import { DrawingView } from "./drawing-view.js";
import { useForm } from "./form-context.js";
import { FoundView } from "./found-view.js";
import { Section } from "./section.js";
import { TextView } from "./text-view.js";
import { usePainted } from "./when.js";

type Sized = Extract<Answer, { readonly kind: "sized" }>;

/** Everything that follows from the installation. `later` is the same a moment afterwards, for what takes longer. */
export function AnswerView({
  answer,
  later,
  document,
}: {
  readonly answer: Answer;
  readonly later: Answer | null;
  readonly document: Json;
}): JSX.Element {
  const isSized = answer.kind === "sized";
  return h(
    "div",
    { class: "answer" },
    h(
      "section",
      { class: "report", id: "report", tabIndex: -1, "aria-labelledby": "report:title" },
      h("h2", { id: "report:title" }, isSized ? answer.report.title : "Not sized yet"),
      isSized ? h(Report, { answer }) : h(Issues, { answer }),
    ),
    h(Section, {
      id: "candidates",
      title: "Candidates for the supply",
      isOpen: !isSized,
      key: `candidates ${isSized}`,
      children: () => h(CandidatesView, { document }),
    }),
    later?.kind !== "sized" || !isSized
      ? null
      : [
          h(Section, {
            id: "found",
            title: "Found conductors, checked",
            isOpen: later.installation.installed !== undefined,
            children: () =>
              h(FoundView, { installation: later.installation, schedule: later.schedule(), document }),
          }),
          h(Section, {
            id: "editions",
            title: "Editions compared",
            isOpen: true,
            children: () => h(Compared, { installation: later.installation, over: "editions" }),
          }),
          h(Section, {
            id: "arrangements",
            title: "Arrangements compared",
            isOpen: true,
            children: () => h(Compared, { installation: later.installation, over: "arrangements" }),
          }),
          h(Section, {
            id: "readings",
            title: "Readings compared",
            isOpen: false,
            children: () => h(Compared, { installation: later.installation, over: "readings" }),
          }),
        ],
    h(Section, {
      id: "text",
      title: "The installation as JSON",
      isOpen: false,
      children: () => h(TextView, { document }),
    }),
  );
}

/** The drawing at once, and the rest of the report a frame later; until then that of the answer before. */
function Report({ answer }: { readonly answer: Sized }): JSX.Element {
  const painted = usePainted(answer);
  const { drawing } = useMemo(() => drawingApart(answer.report), [answer]);
  const below = useMemo(
    () =>
      painted === null
        ? null
        : h(DocumentView, {
            document: painted.report,
            name: "report",
            parts: drawingApart(painted.report).rest,
          }),
    [painted],
  );
  return h(
    "div",
    null,
    answer.report.rows.length === 0
      ? h("p", null, "Nothing is drawn yet. Add a service, a separately derived system or a circuit.")
      : null,
    drawing.length === 0 ? null : h(DrawingView, { parts: drawing }),
    below,
  );
}

/** What is missing or wrong, each with a way to its field. */
function Issues({ answer }: { readonly answer: Extract<Answer, { readonly kind: "issues" }> }): JSX.Element {
  const { show } = useForm();
  return h(
    "div",
    null,
    h("p", null, "Nothing is guessed. Sizes stand here as soon as this is mended:"),
    h(
      "ul",
      { class: "issues" },
      answer.issues.map(({ keys, path, message }, i) =>
        h(
          "li",
          { key: i },
          h(
            "button",
            { type: "button", class: "quiet", onClick: () => show(keys as Keys) },
            path === "" ? "the installation" : path,
          ),
          ` ${message}`,
        ),
      ),
    ),
  );
}
