import { assemblyElectrodes } from "./assembly.js";
import { bondedToEarth, wayBack } from "./fault-path.js";
import { fingerprintStays } from "./fingerprint.js";
import { nothingFound } from "./installed.js";
import { jumperPlaces } from "./jumper-places.js";
import { largestAhead } from "./largest-ahead.js";
import type { Law } from "./law.js";
import { namesAreNames, orderIsOrder, runsAreRuns, setsAreSets, usualIsUsual } from "./same-drawing.js";
import { sizedByWhatItNames, sumOfWhatItNames } from "./sized-by.js";
import { violationsAreShown, violationsHaveCauses } from "./violations.js";

/** The laws that every installation is held against as it is. */
export const lawsOfOne: readonly Law[] = [
  sizedByWhatItNames,
  sumOfWhatItNames,
  assemblyElectrodes,
  largestAhead,
  wayBack,
  bondedToEarth,
  jumperPlaces,
  nothingFound,
  violationsHaveCauses,
  violationsAreShown,
];

/** The laws that draw the same installation in another way. */
export const lawsOfRedrawing: readonly Law[] = [
  namesAreNames,
  orderIsOrder,
  usualIsUsual,
  setsAreSets,
  runsAreRuns,
  fingerprintStays,
];
