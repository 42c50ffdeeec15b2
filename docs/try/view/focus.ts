import { type Keys, pathOf } from "../state/data.js";

/** Folds over a place open in the next two frames; then it can have the focus. */
const untilUnfolded = 60;

const controls = "input, select, textarea";

/** Puts the focus on the control at a place, or on the nearest thing around it. */
export function focusOn(keys: Keys): void {
  setTimeout(() => {
    const places = keys.map((_, i) => pathOf(keys.slice(0, keys.length - i)));
    const element = places.map((path) => document.getElementById(path)).find((one) => one !== null);
    if (element === undefined || element === null) return;
    const around = element.tagName === "SUMMARY" ? element.parentElement : element;
    const inner = element.matches(controls) ? element : around?.querySelector<HTMLElement>(controls);
    const target = element.tagName === "FIELDSET" && places[0] !== element.id ? element : (inner ?? element);
    target.scrollIntoView({ block: "center" });
    target.focus({ preventScroll: true });
  }, untilUnfolded);
}
