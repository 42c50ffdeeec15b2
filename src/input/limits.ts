/**
 * Limits that no real building meets. They keep every product an exact whole number and every cost within bounds; an input beyond one
 * of them is refused with the limit in the error.
 */

/** Alike things that one entry counts: sets in parallel, raceways, conductors. */
export const mostOfACount = 100;

/** Entries of sets that one supply lists: those of all the runs of a system together. */
export const mostSetEntries = 2000;

/** Sets of one supply in all its entries: as many of the largest conductor keep an increase in proportion exact. */
export const mostSets = 2000;

/** Phases of a system. */
export const mostPhases = 3;

/** Items of any other list. */
export const mostItems = 2000;

/** Amperes, volts, ohms or feet that one number gives: what is worked out from several of them stays finite. */
export const mostOfAnAmount = 1_000_000_000;

/** Candidates for a supply that are listed; further ones are counted. */
export const mostCandidates = 10_000;
