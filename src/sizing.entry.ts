/**
 * The entry `bondmil/sizing`: the roles, and the functions that go over any of them; codes and amendments, sizes, materials, areas
 * and supplies. Not whole installations, ampacity or reports. `bondmil` exports all of it too.
 *
 * @packageDocumentation
 */

export { type LargestDevice, largestDevice } from "./asking/largest-device.js";
export { type LargestSupply, largestSupply } from "./asking/largest-supply.js";
export { type Prepared, type PreparedByRating, prepare } from "./asking/prepare.js";
export { requireEvidence } from "./asking/require-evidence.js";
export { type Reserve, reserveOf } from "./asking/reserve.js";
export { type Sizing, size } from "./asking/size.js";
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
export { InputError, type Issue, type IssueCode } from "./input/input-error.js";
export type { StandardSchema } from "./input/standard-schema.js";
export { version } from "./input/version.generated.js";
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
export { formatArea, fromSquareInches, toSquareInches, toSquareMillimeters } from "./units/area.js";
