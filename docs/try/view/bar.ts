import { h, type JSX } from "preact";
import { useState } from "preact/hooks";
import { startingPoints } from "../starting-points/starting-points.js";
import { isObject, type Json } from "../state/data.js";
import type { History } from "../state/history.js";
import { fragmentOf } from "../state/link.js";

/** What can be done with the whole installation. */
export interface BarProps {
  readonly history: History;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly take: (document: Json) => void;
  readonly tell: (text: string) => void;
}

export function Bar({ history, undo, redo, take, tell }: BarProps): JSX.Element {
  const [chosen, setChosen] = useState("");
  const begin = (event: Event): void => {
    const point = startingPoints[Number((event.currentTarget as HTMLSelectElement).value)];
    setChosen("");
    if (point === undefined) return;
    take(point.document);
    tell(`Began with ${point.name}.`);
  };
  const load = async (event: Event): Promise<void> => {
    const input = event.currentTarget as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file === undefined) return;
    try {
      const read = JSON.parse(await file.text()) as Json;
      if (!isObject(read)) throw new SyntaxError("an installation is an object in braces");
      take(read);
      tell(`Loaded ${file.name}.`);
    } catch (error) {
      tell(`${file.name} holds no installation: ${error instanceof Error ? error.message : String(error)}.`);
    }
    input.value = "";
  };
  return h(
    "section",
    { class: "bar", "aria-label": "The whole installation" },
    h(
      "div",
      { class: "begin" },
      h("label", { for: "begin" }, "Begin with an invented one"),
      h(
        "select",
        { id: "begin", value: chosen, onChange: begin },
        h("option", { value: "" }, "choose"),
        startingPoints.map(({ name }, i) => h("option", { key: name, value: String(i) }, name)),
      ),
    ),
    button("Undo", undo, history.past.length === 0),
    button("Redo", redo, history.future.length === 0),
    button("Print the report", () => window.print()),
    button("Copy a link", () => void copyLink(history.now, tell)),
    button(
      "Copy the JSON",
      () => void copyText(JSON.stringify(history.now, null, 2), "The JSON is copied.", tell),
    ),
    button("Save", () => save(history.now)),
    h("label", { class: "load", for: "load" }, "Load"),
    h("input", {
      id: "load",
      type: "file",
      accept: ".json,application/json",
      onChange: (event: Event) => void load(event),
    }),
  );
}

function button(text: string, act: () => void, isOff = false): JSX.Element {
  return h("button", { type: "button", onClick: act, disabled: isOff }, text);
}

async function copyLink(document: Json, tell: (text: string) => void): Promise<void> {
  const link = new URL(await fragmentOf(document), location.href).href;
  await copyText(link, "The link is copied. It carries the whole installation, and no server sees it.", tell);
}

async function copyText(text: string, done: string, tell: (text: string) => void): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    tell(done);
  } catch {
    tell(
      "The browser does not permit to copy. The address of this page carries the installation; the JSON stands at the end.",
    );
  }
}

/** Puts the installation into a file, under its title. */
function save(document: Json): void {
  const title = isObject(document) && typeof document["title"] === "string" ? document["title"] : "";
  const name = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  const address = URL.createObjectURL(
    new Blob([`${JSON.stringify(document, null, 2)}\n`], { type: "application/json" }),
  );
  const link = window.document.createElement("a");
  link.href = address;
  link.download = `${name === "" ? "installation" : name}.json`;
  link.click();
  URL.revokeObjectURL(address);
}
