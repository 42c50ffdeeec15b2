import * as v from "valibot";
import { byHand, flag, positive, says, text } from "../input/define.js";

export const named = v.pipe(
  v.string(),
  v.regex(/^\S(.*\S)?$/),
  byHand({ read: ["readId", "installation/read-id"] }),
);

export const id = v.pipe(named, says("Name on the drawing. Every id is unique in the document."));

export const reference = (what: string) => v.pipe(text(what), says(`Id of ${what}.`));

export const feet = v.pipe(positive("feet"), says("Length in feet."));

export const yes = (what: string, more: string) => v.pipe(flag(what), says(more));
