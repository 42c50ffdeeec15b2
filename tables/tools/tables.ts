import bondingConductorFile from "../bonding-conductor.json" with { type: "json" };
import conductorCountAdjustmentFile from "../conductor-count-adjustment.json" with { type: "json" };
import conductorPropertiesFile from "../conductor-properties.json" with { type: "json" };
import electrodeConductorFile from "../electrode-conductor.json" with { type: "json" };
import equipmentGroundingFile from "../equipment-grounding.json" with { type: "json" };
import racewayAmpacityFile from "../raceway-ampacity.json" with { type: "json" };
import trayAsConductorFile from "../tray-as-conductor.json" with { type: "json" };
import type { PrintedTable } from "./generator/copies.js";

// A JSON module forgets the members of a union and the length of a row; the generator holds the files against their schemas.

/**
 * Table 250.102(C)(1), in the code since 2014: jumpers and grounded conductors by the supply conductors. As in `tables/bonding-conductor.json`.
 *
 * @example
 * ```ts
 * import { bondingConductor } from "bondmil/tables";
 * bondingConductor.number["2011"]; // => null
 * ```
 */
export const bondingConductor: PrintedTable = bondingConductorFile as unknown as PrintedTable;

/**
 * Table 310.15(C)(1): adjustment for more than three current-carrying conductors, in percent. As in `tables/conductor-count-adjustment.json`.
 *
 * @example
 * ```ts
 * import { conductorCountAdjustment } from "bondmil/tables";
 * conductorCountAdjustment.blocks[0]?.rows[0]; // => [6, 80]
 * ```
 */
export const conductorCountAdjustment: PrintedTable = conductorCountAdjustmentFile as unknown as PrintedTable;

/**
 * Chapter 9 Table 8: the sizes of conductors and their areas in circular mils. As in `tables/conductor-properties.json`.
 *
 * @example
 * ```ts
 * import { conductorProperties } from "bondmil/tables";
 * conductorProperties.blocks[0]?.rows[0]; // => ["18 AWG", 1620, true]
 * ```
 */
export const conductorProperties: PrintedTable = conductorPropertiesFile as unknown as PrintedTable;

/**
 * Table 250.66: grounding electrode conductors by the supply conductors. As in `tables/electrode-conductor.json`.
 *
 * @example
 * ```ts
 * import { electrodeConductor } from "bondmil/tables";
 * electrodeConductor.number["2023"]; // => "Table 250.66"
 * ```
 */
export const electrodeConductor: PrintedTable = electrodeConductorFile as unknown as PrintedTable;

/**
 * Table 250.122: equipment grounding conductors by the rating of the overcurrent device in amperes. As in `tables/equipment-grounding.json`.
 *
 * @example
 * ```ts
 * import { equipmentGrounding } from "bondmil/tables";
 * equipmentGrounding.blocks[0]?.rows[0]; // => [15, "14 AWG", "12 AWG"]
 * ```
 */
export const equipmentGrounding: PrintedTable = equipmentGroundingFile as unknown as PrintedTable;

/**
 * Table 310.16, 310.15(B)(16) from 2011 through 2017: ampacities in raceway, in amperes. As in `tables/raceway-ampacity.json`.
 *
 * @example
 * ```ts
 * import { racewayAmpacity } from "bondmil/tables";
 * racewayAmpacity.number["2014"]; // => "Table 310.15(B)(16)"
 * ```
 */
export const racewayAmpacity: PrintedTable = racewayAmpacityFile as unknown as PrintedTable;

/**
 * Table 392.60(A), 392.60(B) from 2020: metal area of cable trays that serve as equipment grounding conductors. As in `tables/tray-as-conductor.json`.
 *
 * @example
 * ```ts
 * import { trayAsConductor } from "bondmil/tables";
 * trayAsConductor.number["2023"]; // => "Table 392.60(B)"
 * ```
 */
export const trayAsConductor: PrintedTable = trayAsConductorFile as unknown as PrintedTable;
