/**
 * Sizes of bonding and grounding conductors under NFPA 70 (National Electrical Code), editions 2008 to 2026.
 *
 * @packageDocumentation
 */
export { type Ampacity, ampacityOf, smallestConductorFor, type TemperatureColumn } from "./ampacity/index.js";
export type {
  Arrangement,
  ArrangementComparison,
  ArrangementId,
  ArrangementStanding,
  Connection,
  ConnectionKind,
  ConnectionNote,
  ConnectionStanding,
  Difference,
  PlacedConductor,
} from "./arrangement/arrangement.js";
export type { CommonInput, SuppliedPlace } from "./arrangement/enclosure.js";
export {
  arrangeSeparatelyDerivedSystem,
  type DerivedSource,
  type DerivedSystemInput,
} from "./arrangement/separately-derived-system.js";
export { arrangeService, type ServiceInput } from "./arrangement/service.js";
export {
  areaOf,
  type ConductorColumn,
  type ConductorSize,
  columnOf,
  compareSizes,
  conductorSizes,
  formatSize,
  isConductorSize,
  isStandardSize,
  type Material,
  materials,
  nextSizeDown,
  nextSizeUp,
  parseSize,
  type StandardSize,
  standardSizeFor,
  standardSizes,
} from "./conductor/index.js";
export {
  type Citation,
  type Code,
  type EditionYear,
  type Evidence,
  editionYears,
  evidenceLevels,
  type Purpose,
  type Readings,
  type Role,
  roles,
  type SumRule,
  weakestEvidence,
} from "./edition/index.js";
export { type RectangularBar, rectangularBarsFor } from "./engineering/rectangular-bar.js";
export { InputError, type Issue, type IssueCode } from "./input/input-error.js";
export { explain } from "./report/explain.js";
export { writeArrangements } from "./report/schedule-text.js";
export { type Caution, type CautionCode, cautionCodes } from "./rules/caution.js";
export type { JumperInput, JumperRequest } from "./rules/jumper-input.js";
export { prepareMainBondingJumper, sizeMainBondingJumper } from "./rules/main-bonding-jumper.js";
export type { Prepared, PreparedByArea, PreparedByAssumedArea, PreparedRequest } from "./rules/prepare.js";
export type {
  AreaOnlyOutcome,
  ConductorForm,
  ConductorOutcome,
  NotRequiredOutcome,
  NotRequiredReason,
  OtherReading,
  Outcome,
  ReadingUsed,
  SizingResult,
} from "./rules/result.js";
export {
  prepareSupplySideBondingJumper,
  sizeSupplySideBondingJumper,
} from "./rules/supply-side-bonding-jumper.js";
export { prepareSystemBondingJumper, sizeSystemBondingJumper } from "./rules/system-bonding-jumper.js";
export type {
  AssumedStep,
  CapReason,
  CapStep,
  FloorReason,
  FloorStep,
  Governing,
  IncreaseStep,
  LoadStep,
  NamedSizeStep,
  OneEighthStep,
  RatingRowStep,
  RowStep,
  StandardSizeStep,
  Step,
  SumStep,
} from "./sizing/index.js";
export {
  type AssumedConductor,
  assumedConductors,
  type Conductor,
  correspondingSum,
  type LoadRequirement,
  type PhasedSet,
  type Supply,
  type SupplySet,
  sumOfLargest,
  suppliesForLoad,
  type UniformSet,
} from "./supply/index.js";
export {
  type AreaUnit,
  type CircularMils,
  formatArea,
  fromSquareInches,
  toSquareInches,
  toSquareMillimetres,
} from "./units/area.js";
