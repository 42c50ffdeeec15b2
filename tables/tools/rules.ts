import namedSizesFile from "../named-sizes.json" with { type: "json" };
import placementsFile from "../placements.json" with { type: "json" };
import policiesFile from "../policies.json" with { type: "json" };
import ratingPoliciesFile from "../rating-policies.json" with { type: "json" };
import readingsFile from "../readings.json" with { type: "json" };
import rolesFile from "../roles.json" with { type: "json" };
import sectionsFile from "../sections.json" with { type: "json" };
import shortTimeWithstandFile from "../short-time-withstand.json" with { type: "json" };
import type {
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionsFile,
} from "./generator/model.js";
import type { WithstandFile } from "./generator/withstand-file.js";

// A JSON module forgets the members of a union and the length of a row; the generator holds the files against their schemas.

/**
 * Sizes that sections name outright, each entry from an edition on. As in `tables/named-sizes.json`.
 *
 * @example
 * ```ts
 * import { namedSizes } from "bondmil/tables";
 * namedSizes.sizes["rod-electrode-ceiling"]?.values[0]?.copper; // => "6 AWG"
 * ```
 */
export const namedSizes: NamedSizesFile = namedSizesFile as unknown as NamedSizesFile;

/**
 * Facts of placement that differ between editions, each value from an edition on. As in `tables/placements.json`.
 *
 * @example
 * ```ts
 * import { placements } from "bondmil/tables";
 * placements.facts["assembly-divided"]?.values; // => [{ from: "2008", value: false }, { from: "2020", value: true }]
 * ```
 */
export const placements: PlacementsFile = placementsFile as unknown as PlacementsFile;

/**
 * How each role that goes by supply conductors is sized, each entry from an edition on: table, sum, 12.5 percent, floor, cap, other materials. As in `tables/policies.json`.
 *
 * @example
 * ```ts
 * import { policies } from "bondmil/tables";
 * policies.policies["main-bonding-jumper"]?.find(({ from }) => from === "2017"); // => { from: "2017", cap: "set" }
 * ```
 */
export const policies: PoliciesFile = policiesFile as unknown as PoliciesFile;

/**
 * How each role that goes by the overcurrent device is sized, each entry from an edition on. As in `tables/rating-policies.json`.
 *
 * @example
 * ```ts
 * import { ratingPolicies } from "bondmil/tables";
 * ratingPolicies.policies["equipment-grounding-conductor"]?.[1]?.["increase"]; // => "from-minimum-ampacity"
 * ```
 */
export const ratingPolicies: PoliciesFile = ratingPoliciesFile as unknown as PoliciesFile;

/**
 * What the text of the code leaves open: the alternatives, the default and the reason for it. As in `tables/readings.json`.
 *
 * @example
 * ```ts
 * import { readings } from "bondmil/tables";
 * readings.readings[0]?.id; // => "cap-on-small-supplies"
 * ```
 */
export const readings: ReadingsFile = readingsFile as unknown as ReadingsFile;

/**
 * The roles of conductors, and their names, each from an edition on. As in `tables/roles.json`.
 *
 * @example
 * ```ts
 * import { roles } from "bondmil/tables";
 * roles.roles["supply-side-bonding-jumper"]?.names[1]; // => { from: "2011", name: "supply-side bonding jumper" }
 * ```
 */
export const roles: RolesFile = rolesFile as unknown as RolesFile;

/**
 * Where each topic stands, each section from an edition on. As in `tables/sections.json`.
 *
 * @example
 * ```ts
 * import { sections } from "bondmil/tables";
 * sections.topics["main-jumper-place"]?.sections.at(-1); // => { from: "2023", section: "250.24(C)" }
 * ```
 */
export const sections: SectionsFile = sectionsFile as unknown as SectionsFile;

/**
 * Constants of the short-time withstand of conductors, beside the code minimum. As in `tables/short-time-withstand.json`.
 *
 * @example
 * ```ts
 * import { shortTimeWithstand } from "bondmil/tables";
 * shortTimeWithstand.metals.copper.factor; // => 0.0297
 * ```
 */
export const shortTimeWithstand: WithstandFile = shortTimeWithstandFile as unknown as WithstandFile;
