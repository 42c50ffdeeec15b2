import { type ComponentChildren, h, type JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

/** A part of the page with a heading that folds it; what is folded is not worked out. */
export function Section({
  id,
  title,
  isOpen,
  children,
}: {
  readonly id: string;
  readonly title: string;
  readonly isOpen: boolean;
  readonly children: () => ComponentChildren;
}): JSX.Element {
  const [open, setOpen] = useState(isOpen);
  useEffect(() => {
    if (isOpen) setOpen(true);
  }, [isOpen]);
  return h(
    "section",
    { class: "section", id, tabIndex: -1, "aria-labelledby": `${id}:title` },
    h(
      "details",
      { open, onToggle: (event: Event) => setOpen((event.currentTarget as HTMLDetailsElement).open) },
      h("summary", null, h("h2", { id: `${id}:title` }, title)),
      open ? children() : null,
    ),
  );
}
