import { h, type JSX } from "preact";
import { type Json, type Keys, pathOf, without, withValue } from "../state/data.js";
import { type Field, resolved, type Schema } from "../state/fields.js";
import { labelOf, valueWords } from "../state/labels.js";
import { withName } from "../state/references.js";
import { useForm } from "./form-context.js";
import { Notes } from "./notes.js";

/** What a field of one control is made of. */
export interface SimpleProps {
  readonly field: Field;
  readonly schema: Schema;
  readonly keys: Keys;
  readonly name: string;
  readonly value: Json | undefined;
  readonly isRequired: boolean;
}

/** A label, one control, what it is for, and what is wrong with it. */
export function SimpleField({ field, schema, keys, name, value, isRequired }: SimpleProps): JSX.Element {
  const { document, issues, change } = useForm();
  const path = pathOf(keys);
  const wrong = issues.get(path) ?? [];
  const { description = "" } = resolved(schema);
  const set = (wanted: Json | undefined): void =>
    change(wanted === undefined ? without(document, keys) : withValue(document, keys, wanted), path);
  const described = [description === "" ? "" : `${path}:says`, wrong.length === 0 ? "" : `${path}:wrong`]
    .filter((one) => one !== "")
    .join(" ");
  const common = {
    id: path,
    ...(described !== "" && { "aria-describedby": described }),
    ...(wrong.length > 0 && { "aria-invalid": "true" as const }),
  };
  return h(
    "div",
    { class: `field ${field.kind}` },
    h("label", { for: path }, labelOf(name)),
    controlOf(field, value, isRequired, common, set, (text) => change(withName(document, keys, text))),
    description === "" ? null : h("p", { class: "says", id: `${path}:says` }, description),
    wrong.length === 0 ? null : h(Notes, { id: `${path}:wrong`, issues: wrong }),
  );
}

type Common = Readonly<Record<string, string>>;

function controlOf(
  field: Field,
  value: Json | undefined,
  isRequired: boolean,
  common: Common,
  set: (wanted: Json | undefined) => void,
  rename: (text: string) => void,
): JSX.Element {
  switch (field.kind) {
    case "choice":
      return select(field.values, value, isRequired, common, set);
    case "flag":
      return select([true, false], value, isRequired, common, set);
    case "number":
      return input(value, { ...common, inputMode: "decimal" }, (text) => set(numberIn(text)));
    case "reference":
      return input(value, { ...common, list: "names" }, (text) => set(text === "" ? undefined : text));
    case "id":
      return h("input", {
        ...common,
        type: "text",
        autocomplete: "off",
        value: textOf(value),
        onChange: (event: Event) => rename(typedIn(event)),
      });
    default:
      return input(value, common, (text) => set(text === "" ? undefined : text));
  }
}

/** What is no number stays a text, so that the library says what is wrong with it. */
function numberIn(text: string): Json | undefined {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  return /^-?\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : text;
}

function textOf(value: Json | undefined): string {
  if (value === undefined) return "";
  return typeof value === "string" ? value : JSON.stringify(value);
}

function typedIn(event: Event): string {
  return (event.currentTarget as HTMLInputElement).value;
}

function input(value: Json | undefined, common: Common, take: (text: string) => void): JSX.Element {
  return h("input", {
    ...common,
    type: "text",
    autocomplete: "off",
    value: textOf(value),
    onInput: (event: Event) => take(typedIn(event)),
  });
}

/** A closed list; a value that is none of it is shown as it was given, and the library says what is wrong. */
function select(
  values: readonly (string | number | boolean)[],
  value: Json | undefined,
  isRequired: boolean,
  common: Common,
  set: (wanted: Json | undefined) => void,
): JSX.Element {
  const at = (values as readonly (Json | undefined)[]).indexOf(value);
  const isForeign = value !== undefined && at < 0;
  return h(
    "select",
    {
      ...common,
      value: isForeign ? "given" : at < 0 ? "" : String(at),
      onChange: (event: Event) => {
        const chosen = (event.currentTarget as HTMLSelectElement).value;
        if (chosen !== "given") set(chosen === "" ? undefined : values[Number(chosen)]);
      },
    },
    h("option", { value: "" }, isRequired ? "choose" : "not given"),
    isForeign ? h("option", { value: "given" }, `${JSON.stringify(value)}, as given`) : null,
    values.map((one, i) => h("option", { key: String(one), value: String(i) }, optionWords(one))),
  );
}

function optionWords(value: string | number | boolean): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  return valueWords(value);
}
