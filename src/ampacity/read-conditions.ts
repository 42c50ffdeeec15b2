import type { EditionYear } from "../edition/index.js";
import { insulationTypes } from "../edition/tables/insulation-types.generated.js";
import type { Members } from "../input/read-shape.js";
import { member, type Reader, refuse } from "../input/reader.js";
import { conditionsIn, ratingOf } from "./conditions.js";
import type { ConditionsOfUse, InsulationType, PlaceOfUse } from "./shape.generated.js";

/** Checks that conditions hold together: the insulation is for the place, and the place leaves it something to carry. */
export function refineConditions(
  at: Reader,
  edition: EditionYear | undefined,
  { insulation, place }: Members<ConditionsOfUse>,
): void {
  if (edition === undefined || insulation === undefined || place === undefined) return;
  if (canLie(member(at, "insulation"), edition, insulation, place)) {
    refusePlace(member(at, "place"), edition, insulation, place);
  }
}

/** Checks that insulation is for the place; the types that are stand in the error. */
export function canLie(
  at: Reader,
  edition: EditionYear,
  insulation: InsulationType,
  { location }: PlaceOfUse,
): boolean {
  if (ratingOf(edition, insulation, location) !== null) return true;
  const others = insulationTypes[edition].rows
    .filter((row) => row[location] !== null)
    .map(({ type }) => type);
  const expected = `insulation for a ${location} place`;
  refuse(at, "unknown-value", expected, `use one of ${others.join(", ")}`, others);
  return false;
}

/** Refuses a place that is not told as far as it has to be, or that leaves the insulation nothing to carry. */
export function refusePlace(
  at: Reader,
  edition: EditionYear,
  insulation: InsulationType,
  place: PlaceOfUse,
): void {
  const { ambient, inchesAboveRoof, method } = place;
  if (ambient === undefined) {
    if (inchesAboveRoof === undefined && method !== "equation") return;
    const needing = inchesAboveRoof === undefined ? "the equation" : "a roof";
    refuse(member(at, "ambient"), "missing", `the ambient temperature, which ${needing} goes by`, "");
    return;
  }
  if (conditionsIn(edition, { insulation, place, terminations: { marked: 90 } }) !== null) return;
  const rating = ratingOf(edition, insulation, place.location);
  const withRoof = inchesAboveRoof === undefined ? "" : " with what the roof adds";
  refuse(
    member(at, "ambient"),
    "out-of-range",
    `an ambient temperature that leaves insulation rated ${rating} C something to carry${withRoof}`,
    "use insulation of a higher rating, or a cooler place",
  );
}
