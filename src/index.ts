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
export type {
  Designation,
  DesignationAnswer,
  DesignationBonding,
  DesignationInput,
  DesignationNote,
  DesignationStanding,
} from "./arrangement/designation.js";
export { arrangeElectrodeConductors } from "./arrangement/electrode-conductors.js";
export type {
  DerivedElectrodesInput,
  ElectrodeArrangementInput,
  EnclosureElectrodesInput,
} from "./arrangement/electrode-conductors-input.js";
export type { CommonInput, SuppliedPlace } from "./arrangement/enclosure.js";
export { arrangeRacewayJumpers, type RacewayJumpersInput } from "./arrangement/raceway-jumpers.js";
export {
  arrangeSeparatelyDerivedSystem,
  type DerivedSource,
  type DerivedSystemInput,
} from "./arrangement/separately-derived-system.js";
export { arrangeService, type ServiceInput } from "./arrangement/service.js";
export { bondingAtDesignation } from "./arrangement/supply-side-designation.js";
export {
  type AlternateSource,
  type ClassificationReason,
  classifySource,
  type SourceClassification,
  type SourceInput,
  type TransformerSource,
} from "./arrangement/system-classification.js";
export type { Follows, FollowsNote, Grounding, RoleFollows } from "./arrangement/system-roles.js";
export type {
  Change,
  ChangeKind,
  ChangeSubject,
  CodedInput,
  ComparedResult,
  EditionComparison,
  EditionEntry,
  Effect,
  InputOfAnyYear,
  OtherwiseRead,
  ReadingBehind,
  ReadingComparison,
  RefusedEdition,
  SizedEdition,
} from "./comparison/comparison.js";
export { compareEditions, type EditionsRequest } from "./comparison/editions.js";
export { compareReadings, type ReadingsRequest } from "./comparison/readings.js";
export { type RatingSweepRequest, type RatingSweepRow, sweepRating } from "./comparison/sweep-rating.js";
export {
  type SupplySweepRequest,
  type SupplySweepRow,
  sweepSupplyArea,
} from "./comparison/sweep-supply-area.js";
export type { Swept, SweptEdition } from "./comparison/swept.js";
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
  type AlwaysWireAmendment,
  type AmendableTable,
  type Amendment,
  type AmendmentCitation,
  type AmendmentCondition,
  type BasisAmendment,
  type CellAmendment,
  type Circumstances,
  type Citation,
  type Code,
  type EditionYear,
  type ElectrodeKind,
  type Evidence,
  editionYears,
  electrodeKinds,
  evidenceLevels,
  type FloorAmendment,
  type MaterialAmendment,
  type Purpose,
  type ReadingAmendment,
  type Readings,
  type Role,
  roles,
  type SumRule,
  type TrayArea,
  type TrayMetal,
  weakestEvidence,
} from "./edition/index.js";
export { type RectangularBar, rectangularBarsFor } from "./engineering/rectangular-bar.js";
export {
  type CapacityStep,
  type HeatStep,
  type LetThroughStep,
  type ShortTimeWithstand,
  shortTimeWithstand,
  type WithstandAreaStep,
  type WithstandCautionCode,
  type WithstandCrossCheck,
  type WithstandStep,
  withstandCautionCodes,
} from "./engineering/short-time-withstand.js";
export type {
  ShortTimeWithstandInput,
  WithstandConductorByArea,
  WithstandConductorBySize,
  WithstandFault,
  WithstandLetThrough,
  WithstandTemperatures,
} from "./engineering/short-time-withstand-input.js";
export { InputError, type Issue, type IssueCode } from "./input/input-error.js";
export { buildSchedule } from "./installation/build-schedule.js";
export {
  type Check,
  type CheckedConductor,
  type CheckVerdict,
  checkInstalled,
  type FoundConductor,
} from "./installation/check.js";
export { compareDrawing } from "./installation/compare-drawing.js";
export { type Drawing, drawingSchema } from "./installation/document.js";
export type {
  ComparedConductor,
  ComparedEntry,
  DrawingComparison,
  DrawingComparisonRequest,
  DrawingOverAmendments,
  DrawingOverArrangements,
  DrawingOverEditions,
  DrawingOverReadings,
  DrawingVariant,
  RefusedVariant,
  ScheduledVariant,
  VariantChange,
} from "./installation/drawing-comparison.js";
export { fingerprintOf } from "./installation/fingerprint.js";
export {
  type ChangedConductor,
  type GridEffect,
  type ProposalEffects,
  type ProposalInput,
  proposalEffects,
} from "./installation/proposal.js";
export { readDrawing } from "./installation/read-drawing.js";
export type {
  MetalTotal,
  NotSized,
  PlacedCaution,
  Schedule,
  ScheduledConductor,
} from "./installation/schedule.js";
export {
  type DrawingSchemaIssue,
  type DrawingSchemaResult,
  type DrawingStandardSchema,
  drawingStandardSchema,
} from "./installation/standard-schema.js";
export { type Violation, type ViolationCode, violationCodes } from "./installation/violation.js";
export type {
  DrawnBox,
  DrawnLabel,
  DrawnLine,
  DrawnSymbol,
  LineStyle,
  Picture,
  Point,
  Rectangle,
  Sheet,
  SymbolKind,
} from "./picture/picture.js";
export { pictureOf } from "./picture/picture-of.js";
export { writeEditions, writeReadings } from "./report/comparison-markdown.js";
export { type CsvCell, rowsToCsv } from "./report/csv.js";
export { writeComparisonMarkdown } from "./report/drawing-comparison-markdown.js";
export { type ComparisonRow, comparisonRows } from "./report/drawing-comparison-rows.js";
export { writeComparison } from "./report/drawing-comparison-text.js";
export { explain } from "./report/explain.js";
export { explainDesignation, explainSource } from "./report/explain-system.js";
export { explainShortTimeWithstand } from "./report/explain-withstand.js";
export { checkAsHtml, comparisonAsHtml } from "./report/pages-html.js";
export { pictureAsSvg } from "./report/picture-svg.js";
export { reportAsHtml } from "./report/report-html.js";
export { reportAsMarkdown } from "./report/report-markdown.js";
export { writeCheckMarkdown, writeScheduleMarkdown } from "./report/schedule-markdown.js";
export { type CheckRow, checkRows, type ScheduleRow, scheduleRows } from "./report/schedule-rows.js";
export { writeCheck, writeSchedule } from "./report/schedule-table.js";
export { writeArrangements } from "./report/schedule-text.js";
export { amend } from "./rules/amend.js";
export {
  type CableTrayInput,
  type CableTrayNotPermitted,
  type CableTrayOutcome,
  type CableTrayPermitted,
  type CableTrayResult,
  cableTrayAsEquipmentGroundingConductor,
} from "./rules/cable-tray-as-equipment-grounding-conductor.js";
export { type Caution, type CautionCode, cautionCodes } from "./rules/caution.js";
export { sizeCommonConductorOfDerivedSystems } from "./rules/common-derived-electrode-conductor.js";
export type { Electrode, PlainElectrode, RingElectrode } from "./rules/electrode.js";
export { type ElectrodeJumperInput, sizeElectrodeBondingJumper } from "./rules/electrode-bonding-jumper.js";
export {
  type ElectrodeRacewayInput,
  sizeElectrodeRacewayBondingJumper,
} from "./rules/electrode-raceway-bonding-jumper.js";
export {
  type EquipmentBondingJumperInput,
  sizeEquipmentBondingJumper,
} from "./rules/equipment-bonding-jumper.js";
export { sizeEquipmentGroundingConductor } from "./rules/equipment-grounding-conductor.js";
export type {
  EquipmentGroundingConductorInput,
  GroundingRun,
} from "./rules/equipment-grounding-conductor-input.js";
export { sizeGroundedConductor } from "./rules/grounded-conductor.js";
export type { GroundedConductorInput, NeutralLoad } from "./rules/grounded-conductor-input.js";
export { sizeGroundingElectrodeConductor } from "./rules/grounding-electrode-conductor.js";
export type {
  CommonDerivedConductorInput,
  ElectrodeConductorInput,
} from "./rules/grounding-electrode-conductor-input.js";
export {
  type ImpedanceJumperAtDisconnect,
  type ImpedanceJumperAtImpedance,
  type ImpedanceJumperInput,
  sizeImpedanceBondingJumper,
} from "./rules/impedance-bonding-jumper.js";
export {
  type ImpedanceConductorInput,
  sizeImpedanceGroundingConductor,
} from "./rules/impedance-grounding-conductor.js";
export {
  type IntersystemConductorInput,
  sizeIntersystemBondingConductor,
} from "./rules/intersystem-bonding-conductor.js";
export {
  type LargestSupply,
  type LargestSupplyInput,
  type LargestSupplyReading,
  largestSupplyFor,
  type SupplyJumperRole,
  type SupplyLimit,
} from "./rules/inverse.js";
export type { JumperInput, JumperRequest } from "./rules/jumper-input.js";
export {
  type DeviceReserve,
  type LargestDevice,
  type LargestDeviceInput,
  largestDeviceFor,
} from "./rules/largest-device.js";
export { prepareMainBondingJumper, sizeMainBondingJumper } from "./rules/main-bonding-jumper.js";
export { type OtherPipingInput, sizeOtherPipingBondingJumper } from "./rules/other-piping-bonding-jumper.js";
export type { Prepared, PreparedByArea, PreparedByAssumedArea, PreparedRequest } from "./rules/prepare.js";
export type {
  CircuitDevice,
  FeederDevice,
  Increase,
  IncreaseReason,
  InstantaneousTripMotorDevice,
  InverseTimeMotorDevice,
  MotorDevice,
  OwnDevice,
  ProtectedCircuit,
} from "./rules/protected-circuit.js";
export { requireEvidence } from "./rules/require-evidence.js";
export { type InstalledConductor, type Reserve, type ReserveInput, reserveOf } from "./rules/reserve.js";
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
  type StructuralMetalInput,
  sizeStructuralMetalBondingJumper,
} from "./rules/structural-metal-bonding-jumper.js";
export {
  prepareSupplySideBondingJumper,
  type SupplySideJumperInput,
  sizeSupplySideBondingJumper,
} from "./rules/supply-side-bonding-jumper.js";
export {
  prepareSystemBondingJumper,
  type SystemJumperInput,
  sizeSystemBondingJumper,
} from "./rules/system-bonding-jumper.js";
export type { SystemKind } from "./rules/system-kind.js";
export { sizeWaterPipingBondingJumper } from "./rules/water-piping-bonding-jumper.js";
export type {
  PipingOfBuilding,
  PipingOfOccupancy,
  PipingOfSystem,
  WaterPipingInput,
} from "./rules/water-piping-bonding-jumper-input.js";
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
  SharedCircuit,
  SharedStep,
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
  type TransformerRating,
  transformerCurrent,
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
