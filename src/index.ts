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
export {
  candidateCautionCodes,
  type SupplyCandidate,
  type SupplyCandidates,
} from "./candidates/candidate.js";
export { type SupplyCandidatesQuestion, supplyCandidates } from "./candidates/supply-candidates.js";
export type { Drawing } from "./drawing/drawing.js";
export { drawingOf } from "./drawing/drawing-of.js";
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
export * from "./sizing.entry.js";
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
