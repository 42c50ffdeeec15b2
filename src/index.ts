/**
 * Sizes of bonding and grounding conductors under NFPA 70 (National Electrical Code), editions 2008 to 2026.
 *
 * @packageDocumentation
 */

export {
  type Ampacity,
  type AmpacityCaution,
  type AmpacityStep,
  ampacityOf,
  type ConditionsOfUse,
  type ConductorAmpacity,
  type CurrentCarrying,
  currentCarryingConductors,
  type DeviceAnswer,
  type DeviceCaution,
  type DwellingConductor,
  deviceFor,
  dwellingConductor,
  type InsulationType,
  insulationTypes,
  type RequiredByLoad,
  requiredByLoad,
  smallestConductorFor,
  type TemperatureColumn,
  tableAmpacity,
} from "./ampacity/index.js";
export { type LargestDevice, largestDevice } from "./asking/largest-device.js";
export { type LargestSupply, largestSupply } from "./asking/largest-supply.js";
export { type Prepared, type PreparedByRating, prepare } from "./asking/prepare.js";
export { requireEvidence } from "./asking/require-evidence.js";
export { type Reserve, reserveOf } from "./asking/reserve.js";
export { type Sizing, size } from "./asking/size.js";
export {
  candidateCautionCodes,
  type SupplyCandidate,
  type SupplyCandidates,
} from "./candidates/candidate.js";
export { type SupplyCandidatesQuestion, supplyCandidates } from "./candidates/supply-candidates.js";
export { compare } from "./comparison/compare.js";
export type {
  AmendmentComparison,
  Change,
  EditionComparison,
  ReadingComparison,
} from "./comparison/comparison.js";
export { sweep } from "./comparison/sweep.js";
export {
  areaOf,
  type ConductorColumn,
  type ConductorSize,
  columnOf,
  compareSizes,
  conductorColumns,
  conductorSizes,
  formatSize,
  isConductorSize,
  isMaterial,
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
export type { Drawing } from "./drawing/drawing.js";
export { drawingOf } from "./drawing/drawing-of.js";
export { amend } from "./edition/amend.js";
export {
  type Amendment,
  type Circumstances,
  type Citation,
  type Code,
  type EditionYear,
  type ElectrodeKind,
  type Evidence,
  editionYears,
  electrodeKinds,
  evidenceLevels,
  isEditionYear,
  type Purpose,
  type Readings,
  type Role,
  roleIds,
  weakestEvidence,
} from "./edition/index.js";
export { type MetalMass, type MetalMassQuestion, metalMass } from "./engineering/metal-mass/metal-mass.js";
export {
  type Fill,
  type RacewayFill,
  type RacewayFillCautionCode,
  type RacewayFillQuestion,
  type RacewayKind,
  racewayFill,
  racewayFillCautionCodes,
  type TradeSize,
} from "./engineering/raceway-fill/raceway-fill.js";
export { rectangularBarsFor } from "./engineering/rectangular-bar.js";
export {
  type ShortTimeWithstand,
  type ShortTimeWithstandInput,
  shortTimeWithstand,
  withstandCautionCodes,
} from "./engineering/short-time-withstand.js";
export {
  type SufficientConductors,
  type VoltageDrop,
  type VoltageDropCautionCode,
  type VoltageDropQuestion,
  voltageDrop,
  voltageDropCautionCodes,
} from "./engineering/voltage-drop/voltage-drop.js";
export { InputError, type Issue, type IssueCode } from "./input/input-error.js";
export type { StandardSchema } from "./input/standard-schema.js";
export { version } from "./input/version.generated.js";
export type { Arrangement, ArrangementComparison } from "./installation/arrangements/arrangement.js";
export { type ArrangementsInput, arrangementsOf } from "./installation/arrangements/arrangements-of.js";
export { candidatesOf, type InstallationCandidates } from "./installation/candidates-of.js";
export { checkOf } from "./installation/check.js";
export { compareInstallation } from "./installation/compare-installation.js";
export type { ConductorEnd, ConductorIdentity } from "./installation/conductor-identity.js";
export { conductorName, endName } from "./installation/conductor-names.js";
export type { Covering } from "./installation/covering.js";
export type { Installation } from "./installation/document.js";
export { type Effects, effects } from "./installation/effects.js";
export { fingerprintOf } from "./installation/fingerprint.js";
export type { InstallationComparison } from "./installation/installation-comparison.js";
export type { Check, CheckedConductor, CheckVerdict } from "./installation/installed/checked.js";
export type { CheckFinding } from "./installation/installed/finding.js";
export type { FoundConductor } from "./installation/installed/shape.generated.js";
export { issuesSoFar } from "./installation/issues-so-far.js";
export type { OpenOutcome, OpenQuestion } from "./installation/open-question.js";
export { readInstallation } from "./installation/read-installation.js";
export type { Schedule, ScheduledConductor } from "./installation/schedule.js";
export { scheduleOf } from "./installation/schedule-of.js";
export { installationSchema } from "./installation/standard-schema.js";
export { type Violation, type ViolationCode, violationCodes } from "./installation/violation.js";
export { arrangementsDocument } from "./report/arrangements-document.js";
export { candidatesDocument } from "./report/candidates-document.js";
export { checkDocument } from "./report/check-document.js";
export { comparisonDocument } from "./report/comparison-document.js";
export type { Document, DocumentPart } from "./report/document.js";
export { explain } from "./report/explain.js";
export type { DocumentOptions } from "./report/frame.js";
export { drawingAsSvg } from "./report/render/drawing-svg.js";
export { render } from "./report/render/render.js";
export { tradeOffAsSvg } from "./report/render/trade-off-svg.js";
export { reportDocument } from "./report/report-document.js";
export { resultDocument } from "./report/result-document.js";
export { rowsDocument } from "./report/rows-document.js";
export { scheduleDocument } from "./report/schedule-document.js";
export type { DrawingOptions } from "./report/shape.generated.js";
export type { AnyRole, Input, Result, RoleByRating, RoleBySupply } from "./roles/definition.js";
export { cableTrayAsEquipmentGroundingConductor } from "./roles/equipment-grounding-conductor/cable-tray.js";
export * from "./roles/register.generated.js";
export { type Caution, type CautionCode, cautionCodes } from "./rules/caution.js";
export type { NotRequiredReason, Outcome, ReadingUsed, SizingResult } from "./rules/result.js";
export type { Electrode, ProtectedCircuit } from "./rules/shape.generated.js";
export type { Governing, Step } from "./sizing/index.js";
export {
  assumedConductors,
  type Conductor,
  correspondingSum,
  type Supply,
  type SupplySet,
  sumOfLargest,
  transformerCurrent,
} from "./supply/index.js";
export { type FeederTap, feederTap } from "./supply/taps/feeder-tap.js";
export { type TapCaution, tapCautionCodes } from "./supply/taps/tap-cautions.js";
export { type TransformerSecondary, transformerSecondary } from "./supply/taps/transformer-secondary.js";
export type {
  Designation,
  DesignationBonding,
  DesignationInput,
} from "./systems/designation.js";
export type { Grounding } from "./systems/shape.generated.js";
export { bondingAtDesignation } from "./systems/supply-side-designation.js";
export {
  classifySource,
  type SourceClassification,
  type SourceInput,
} from "./systems/system-classification.js";
export type { RoleFollows } from "./systems/system-roles.js";
export { formatArea, fromSquareInches, toSquareInches, toSquareMillimeters } from "./units/area.js";
