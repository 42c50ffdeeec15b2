import { drawingAsSvg, drawingOf, type Installation } from "bondmil";
import { h, type JSX } from "preact";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";

/** The drawing of an installation, a frame for each sheet; what is wide scrolls sideways in it. */
export function DrawingView({ installation }: { readonly installation: Installation }): JSX.Element {
  const drawing = useMemo(() => drawingOf(installation), [installation]);
  const frames = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const sheets = sheetsOf(drawingAsSvg(drawing));
    frames.current?.replaceChildren(
      ...sheets.map((sheet, i) => framed(sheet, drawing.sheets[i]?.title ?? "")),
    );
  }, [drawing]);
  return h("div", { class: "drawing", ref: frames });
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
