import type {
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  WithstandFile,
} from "./generator/model.js";
import namedSizesFile from "./named-sizes.json" with { type: "json" };
import placementsFile from "./placements.json" with { type: "json" };
import policiesFile from "./policies.json" with { type: "json" };
import ratingPoliciesFile from "./rating-policies.json" with { type: "json" };
import readingsFile from "./readings.json" with { type: "json" };
import rolesFile from "./roles.json" with { type: "json" };
import sectionsFile from "./sections.json" with { type: "json" };
import shortTimeWithstandFile from "./short-time-withstand.json" with { type: "json" };

// A JSON module forgets the members of a union and the length of a row; the generator holds the files against their schemas.

/**
 * Sizes that sections name outright, by edition. As in `tables/named-sizes.json`.
 *
 * @example
 * ```ts
 * import { namedSizes } from "bondmil/tables";
 * namedSizes.sizes["rod-electrode-ceiling"]?.values["2023"].copper; // => "6 AWG"
 * ```
 */
export const namedSizes: NamedSizesFile = namedSizesFile as unknown as NamedSizesFile;

/**
 * Facts of placement that differ between editions. As in `tables/placements.json`.
 *
 * @example
 * ```ts
 * import { placements } from "bondmil/tables";
 * placements.facts["assembly-divided"]?.values["2023"]; // => true
 * ```
 */
export const placements: PlacementsFile = placementsFile as unknown as PlacementsFile;

/**
 * How each role that goes by supply conductors is sized in each edition: table, sum, one eighth, floor, cap, other materials. As in `tables/policies.json`.
 *
 * @example
 * ```ts
 * import { policies } from "bondmil/tables";
 * policies.policies["main-bonding-jumper"]?.at(-1)?.["table"]; // => "bonding-conductor"
 * ```
 */
export const policies: PoliciesFile = policiesFile as unknown as PoliciesFile;

/**
 * How each role that goes by the overcurrent device is sized in each edition. As in `tables/rating-policies.json`.
 *
 * @example
 * ```ts
 * import { ratingPolicies } from "bondmil/tables";
 * ratingPolicies.policies["equipment-grounding-conductor"]?.[0]?.editions; // => ["2008"]
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
 * The roles of conductors, and their names in each edition. As in `tables/roles.json`.
 *
 * @example
 * ```ts
 * import { roles } from "bondmil/tables";
 * roles.roles["supply-side-bonding-jumper"]?.name["2026"]; // => "supply-side bonding jumper"
 * ```
 */
export const roles: RolesFile = rolesFile as unknown as RolesFile;

/**
 * Where each topic stands in each edition, with the evidence for it. As in `tables/sections.json`.
 *
 * @example
 * ```ts
 * import { sections } from "bondmil/tables";
 * sections.topics["main-jumper-place"]?.sections["2023"]?.[0]; // => "250.24(C)"
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
