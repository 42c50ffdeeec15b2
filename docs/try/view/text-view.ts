import { h, type JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { isObject, type Json } from "../state/data.js";
import { useForm } from "./form-context.js";

/** The installation as JSON: the state of the page itself, to copy, to change and to keep. */
export function TextView({ document }: { readonly document: Json }): JSX.Element {
  const { change } = useForm();
  const written = JSON.stringify(document, null, 2);
  const [text, setText] = useState(written);
  const [wrong, setWrong] = useState("");
  useEffect(() => {
    if (isSame(text, document)) return;
    setText(written);
    setWrong("");
  }, [written]);
  const take = (event: Event): void => {
    const typed = (event.currentTarget as HTMLTextAreaElement).value;
    setText(typed);
    try {
      const read = JSON.parse(typed) as Json;
      if (!isObject(read)) throw new SyntaxError("an installation is an object in braces");
      setWrong("");
      if (JSON.stringify(read) !== JSON.stringify(document)) change(read, "json");
    } catch (error) {
      setWrong(error instanceof Error ? error.message : String(error));
    }
  };
  return h(
    "div",
    { class: "field text-of" },
    h("label", { for: "json" }, "The installation as JSON"),
    h("textarea", {
      id: "json",
      rows: 18,
      spellcheck: false,
      value: text,
      onInput: take,
      ...(wrong !== "" && { "aria-invalid": "true", "aria-describedby": "json:wrong" }),
    }),
    wrong === ""
      ? null
      : h(
          "ul",
          { class: "notes", id: "json:wrong" },
          h("li", null, `No JSON yet: ${wrong}. The form keeps what it had.`),
        ),
  );
}

/** What is typed stays as it was typed while it says the same. */
function isSame(text: string, document: Json): boolean {
  try {
    return JSON.stringify(JSON.parse(text)) === JSON.stringify(document);
  } catch {
    return false;
  }
}
