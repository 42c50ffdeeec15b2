import { h, type JSX } from "preact";
import {
  isList,
  isObject,
  type Json,
  type Keys,
  pathOf,
  withItem,
  without,
  withValue,
} from "../state/data.js";
import { fieldOf, isSimple, resolved, type Schema, variantOf } from "../state/fields.js";
import { freshFor } from "../state/fresh.js";
import { labelOf, singularOf, titleOf } from "../state/labels.js";
import { copyOf } from "../state/references.js";
import { Fold } from "./fold.js";
import { useForm } from "./form-context.js";
import { Notes } from "./notes.js";
import type { InnerFields, ValueProps } from "./value-props.js";

/** A list with its items, each of which can be copied and removed, and a button for another one. */
export function ListField({
  item,
  keys,
  name,
  value,
  inner,
}: ValueProps & { readonly item: Schema; readonly inner: InnerFields }): JSX.Element {
  const { document, change, show, issues } = useForm();
  const list = isList(value) ? value : [];
  const one = singularOf(name);
  const path = pathOf(keys);
  const own = issues.get(path) ?? [];
  const add = (): void => {
    const fresh = freshFor(item, name, document) ?? "";
    change(withItem(document, keys, fresh));
    show([...keys, list.length]);
  };
  const remove = (at: number): void => {
    change(list.length === 1 ? withValue(document, keys, []) : without(document, [...keys, at]));
    show(keys);
  };
  const copy = (at: number): void => {
    change(withItem(document, keys, copyOf(list[at] ?? null, document), at));
    show([...keys, at + 1]);
  };
  return h(
    "fieldset",
    { class: `list ${isInRows(item) ? "rows" : "folds"}`, id: path, tabIndex: -1 },
    h("legend", null, `${labelOf(name)}${list.length > 1 ? ` (${list.length})` : ""}`),
    own.length === 0 ? null : h(Notes, { id: `${path}:wrong`, issues: own }),
    list.map((each, at) => {
      const title = `${one} ${titleOf(each) || at + 1}`;
      const buttons = h(
        "div",
        { class: "buttons" },
        isObject(each)
          ? h(
              "button",
              { type: "button", class: "quiet", "aria-label": `Copy ${title}`, onClick: () => copy(at) },
              "Copy",
            )
          : null,
        h(
          "button",
          { type: "button", class: "quiet", "aria-label": `Remove ${title}`, onClick: () => remove(at) },
          "Remove",
        ),
      );
      return h(Item, {
        key: at,
        item,
        keys: [...keys, at],
        name,
        value: each,
        count: list.length,
        buttons,
        inner,
      });
    }),
    h("button", { type: "button", class: "add", onClick: add }, `Add ${one}`),
  );
}

interface ItemProps {
  readonly item: Schema;
  readonly keys: Keys;
  readonly name: string;
  readonly value: Json;
  readonly count: number;
  readonly buttons: JSX.Element;
  readonly inner: InnerFields;
}

function Item({ item, keys, name, value, count, buttons, inner }: ItemProps): JSX.Element {
  const props = { schema: item, keys, name, value, isRequired: true };
  if (isInRows(item)) {
    const field = fieldOf(item);
    const body = isSimple(field)
      ? h(inner.ofValue, { ...props, name: singularOf(name) })
      : h(InRow, { ...props, inner });
    return h("div", { class: "row" }, body, buttons);
  }
  return h(Fold, {
    keys,
    kind: "part",
    summary: titleOf(value) || singularOf(name),
    isOpen: count === 1 && keys.length < 5,
    children: () => [
      fieldOf(item).kind === "variants" || !isObject(value)
        ? h(inner.ofValue, props)
        : h(inner.ofMembers, { schema: item, keys, value, name: singularOf(name) }),
      buttons,
    ],
  });
}

/** An item that fits in one row; of variants also the control that changes them, where there is more than the usual one. */
function InRow({
  schema,
  keys,
  name,
  value,
  isRequired,
  inner,
}: ValueProps & { readonly inner: InnerFields }): JSX.Element {
  const field = fieldOf(schema);
  if (field.kind === "variants" && variantOf(field.of, value) > 0)
    return h(inner.ofValue, { schema, keys, name, value, isRequired });
  const usual = field.kind === "variants" ? (field.of[0] ?? {}) : schema;
  return h(inner.ofMembers, { schema: usual, keys, value, name });
}

/** Few members that are put in with one control each need no fold. */
function isInRows(item: Schema): boolean {
  const field = fieldOf(item);
  if (isSimple(field)) return true;
  if (field.kind === "variants") return field.of[0] !== undefined && isInRows(resolved(field.of[0]));
  return (
    field.kind === "object" &&
    field.members.length <= 3 &&
    field.members.every(({ schema }) => isSimple(fieldOf(schema)))
  );
}
