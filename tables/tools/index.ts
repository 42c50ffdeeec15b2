/**
 * The tables, rules and sources that bondmil sizes by, as its JSON files hold them.
 *
 * @packageDocumentation
 */

export { evidence } from "./evidence.js";
export type { PrintedTable, Remark } from "./generator/copies.js";
export type { Known } from "./generator/ladder.js";
export type {
  Cell,
  CellEvidence,
  Cited,
  EvidenceByPart,
  EvidenceFile,
  FromEdition,
  Limit,
  NamedSizeEntry,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  PolicyEntry,
  ReadingEntry,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableEvidence,
  TableFile,
} from "./generator/model.js";
export type { WithstandFile } from "./generator/withstand-file.js";
export { inForce } from "./in-force.js";
export { sources } from "./register.js";
export { rowsIn, type TableRow } from "./rows-in.js";
export {
  namedSizes,
  placements,
  policies,
  ratingPolicies,
  readings,
  roles,
  sections,
  shortTimeWithstand,
} from "./rules.js";
export type { Source, Sources } from "./source.js";
export {
  ambientCorrection,
  bondingConductor,
  compactConductorDimensions,
  conductorCountAdjustment,
  conductorImpedance,
  conductorProperties,
  directCurrentResistance,
  dwellingConductors,
  electrodeConductor,
  equipmentGrounding,
  insulatedConductorDimensions,
  insulationTypes,
  racewayAmpacity,
  racewayDimensions,
  racewayFill,
  rooftopAdder,
  standardRatings,
  transformerProtection,
  trayAsConductor,
} from "./tables.js";
