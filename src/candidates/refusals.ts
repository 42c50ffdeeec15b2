import { countedLoad } from "../ampacity/continuous-load.js";
import { canLie, refusePlace } from "../ampacity/read-conditions.js";
import { areaOf, standardSizes } from "../conductor/index.js";
import type { EditionYear } from "../edition/index.js";
import type { Members } from "../input/read-shape.js";
import { member, placeIn, type Reader, refuse } from "../input/reader.js";
import type { AmpacityFinder } from "./ampacity.js";
import { currentCarryingOf } from "./lawful-sets.js";
import { type Requirement, ratingsOf } from "./protection.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** What the shape of a question cannot say. */
export function refine(at: Reader, given: Members<SupplyCandidatesQuestion>): void {
  const { code, load, device, conductor, place, system, protection, feederDevice } = given;
  if (load !== undefined && device === undefined && load.continuous + load.other === 0) {
    refuse(
      member(at, "load"),
      "not-positive",
      "a load above zero, or a device",
      "give the load or the device",
    );
  }
  if (load !== undefined && device !== undefined) refuseSmallDevice(at, load, device);
  if (conductor?.smallest !== undefined && conductor.largest !== undefined) {
    const { smallest, largest } = conductor;
    if (areaOf(smallest) > areaOf(largest)) {
      const place = placeIn(at, ["conductor", "largest"], largest);
      refuse(
        place,
        "out-of-range",
        `${smallest} or larger, the smallest size to be tried`,
        "exchange the two",
      );
    }
  }
  if (code !== undefined && conductor !== undefined && place !== undefined) {
    refuseConditions(at, code.year, conductor.insulation, place);
  }
  if (system?.kind === "feeder" && protection === "at-end" && feederDevice === undefined) {
    const expected = "the rating of the device ahead of the feeder that is tapped";
    refuse(member(at, "feederDevice"), "missing", expected, "");
  }
}

/** Insulation that is not for the place, and a place that leaves it nothing to carry, each where the question has it. */
function refuseConditions(
  at: Reader,
  year: EditionYear,
  insulation: SupplyCandidatesQuestion["conductor"]["insulation"],
  place: SupplyCandidatesQuestion["place"],
): void {
  const insulationAt = member(member(at, "conductor"), "insulation");
  if (canLie(insulationAt, year, insulation, place))
    refusePlace(member(at, "place"), year, insulation, place);
}

function refuseSmallDevice(at: Reader, load: SupplyCandidatesQuestion["load"], device: number): void {
  const required = countedLoad(load);
  if (device >= required) return;
  const expected = `a rating of at least ${required} A: continuous load${load.listedForAll === true ? "" : " at 125 percent"} and all other`;
  refuse(member(at, "device"), "out-of-range", expected, "take a larger device, or divide the load");
}

/** The load is more than any standard rating. */
export function refuseLoad(at: Reader, { code }: SupplyCandidatesQuestion): undefined {
  const most = ratingsOf({ code }).at(-1);
  const expected = `a load that a standard rating allows, ${most} A at most`;
  return refuse(
    member(at, "load"),
    "out-of-range",
    expected,
    "give the rating of the device, or divide the load",
  );
}

/** Nothing within the limits is lawful: says what the limits reach, or what stands in the way. */
export function refuseAll(
  at: Reader,
  question: SupplyCandidatesQuestion,
  { device }: Requirement,
  fits: { readonly carries: boolean; readonly ampacities: AmpacityFinder },
): undefined {
  const { limits, conductor, system } = question;
  if (fits.carries) {
    const expected = "kinds of raceway of which a trade size takes the conductors";
    const advice =
      "allow fewer sets in a raceway, smaller conductors, or an insulation that the tables list at these sizes";
    return refuse(member(at, "raceways"), "out-of-range", expected, advice);
  }
  const largest = conductor.largest ?? "2000 kcmil";
  const perSet = currentCarryingOf(system);
  const sizes = standardSizes.filter((size) => areaOf(size) <= areaOf(largest));
  const each = conductor.materials.map((material) =>
    Math.max(...sizes.map((size) => fits.ampacities.find(size, material, perSet)?.each ?? 0)),
  );
  const most = Math.max(...each) * limits.mostSets;
  const expected = `conductors that a device of ${device} A may protect; ${limits.mostSets} sets of up to ${largest} reach ${most} A`;
  return refuse(
    placeIn(at, ["limits", "mostSets"], limits.mostSets),
    "out-of-range",
    expected,
    "allow more sets or larger conductors, or divide the load",
  );
}
