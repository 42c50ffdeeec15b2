/**
 * The tables, rules and sources that bondmil answers from, as its JSON files hold them.
 *
 * @packageDocumentation
 */

export type { Source, Sources } from "../corpus/runner/model.js";
export type { PrintedTable, Remark } from "./generator/copies.js";
export type {
  BasisPair,
  Cell,
  CellEvidence,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  PolicyBlock,
  ReadingEntry,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableEvidence,
  TableFile,
  WithstandFile,
} from "./generator/model.js";
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
export {
  bondingConductor,
  conductorProperties,
  electrodeConductor,
  equipmentGrounding,
  racewayAmpacity,
  trayAsConductor,
} from "./tables.js";
