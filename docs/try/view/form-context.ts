import type { Issue } from "bondmil";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Json, Keys } from "../state/data.js";

/** What every field of the form has at hand. */
export interface Form {
  readonly document: Json;
  /** Issues of the library by the place that they are of. */
  readonly issues: ReadonlyMap<string, readonly Issue[]>;
  /** A place that is to be seen, whatever is folded over it, and how often it was to be. */
  readonly shown: { readonly path: string; readonly times: number };
  /** Takes a changed document; changes of one place in a row are one step to undo. */
  readonly change: (document: Json, place?: string) => void;
  /** Makes a place seen and puts the focus there. */
  readonly show: (keys: Keys) => void;
}

export const FormContext = createContext<Form | null>(null);

export function useForm(): Form {
  const form = useContext(FormContext);
  if (form === null) throw new Error("a field stands outside the form");
  return form;
}
