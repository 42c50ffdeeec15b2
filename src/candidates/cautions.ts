import { parallelMinimum } from "../edition/tables/sections.generated.js";
import type { CandidateCaution, CandidateCautionCode } from "./candidate.js";
import type { Unmarked } from "./candidates-in.js";
import { type Requirement, ratingsOf } from "./protection.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** What to know beside the candidates for a supply. */
export function cautionsOf(
  { code, system, load, protection, bonding, raceways }: SupplyCandidatesQuestion,
  { device }: Requirement,
  found: readonly Unmarked[],
  lacksArea: boolean,
): readonly CandidateCaution[] {
  const { year } = code;
  const hasLoad = load.continuous + load.other > 0;
  const cautions: readonly (readonly [boolean, CandidateCautionCode, string | null])[] = [
    [found.some(({ ampacity }) => ampacity.nextRating), "next-rating-needs-no-receptacles", "240.4(B)"],
    [protection === "at-end", "never-next-rating", "240.21"],
    [device > 90 && device <= 110, "more-load-at-100-amperes", "110.14(C)(1)"],
    [system.kind !== "feeder" && system.electrodes === undefined, "no-electrodes-given", "250.66"],
    [lacksArea, "sizes-without-area", "Chapter 9 Table 5"],
    [!hasLoad, "load-not-given", null],
    [!ratingsOf({ code }).includes(device), "rating-not-standard", "240.6(A)"],
    [found.some(({ sets }) => sets > 1), "alike-in-parallel", parallelMinimum[year].section],
    [bonding.metalRaceway === "serves" && raceways !== undefined, "raceway-serves", "250.118"],
    [true, "mass-without-fittings", null],
  ];
  return cautions.filter(([isThere]) => isThere).map(([, one, section]) => ({ code: one, section }));
}
