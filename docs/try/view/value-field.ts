import { h, type JSX } from "preact";
import { isList, isObject, type Json, type Keys, pathOf, without, withValue } from "../state/data.js";
import {
  type Field,
  fieldOf,
  isSimple,
  type Member,
  resolved,
  type Schema,
  variantOf,
} from "../state/fields.js";
import { freshFor } from "../state/fresh.js";
import { labelOf, singularOf, variantWords } from "../state/labels.js";
import { laidOut } from "../state/layout.js";
import { Fold } from "./fold.js";
import { useForm } from "./form-context.js";
import { ListField } from "./list-field.js";
import { Notes } from "./notes.js";
import { PairsField } from "./pairs-field.js";
import { SimpleField } from "./simple-field.js";
import type { ValueProps } from "./value-props.js";

/** The field of any value: the one place where the kinds of fields are told apart. */
export function ValueField(props: ValueProps): JSX.Element | null {
  const field = fieldOf(props.schema);
  if (isSimple(field)) return h(SimpleField, { ...props, field });
  if (field.kind === "fixed") {
    const only: Field = { kind: "choice", values: [field.value] };
    return props.isRequired ? null : h(SimpleField, { ...props, field: only });
  }
  if (props.value === undefined && !props.isRequired && field.kind !== "list") return h(Missing, props);
  if (!fits(field, props.value)) return h(Unfit, props);
  switch (field.kind) {
    case "list":
      return h(ListField, { ...props, item: field.item, inner: { ofValue: ValueField, ofMembers: Members } });
    case "variants":
      return h(VariantsField, { ...props, of: field.of });
    case "pairs":
      return h(PairsField, props);
    default:
      return h(Group, props);
  }
}

function fits(field: Field, value: Json | undefined): boolean {
  if (value === undefined || field.kind === "variants") return true;
  return field.kind === "list" ? isList(value) : isObject(value);
}

/** Something that is not there, and a button that puts it there. */
function Missing({ schema, keys, name }: ValueProps): JSX.Element {
  const { document, change, show } = useForm();
  const add = (): void => {
    change(withValue(document, keys, freshFor(schema, name, document) ?? {}));
    show(keys);
  };
  return h(
    "div",
    { class: "missing", id: pathOf(keys) },
    h("button", { type: "button", onClick: add }, `Add ${labelOf(name).toLowerCase()}`),
  );
}

/** A value that is of another kind than it has to be, as in a document from elsewhere. */
function Unfit({ keys, name, value }: ValueProps): JSX.Element {
  const { document, change, issues } = useForm();
  const path = pathOf(keys);
  return h(
    "div",
    { class: "unfit", id: path, tabIndex: -1 },
    h("p", null, `${labelOf(name)}: `, h("code", null, JSON.stringify(value).slice(0, 200))),
    h(Notes, { id: `${path}:wrong`, issues: issues.get(path) ?? [] }),
    h("button", { type: "button", onClick: () => change(without(document, keys)) }, "Take it out"),
  );
}

/** The members of an object in a frame of their own. */
function Group({ schema, keys, name, value, isRequired }: ValueProps): JSX.Element {
  const { document, change } = useForm();
  const takeOut = h(
    "button",
    { type: "button", class: "quiet", onClick: () => change(without(document, keys)) },
    `Remove ${labelOf(name).toLowerCase()}`,
  );
  return h(
    "fieldset",
    { class: "group", id: pathOf(keys), tabIndex: -1 },
    h("legend", null, labelOf(name)),
    h(Members, { schema, keys, value, name: labelOf(name).toLowerCase() }),
    isRequired ? null : takeOut,
  );
}

/** The members of an object: those at hand, and the others under a fold. */
export function Members({ schema, keys, value, name }: Omit<ValueProps, "isRequired">): JSX.Element {
  const { issues } = useForm();
  const field = fieldOf(schema);
  const { first, more } = laidOut(field.kind === "object" ? field.members : []);
  const path = pathOf(keys);
  const own = issues.get(path) ?? [];
  const unknown = unknownMembers(schema, value);
  const filled = more.filter((one) => isObject(value) && value[one.name] !== undefined).length;
  const isNamed = isObject(value) && typeof value["id"] === "string";
  return h(
    "div",
    { class: "members" },
    own.length === 0 ? null : h(Notes, { id: `${path}:wrong`, issues: own }),
    first.map((one) => memberField(one, keys, value)),
    unknown.map((one) => h(Unfit, { key: one, ...unfitProps(one, keys, value) })),
    more.length === 0
      ? null
      : h(Fold, {
          keys,
          kind: "more",
          holds: more.map((one) => pathOf([...keys, one.name])),
          summary: `More about ${isNamed ? String(value["id"]) : `the ${name}`}${filled === 0 ? "" : `: ${filled} given`}`,
          isOpen: filled > 0 && keys.length > 0,
          children: () => more.map((one) => memberField(one, keys, value)),
        }),
  );
}

function memberField({ name, schema, isRequired }: Member, keys: Keys, value: Json | undefined): JSX.Element {
  const inner = isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;
  return h(ValueField, { key: name, schema, keys: [...keys, name], name, value: inner, isRequired });
}

/** Members that the schema does not know; the library says so, and they can be taken out. */
function unknownMembers(schema: Schema, value: Json | undefined): readonly string[] {
  const { properties = {} } = resolved(schema);
  return isObject(value) ? Object.keys(value).filter((name) => !Object.hasOwn(properties, name)) : [];
}

function unfitProps(name: string, keys: Keys, value: Json | undefined): ValueProps {
  const inner = isObject(value) ? value[name] : undefined;
  return { schema: {}, keys: [...keys, name], name, value: inner, isRequired: false };
}

/** One of several ways to give the same thing, with a control that changes the way. */
function VariantsField({
  schema,
  of,
  keys,
  name,
  value,
  isRequired,
}: ValueProps & { readonly of: readonly Schema[] }): JSX.Element {
  const { document, change } = useForm();
  const at = variantOf(of, value);
  const path = pathOf(keys);
  const chosen = resolved(of[at] ?? {});
  const turn = (event: Event): void => {
    const next = of[Number((event.currentTarget as HTMLSelectElement).value)];
    if (next === undefined) return;
    const fresh = freshFor(next, name, document);
    const kept = keptMembers(resolved(next), value);
    change(
      withValue(document, keys, isObject(fresh ?? null) ? { ...(fresh as object), ...kept } : (fresh ?? "")),
    );
  };
  const control = h(
    "div",
    { class: "field way" },
    h(
      "label",
      { for: `${path}:way` },
      chosen.properties?.["kind"] === undefined ? `${labelOf(name)}, given` : "Kind",
    ),
    h(
      "select",
      { id: `${path}:way`, value: String(at), onChange: turn },
      of.map((one, i) => h("option", { key: i, value: String(i) }, variantWords(resolved(one)))),
    ),
  );
  const inner = { schema: chosen, keys, name, value, isRequired: true };
  const members = { ...inner, name: singularOf(name) };
  const isItem = typeof keys.at(-1) === "number";
  const body = fieldOf(chosen).kind === "object" && isItem ? h(Members, members) : h(ValueField, inner);
  return h(
    "div",
    { class: "variants" },
    control,
    body,
    isRequired || isItem ? null : h(TakeOut, { schema, keys, name, value, isRequired }),
  );
}

function TakeOut({ keys, name }: ValueProps): JSX.Element {
  const { document, change } = useForm();
  return h(
    "button",
    { type: "button", class: "quiet", onClick: () => change(without(document, keys)) },
    `Remove ${labelOf(name).toLowerCase()}`,
  );
}

/** Members of a value that another variant has too, save what tells the variants apart. */
function keptMembers({ properties = {} }: Schema, value: Json | undefined): Readonly<Record<string, Json>> {
  if (!isObject(value)) return {};
  return Object.fromEntries(
    Object.entries(value).filter(
      ([name]) => Object.hasOwn(properties, name) && properties[name]?.const === undefined,
    ),
  );
}
