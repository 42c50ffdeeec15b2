import { type Keys, pathOf } from "../state/data.js";

/** Frames to wait for a place, since the folds over it open one within the other. */
const frames = 30;

const controls = "input, select, textarea, button";

/** Puts the focus on the control at a place once it is there, or in the end on the nearest thing around it. */
export function focusOn(keys: Keys, framesLeft: number = frames): void {
  requestAnimationFrame(() => {
    const exact = document.getElementById(pathOf(keys));
    // The summary of a fold stands at the place before what is under it does.
    const isOpening = exact?.parentElement instanceof HTMLDetailsElement && controlAt(exact) === null;
    if (framesLeft > 0 && (exact === null || isOpening)) focusOn(keys, framesLeft - 1);
    else focus(exact ?? nearest(keys));
  });
}

function nearest(keys: Keys): HTMLElement | null {
  const around = keys.map((_, i) => document.getElementById(pathOf(keys.slice(0, keys.length - i))));
  return around.find((one) => one !== null) ?? null;
}

function controlAt(element: HTMLElement): HTMLElement | null {
  const around = element.tagName === "SUMMARY" ? element.parentElement : element;
  return around?.querySelector<HTMLElement>(controls) ?? null;
}

function focus(element: HTMLElement | null): void {
  if (element === null) return;
  const target = element.matches(controls) ? element : (controlAt(element) ?? element);
  target.scrollIntoView({ block: "center" });
  target.focus({ preventScroll: true });
}
