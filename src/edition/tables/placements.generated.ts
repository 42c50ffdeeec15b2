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
