import ambientCorrectionFile from "../ambient-correction.json" with { type: "json" };
import bondingConductorFile from "../bonding-conductor.json" with { type: "json" };
import compactConductorDimensionsFile from "../compact-conductor-dimensions.json" with { type: "json" };
import conductorCountAdjustmentFile from "../conductor-count-adjustment.json" with { type: "json" };
import conductorImpedanceFile from "../conductor-impedance.json" with { type: "json" };
import conductorPropertiesFile from "../conductor-properties.json" with { type: "json" };
import directCurrentResistanceFile from "../direct-current-resistance.json" with { type: "json" };
import dwellingConductorsFile from "../dwelling-conductors.json" with { type: "json" };
import electrodeConductorFile from "../electrode-conductor.json" with { type: "json" };
import equipmentGroundingFile from "../equipment-grounding.json" with { type: "json" };
import insulatedConductorDimensionsFile from "../insulated-conductor-dimensions.json" with { type: "json" };
import insulationTypesFile from "../insulation-types.json" with { type: "json" };
import racewayAmpacityFile from "../raceway-ampacity.json" with { type: "json" };
import racewayDimensionsFile from "../raceway-dimensions.json" with { type: "json" };
import racewayFillFile from "../raceway-fill.json" with { type: "json" };
import rooftopAdderFile from "../rooftop-adder.json" with { type: "json" };
import standardRatingsFile from "../standard-ratings.json" with { type: "json" };
import transformerProtectionFile from "../transformer-protection.json" with { type: "json" };
import trayAsConductorFile from "../tray-as-conductor.json" with { type: "json" };
import type { PrintedTable } from "./generator/copies.js";

// A JSON module forgets the members of a union and the length of a row; the generator holds the files against their schemas.

/**
 * Table 310.15(B)(1)(1): correction for ambient temperature, ampacities based on 30 C, in percent. As in `tables/ambient-correction.json`.
 *
 * @example
 * ```ts
 * import { ambientCorrection } from "bondmil/tables";
 * ambientCorrection.blocks[1]?.rows[4]; // => [30, 26, 100, 100, 100]
 * ```
 */
export const ambientCorrection: PrintedTable = ambientCorrectionFile as unknown as PrintedTable;

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
 * Chapter 9 Table 5A: areas of insulated conductors with compact strands, in square inches. As in `tables/compact-conductor-dimensions.json`.
 *
 * @example
 * ```ts
 * import { compactConductorDimensions } from "bondmil/tables";
 * compactConductorDimensions.blocks[0]?.rows[0]; // => ["8 AWG", 0.051, null, 0.0394]
 * ```
 */
export const compactConductorDimensions: PrintedTable =
  compactConductorDimensionsFile as unknown as PrintedTable;

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
 * Chapter 9 Table 9: resistance and reactance in conduit, in ohms to neutral per 1000 ft. As in `tables/conductor-impedance.json`.
 *
 * @example
 * ```ts
 * import { conductorImpedance } from "bondmil/tables";
 * conductorImpedance.blocks[0]?.rows[0]?.[3]; // => 3.1
 * ```
 */
export const conductorImpedance: PrintedTable = conductorImpedanceFile as unknown as PrintedTable;

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
 * Chapter 9 Table 8: overall dimensions of bare conductors and direct-current resistance at 75 C, in ohms per 1000 ft. As in `tables/direct-current-resistance.json`.
 *
 * @example
 * ```ts
 * import { directCurrentResistance } from "bondmil/tables";
 * directCurrentResistance.blocks[0]?.rows[0]?.[0]; // => "18 AWG solid"
 * ```
 */
export const directCurrentResistance: PrintedTable = directCurrentResistanceFile as unknown as PrintedTable;

/**
 * Table 310.12(A): conductors that carry the whole load of a dwelling. Two editions have none. As in `tables/dwelling-conductors.json`.
 *
 * @example
 * ```ts
 * import { dwellingConductors } from "bondmil/tables";
 * dwellingConductors.number["2014"]; // => null
 * ```
 */
export const dwellingConductors: PrintedTable = dwellingConductorsFile as unknown as PrintedTable;

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
 * Chapter 9 Table 5: areas of insulated conductors, in square inches. As in `tables/insulated-conductor-dimensions.json`.
 *
 * @example
 * ```ts
 * import { insulatedConductorDimensions } from "bondmil/tables";
 * insulatedConductorDimensions.blocks[0]?.rows[0]?.[1]; // => 0.0097
 * ```
 */
export const insulatedConductorDimensions: PrintedTable =
  insulatedConductorDimensionsFile as unknown as PrintedTable;

/**
 * Table 310.4(1): temperature ratings of insulation by the place, in degrees Celsius. As in `tables/insulation-types.json`.
 *
 * @example
 * ```ts
 * import { insulationTypes } from "bondmil/tables";
 * insulationTypes.blocks[0]?.rows[3]; // => ["THHW", 90, 90, 75]
 * ```
 */
export const insulationTypes: PrintedTable = insulationTypesFile as unknown as PrintedTable;

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
 * Chapter 9 Table 4: dimensions and percent area of five kinds of conduit and tubing, in square inches. As in `tables/raceway-dimensions.json`.
 *
 * @example
 * ```ts
 * import { racewayDimensions } from "bondmil/tables";
 * racewayDimensions.blocks[0]?.rows[0]?.[8]; // => 0.122
 * ```
 */
export const racewayDimensions: PrintedTable = racewayDimensionsFile as unknown as PrintedTable;

/**
 * Chapter 9 Table 1 with notes 4 and 7: percent of the area that conductors may fill. As in `tables/raceway-fill.json`.
 *
 * @example
 * ```ts
 * import { racewayFill } from "bondmil/tables";
 * racewayFill.blocks[0]?.rows[1]; // => [2, 31, 60, 0.8]
 * ```
 */
export const racewayFill: PrintedTable = racewayFillFile as unknown as PrintedTable;

/**
 * 310.15(B)(2): temperature added for direct sunlight on or above a roof. As in `tables/rooftop-adder.json`.
 *
 * @example
 * ```ts
 * import { rooftopAdder } from "bondmil/tables";
 * rooftopAdder.blocks.at(-1)?.rows[0]; // => [0.75, "below", 33, 60, "XHHW-2"]
 * ```
 */
export const rooftopAdder: PrintedTable = rooftopAdderFile as unknown as PrintedTable;

/**
 * Table 240.6(A): standard ampere ratings of fuses and inverse time circuit breakers. As in `tables/standard-ratings.json`.
 *
 * @example
 * ```ts
 * import { standardRatings } from "bondmil/tables";
 * standardRatings.blocks[0]?.rows[3]; // => [10, "fuse"]
 * ```
 */
export const standardRatings: PrintedTable = standardRatingsFile as unknown as PrintedTable;

/**
 * Table 450.3(B): overcurrent protection of transformers, in percent of rated current. As in `tables/transformer-protection.json`.
 *
 * @example
 * ```ts
 * import { transformerProtection } from "bondmil/tables";
 * transformerProtection.blocks[0]?.rows[0]?.[4]; // => 125
 * ```
 */
export const transformerProtection: PrintedTable = transformerProtectionFile as unknown as PrintedTable;

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
