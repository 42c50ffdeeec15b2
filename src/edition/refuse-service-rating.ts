import { member, type Reader, refuse } from "../input/reader.js";
import { ratingTableUnder } from "./amended-tables.js";
import { type Amended, amendmentsInForce } from "./amendment.js";
import type { EditionYear } from "./edition-year.js";

/** Refuses a service that is larger than the table to which an amendment in force sends a role by the rating of the service. */
export function refuseServiceRating(at: Reader, code: Amended & { readonly year: EditionYear }): void {
  const amperes = code.circumstances?.serviceAmperes;
  const largest = ratingTableUnder({ year: code.year }).rows.at(-1)?.through ?? 0;
  const goesByIt = amendmentsInForce(code, "basis").some(({ use }) => use === "equipment-grounding-table");
  if (!goesByIt || amperes === undefined || amperes <= largest) return;
  refuse(
    member(member(at, "circumstances"), "serviceAmperes"),
    "out-of-range",
    `at most ${largest} A, where the table ends that an amendment goes by`,
    "limit the amendment to smaller services by serviceThroughAmperes",
  );
}
