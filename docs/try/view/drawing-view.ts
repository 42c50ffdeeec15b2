import { type DocumentPart, drawingAsSvg } from "bondmil";
import { h, type JSX } from "preact";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { PartsView } from "./document-view.js";

/** The section of a report that holds its drawing, a frame for each sheet; what is wide scrolls sideways in it. */
export function DrawingView({ parts }: { readonly parts: readonly DocumentPart[] }): JSX.Element {
  const sheets = useMemo(
    () => parts.flatMap((part) => (part.kind === "drawing" ? [part.sheet] : [])),
    [parts],
  );
  const frames = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const drawn = sheetsOf(drawingAsSvg({ title: "", sheets }));
    frames.current?.replaceChildren(...drawn.map((sheet, i) => framed(sheet, sheets[i]?.title ?? "")));
  }, [sheets]);
  return h("div", { class: "drawing" }, h(PartsView, { parts, name: "drawing" }), h("div", { ref: frames }));
}

/** The sheets of a picture. Its styles are in a file of the page, which forbids styles in its own text. */
function sheetsOf(svg: string): readonly Element[] {
  const plain = svg.replace(/<style>[^<]*<\/style>/, "");
  const { documentElement } = new DOMParser().parseFromString(plain, "image/svg+xml");
  return [...documentElement.children].flatMap((one) => {
    if (one.tagName !== "svg") return [];
    one.removeAttribute("y");
    return [one];
  });
}

function framed(sheet: Element, title: string): HTMLElement {
  const frame = document.createElement("div");
  frame.className = "sheet sideways";
  frame.tabIndex = 0;
  frame.setAttribute("role", "group");
  frame.setAttribute("aria-label", `${title}, scrolls sideways`);
  frame.append(document.importNode(sheet, true));
  return frame;
}
