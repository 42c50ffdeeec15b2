export { placeOfCell, ratingTableUnder, supplyTableUnder } from "./amended-tables.js";
export {
  type AlwaysWireAmendment,
  type AmendableTable,
  type Amendment,
  type AmendmentCitation,
  type AmendmentCondition,
  amendmentsInForce,
  type BasisAmendment,
  type CellAmendment,
  type Circumstances,
  citeAmendment,
  type ElectrodeKind,
  electrodeKinds,
  type FloorAmendment,
  holds,
  type MaterialAmendment,
  type ReadingAmendment,
} from "./amendment.js";
export { type Citation, type CitedEvidence, citeAsAmended } from "./citation.js";
export type { Code } from "./code.js";
export {
  chosenReading,
  enforcedReading,
  otherReadings,
  overruledReadings,
  policyUnder,
  readCode,
  readingsFor,
} from "./code.js";
export { type EditionYear, editionYears } from "./edition-year.js";
export { type Evidence, evidenceLevels, weakestEvidence } from "./evidence.js";
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
export { amendmentKinds } from "./read-amendment.js";
export { type Purpose, type Role, roles } from "./role.js";
export type { ByEdition, SupplyAreaRow, SupplyAreaTable } from "./supply-area-table.js";
export type { Readings } from "./tables/readings.generated.js";
export { roleFacts } from "./tables/roles.generated.js";
export type { TrayArea, TrayMetal } from "./tray-table.js";
