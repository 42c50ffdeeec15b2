import * as v from "valibot";
import { between, name, says } from "../input/define.js";

export const documentOptions = v.pipe(
  v.strictObject({
    title: v.optional(v.pipe(name("the title"), says("In place of the usual title."))),
    place: v.optional(v.pipe(name("the place"), says("Where the installation is, as it is to be read."))),
    preparedBy: v.optional(v.pipe(name("who prepared it"), says("Who prepared it, as it is to be read."))),
    date: v.optional(v.pipe(name("the date"), says("The date, as it is to be read."))),
  }),
  says("What the caller adds to a document. The library never looks at the clock."),
);

export const renderOptions = v.pipe(
  v.strictObject({
    as: v.pipe(v.picklist(["text", "markdown", "html", "csv"]), says("The format.")),
    width: v.optional(
      v.pipe(
        between("letters", 20, 10_000),
        says("Letters in a line of text, from 20 to 10,000; 120 by default. Other formats have no lines."),
      ),
    ),
  }),
  says("How a document is written."),
);

export const drawingOptions = v.pipe(
  v.strictObject({
    highlight: v.optional(
      v.pipe(
        name("a conductor"),
        says(
          "Id in the schedule of the conductor that stands out; only the sheets that show it are written.",
        ),
      ),
    ),
  }),
  says("How a drawing is written."),
);
