import { type ComponentChildren, h, type JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { type Keys, pathOf } from "../state/data.js";
import { useForm } from "./form-context.js";

/** What is under a summary that folds it away. */
export interface FoldProps {
  readonly keys: Keys;
  readonly summary: string;
  readonly isOpen: boolean;
  /** Folds of several kinds may stand at one place. */
  readonly kind: "part" | "more";
  /** The places under it, where they are not all that is at its own place. */
  readonly holds?: readonly string[];
  readonly children: () => ComponentChildren;
}

/** A part of the form under its summary. It unfolds when a place in it is to be seen, and is made only when it is unfolded. */
export function Fold({ keys, summary, isOpen, kind, holds, children }: FoldProps): JSX.Element {
  const { shown, issues } = useForm();
  const [open, setOpen] = useState(isOpen);
  const path = pathOf(keys);
  const under = holds ?? [path];
  const isUnder = (one: string): boolean => under.some((each) => one === each || one.startsWith(`${each}.`));
  useEffect(() => {
    if (shown.times > 0 && isUnder(shown.path)) setOpen(true);
  }, [shown.times]);
  const count = [...issues.keys()].filter(isUnder).length;
  return h(
    "details",
    {
      class: `fold ${kind}`,
      open,
      onToggle: (event: Event) => setOpen((event.currentTarget as HTMLDetailsElement).open),
    },
    h(
      "summary",
      { id: kind === "part" ? path : undefined },
      summary,
      count > 0 ? h("span", { class: "mend" }, ` ${count} to mend`) : null,
    ),
    open ? h("div", { class: "inside" }, children()) : null,
  );
}
