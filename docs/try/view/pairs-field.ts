import readings from "bondmil/tables/readings.json" with { type: "json" };
import { h, type JSX } from "preact";
import { isObject, pathOf, without, withValue } from "../state/data.js";
import { labelOf } from "../state/labels.js";
import { useForm } from "./form-context.js";
import { Notes } from "./notes.js";
import type { ValueProps } from "./value-props.js";

/** The readings that a text leaves open, each with its alternatives; the one mapping of names in an installation. */
export function PairsField({ keys, name, value }: ValueProps): JSX.Element {
  const { document, change, issues } = useForm();
  const given = isObject(value) ? value : {};
  const unknown = Object.keys(given).filter((id) => !readings.readings.some((one) => one.id === id));
  return h(
    "fieldset",
    { class: "group readings", id: pathOf(keys), tabIndex: -1 },
    h("legend", null, labelOf(name)),
    readings.readings.map(({ id, question, alternatives, default: usual }) => {
      const place = [...keys, id];
      const path = pathOf(place);
      const wrong = issues.get(path) ?? [];
      const chosen = given[id];
      return h(
        "div",
        { class: "field", key: id },
        h("label", { for: path }, question),
        h(
          "select",
          {
            id: path,
            value: typeof chosen === "string" ? chosen : "",
            onChange: (event: Event) => {
              const wanted = (event.currentTarget as HTMLSelectElement).value;
              change(wanted === "" ? without(document, place) : withValue(document, place, wanted));
            },
          },
          h(
            "option",
            { value: "" },
            `by default: ${alternatives.find((one) => one.id === usual)?.says ?? usual}`,
          ),
          alternatives.map((one) => h("option", { key: one.id, value: one.id }, one.says)),
        ),
        wrong.length === 0 ? null : h(Notes, { id: `${path}:wrong`, issues: wrong }),
      );
    }),
    unknown.map((id) =>
      h(
        "div",
        { class: "unfit", key: id, id: pathOf([...keys, id]), tabIndex: -1 },
        h("p", null, id),
        h(Notes, { id: `${pathOf([...keys, id])}:wrong`, issues: issues.get(pathOf([...keys, id])) ?? [] }),
        h(
          "button",
          { type: "button", onClick: () => change(without(document, [...keys, id])) },
          "Take it out",
        ),
      ),
    ),
  );
}
