import { h, type JSX } from "preact";
import { useCallback, useEffect, useMemo, useReducer, useState } from "preact/hooks";
import { answerTo, issuesByPath, summaryOf } from "../state/answer.js";
import type { Json, Keys } from "../state/data.js";
import { pathOf } from "../state/data.js";
import { installation } from "../state/fields.js";
import { begin, changed, type History, redone, undone } from "../state/history.js";
import { carriedBy, fragmentOf } from "../state/link.js";
import { idsIn } from "../state/references.js";
import { AnswerView } from "./answer-view.js";
import { Bar } from "./bar.js";
import { focusOn } from "./focus.js";
import { FormContext } from "./form-context.js";
import { goToPart } from "./go-to-part.js";
import { Members } from "./value-field.js";
import { useLater, usePainted } from "./when.js";

type Act =
  | { readonly kind: "change"; readonly document: Json; readonly place?: string | undefined }
  | { readonly kind: "undo" | "redo" };

function acted(history: History, act: Act): History {
  if (act.kind === "change") return changed(history, act.document, act.place);
  return act.kind === "undo" ? undone(history) : redone(history);
}

/** How long after a change what takes longer is worked out, in milliseconds. */
const pause = 250;

/** The whole page: what is there at one side, what follows from it at the other. */
export function App({ first, told }: { readonly first: Json; readonly told: string }): JSX.Element {
  const [history, act] = useReducer(acted, first, begin);
  const [shown, setShown] = useState({ path: "", times: 0 });
  const [text, tell] = useState(told);
  // Another installation has other parts, and what was unfolded in the one before says nothing of them.
  const [sheet, setSheet] = useState(0);
  const take = useCallback((next: Json) => {
    act({ kind: "change", document: next });
    setSheet((number) => number + 1);
  }, []);
  const document = history.now;
  const answer = useMemo(() => answerTo(document), [document]);
  const issues = useMemo(() => issuesByPath(answer), [answer]);
  const names = useMemo(() => idsIn(document), [document]);
  const later = useLater(answer, pause);
  const isFormThere = usePainted(true) ?? false;

  const change = useCallback((next: Json, place?: string) => {
    tell("");
    act({ kind: "change", document: next, place });
  }, []);
  const show = useCallback((keys: Keys) => {
    setShown(({ times }) => ({ path: pathOf(keys), times: times + 1 }));
    focusOn(keys);
  }, []);
  useAddress(document, first, take, tell);
  useKeys(act);

  return h(
    FormContext.Provider,
    { value: { document, issues, shown, change, show } },
    h(Bar, {
      history,
      undo: () => act({ kind: "undo" }),
      redo: () => act({ kind: "redo" }),
      take,
      tell,
    }),
    h(
      "div",
      { class: "told" },
      h(
        "p",
        { role: "status", class: later?.kind === "issues" ? "is-open" : "is-sized" },
        text,
        text === "" ? "" : " ",
        later === null ? "" : summaryOf(later),
      ),
      h(Parts, { isSized: answer.kind === "sized" }),
    ),
    h(
      "main",
      { class: "sides" },
      h(
        "form",
        {
          class: "entry",
          "aria-labelledby": "entry:title",
          id: "entry",
          tabIndex: -1,
          onSubmit: (event: Event) => event.preventDefault(),
        },
        h("h2", { id: "entry:title" }, "What is there"),
        h(
          "datalist",
          { id: "names" },
          names.map((name) => h("option", { key: name, value: name })),
        ),
        isFormThere
          ? h(Members, { key: sheet, schema: installation, keys: [], value: document, name: "installation" })
          : null,
      ),
      h(AnswerView, { answer, later, document }),
    ),
  );
}

const parts = [
  ["entry", "What is there"],
  ["report", "Drawing and schedule"],
  ["candidates", "Candidates"],
  ["found", "Found conductors"],
  ["editions", "Editions"],
  ["arrangements", "Arrangements"],
  ["readings", "Readings"],
  ["text", "JSON"],
] as const;

const onlySized: readonly string[] = ["found", "editions", "arrangements", "readings"];

/** Ways to the parts of the page; the address is left alone, for it carries the installation. */
function Parts({ isSized }: { readonly isSized: boolean }): JSX.Element {
  return h(
    "nav",
    { "aria-label": "Parts of this page" },
    parts
      .filter(([id]) => isSized || !onlySized.includes(id))
      .map(([id, name]) =>
        h("button", { key: id, type: "button", class: "quiet", onClick: () => goToPart(id) }, name),
      ),
  );
}

/** Keeps the installation in the fragment of the address, and follows a link that is opened on the page itself. */
function useAddress(
  document: Json,
  first: Json,
  take: (document: Json) => void,
  tell: (text: string) => void,
): void {
  useEffect(() => {
    if (document === first) return;
    const timer = setTimeout(() => {
      void fragmentOf(document).then((fragment) => history.replaceState(null, "", fragment));
    }, pause);
    return () => clearTimeout(timer);
  }, [document]);
  useEffect(() => {
    const follow = async (): Promise<void> => {
      const carried = await carriedBy(location.hash);
      if (carried.kind === "document") take(carried.document);
      if (carried.kind === "unreadable") tell("The link holds no installation that can be read.");
    };
    const listen = (): void => void follow();
    addEventListener("hashchange", listen);
    return () => removeEventListener("hashchange", listen);
  }, []);
}

/** Undo and redo by keyboard, save where a text is typed whose own undo is better. */
function useKeys(act: (one: Act) => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.target instanceof HTMLTextAreaElement) return;
      const key = event.key.toLowerCase();
      const kind = key === "y" || (key === "z" && event.shiftKey) ? "redo" : key === "z" ? "undo" : null;
      if (kind === null) return;
      event.preventDefault();
      act({ kind });
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, []);
}
