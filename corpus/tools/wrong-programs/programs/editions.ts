import { type EditionYear, editionYears } from "../../../../src/index.js";
import { onAsked, type Wrong } from "../program.js";

const as = (other: (year: EditionYear) => EditionYear): Wrong =>
  onAsked((asked) => ({ ...asked, year: other(asked.year) }));

const shifted = (by: number) =>
  as((year) => editionYears[Math.max(0, editionYears.indexOf(year) + by)] ?? year);

/** Programs that take one edition for another. */
export const ofEditions: Readonly<Record<string, Wrong>> = {
  ...Object.fromEntries(editionYears.map((year) => [`every-edition-as-${year}`, as(() => year)])),
  "one-edition-late": shifted(-1),
  "one-edition-early": shifted(1),
};
