export { placeOfCell, ratingTableUnder, supplyTableUnder } from "./amended-tables.js";
export { amendmentsInForce, citeAmendment, holds } from "./amendment.js";
export {
  type Citation,
  type CitedEvidence,
  citeAsAmended,
  distinctCitations,
  inferred,
  restingOn,
} from "./citation.js";
export {
  chosenReading,
  enforcedReading,
  otherReadings,
  overruledReadings,
  policyUnder,
  readingsFor,
} from "./code.js";
export { type EditionYear, editionYears, isEditionYear } from "./edition-year.js";
export { type ElectrodeKind, electrodeKinds } from "./electrode-kinds.js";
export { type Evidence, evidenceLevels, weakerOf, weakestEvidence } from "./evidence.js";
export { otherThan, perPlace } from "./kept-code.js";
export { evidenceOfCell } from "./plain-table.js";
export type {
  Limit,
  NamedSize,
  OtherMaterialRule,
  Policy,
  PolicySet,
  SumRule,
} from "./policy.js";
export type { IncreaseRule, RatingPolicy } from "./rating-policy.js";
export type { RatingTable } from "./rating-table.js";
export type { Purpose, RoleFacts } from "./role.js";
export type {
  Amendment,
  BasisAmendment,
  Circumstances,
  Code,
} from "./shape.generated.js";
export type { ByEdition, SupplyAreaRow, SupplyAreaTable } from "./supply-area-table.js";
export type { Readings } from "./tables/readings.generated.js";
export { type Role, roleIds } from "./tables/roles.generated.js";
export type { TrayArea, TrayMetal } from "./tray-table.js";
