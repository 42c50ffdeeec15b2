import { areaOf, type StandardSize } from "../conductor/index.js";

/** The smallest conductor that may be one of several in parallel, with few exceptions (310.10(G); 310.10(H) from 2011, 310.4 in 2008). */
export const smallestParallel: StandardSize = "1/0 AWG";

/** Whether a conductor of so many circular mils is in parallel in few cases only. */
export function isSmallForParallel(area: number): boolean {
  return area < areaOf(smallestParallel);
}
