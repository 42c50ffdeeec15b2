// Generated from tables/placements.json by "npm run generate"; do not edit.
import type { ByEdition } from "../supply-area-table.js";

/** Whether an outdoor source of a separately derived system must have its system bonding jumper at the source. */
export const outdoorSourceAtSource: ByEdition<boolean> = {
  "2008": false,
  "2011": true,
  "2014": true,
  "2017": true,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Which separately derived systems may have jumpers at the source and at the first disconnect, where no parallel path arises. */
export const bothEndsAllowedFor: ByEdition<"any-system" | "outdoor-source"> = {
  "2008": "any-system",
  "2011": "any-system",
  "2014": "outdoor-source",
  "2017": "outdoor-source",
  "2020": "outdoor-source",
  "2023": "outdoor-source",
  "2026": "outdoor-source",
};

/** Whether a supply-side bonding jumper is still required where both ends have a system bonding jumper. */
export const supplySideJumperWithBothEnds: ByEdition<boolean> = {
  "2008": true,
  "2011": true,
  "2014": false,
  "2017": false,
  "2020": false,
  "2023": false,
  "2026": false,
};

/** Whether several disconnects in one assembly must stand in sections or compartments of their own. */
export const assemblyDivided: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether the sizes for particular electrodes hold for the sole connection to an electrode, or for every conductor that serves no kind that requires more. */
export const electrodeCeilingWording: ByEdition<"sole-connection" | "no-larger-kind"> = {
  "2008": "sole-connection",
  "2011": "sole-connection",
  "2014": "sole-connection",
  "2017": "no-larger-kind",
  "2020": "no-larger-kind",
  "2023": "no-larger-kind",
  "2026": "no-larger-kind",
};

/** Whether the common electrode conductor of several derived systems is limited where only particular electrodes are served. */
export const commonDerivedExceptionExists: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** What sizes the water piping jumper of a feeder-supplied building. */
export const buildingPipingGoesBy: ByEdition<"conductors" | "device"> = {
  "2008": "conductors",
  "2011": "conductors",
  "2014": "conductors",
  "2017": "conductors",
  "2020": "device",
  "2023": "device",
  "2026": "device",
};

/** Whether a busbar may serve as intersystem termination. */
export const intersystemBusbarExists: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": true,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether the tie of the busbar follows the largest electrode conductor on it. */
export const busbarFollowsElectrodeConductor: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": false,
  "2023": true,
  "2026": true,
};

/** Whether no termination is needed where communications systems are unlikely. */
export const intersystemExcusedWhereUnlikely: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": true,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether cables in parallel that share one raceway, tray or gutter may count their own equipment grounding conductors together with one of full size added beside them. */
export const cableGroundingConductorsCombined: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": true,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether a supply-side connected source has a main bonding jumper and electrode conductor of its own by its own rule. */
export const supplySideSourceIsServiceLike: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** What decides the jumper of a permanent generator that is not separately derived: both sides of its overcurrent device have one, or a supply-side one is required only where the device is not integral. */
export const generatorJumpersBy: ByEdition<"both-sides" | "not-integral"> = {
  "2008": "both-sides",
  "2011": "not-integral",
  "2014": "not-integral",
  "2017": "not-integral",
  "2020": "not-integral",
  "2023": "not-integral",
  "2026": "not-integral",
};

/** Whether the edition names outdoor emergency disconnects. */
export const emergencyDisconnectExists: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether the section on supply-side connected sources sends them to the paragraph on the electrode conductor. */
export const supplySideSourceElectrodeConductor: ByEdition<"no-rule" | "named" | "letters-moved"> = {
  "2008": "no-rule",
  "2011": "no-rule",
  "2014": "no-rule",
  "2017": "no-rule",
  "2020": "named",
  "2023": "letters-moved",
  "2026": "letters-moved",
};

/** Whether the limit for rods, pipes and plates names copper-clad aluminum beside aluminum. */
export const rodCeilingNamesCopperClad: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": false,
  "2023": true,
  "2026": true,
};

/** Whether the methods for several disconnects in separate enclosures hold for a building on a feeder too. */
export const commonConductorForFeeders: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": true,
  "2017": true,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether the travelling cables of elevators are among the exceptions for conductors in parallel smaller than 1/0 AWG. */
export const elevatorParallelException: ByEdition<boolean> = {
  "2008": true,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": false,
  "2023": false,
  "2026": false,
};

/** Whether existing service equipment with several disconnects in one undivided enclosure may stay. */
export const undividedAssemblyMayStay: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": false,
  "2023": true,
  "2026": true,
};

/** What an aluminum grounding electrode conductor may not lie against, beside corrosive surroundings. */
export const aluminumNotAgainst: ByEdition<"masonry-or-earth" | "concrete"> = {
  "2008": "masonry-or-earth",
  "2011": "masonry-or-earth",
  "2014": "masonry-or-earth",
  "2017": "masonry-or-earth",
  "2020": "concrete",
  "2023": "concrete",
  "2026": "concrete",
};

/** Which aluminum grounding electrode conductors that holds for. */
export const aluminumRestrictedCover: ByEdition<"bare" | "bare-or-covered"> = {
  "2008": "bare",
  "2011": "bare",
  "2014": "bare",
  "2017": "bare",
  "2020": "bare-or-covered",
  "2023": "bare-or-covered",
  "2026": "bare-or-covered",
};

/** Whether an aluminum grounding electrode conductor may end outdoors within 18 in. of the earth in an enclosure that is listed for it. */
export const aluminumEndsInListedEnclosure: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** Whether a PVC raceway that protects an electrode conductor must be Schedule 80. */
export const electrodeConductorWantsSchedule80: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": false,
  "2020": true,
  "2023": true,
  "2026": true,
};

/** What the conductors that carry the whole load of a dwelling go by: a list of sizes, or a percentage of the rating. */
export const dwellingConductorsBy: ByEdition<"list" | "percentage"> = {
  "2008": "list",
  "2011": "list",
  "2014": "percentage",
  "2017": "percentage",
  "2020": "percentage",
  "2023": "percentage",
  "2026": "percentage",
};

/** Whether the allowance reaches single-phase dwellings on two phases and the neutral of a 208Y/120 system. */
export const dwellingTwoPhasesOfWye: ByEdition<boolean> = {
  "2008": false,
  "2011": false,
  "2014": false,
  "2017": true,
  "2020": true,
  "2023": true,
  "2026": true,
};
