import type {
  CommonDerivedConductorInput,
  ElectrodeConductorInput,
  ElectrodeJumperInput,
  ElectrodeRacewayInput,
  EquipmentBondingJumperInput,
  EquipmentGroundingConductorInput,
  GroundedConductorInput,
  ImpedanceConductorInput,
  ImpedanceJumperInput,
  IntersystemConductorInput,
  JumperInput,
  OtherPipingInput,
  Role,
  StructuralMetalInput,
  SupplySideJumperInput,
  SystemJumperInput,
  WaterPipingInput,
} from "../../src/index.js";

/** An input of bondmil without its code; of a union, each member without it. */
export type Uncoded<Input> = Input extends unknown ? Omit<Input, "code"> : never;

/** The common conductor of several separately derived systems: no supply, for its size is fixed. */
export type CommonDerivedCheckInput = Uncoded<CommonDerivedConductorInput> & {
  readonly of: "separately-derived";
  readonly part: "common";
};

/**
 * What the checks of each role give an implementation: the input that bondmil's function of that role takes, less the code, which is
 * the edition of the question. Areas are in circular mils, currents in amperes.
 */
export interface CheckInputs {
  readonly "main-bonding-jumper": Uncoded<JumperInput>;
  readonly "system-bonding-jumper": Uncoded<SystemJumperInput>;
  readonly "supply-side-bonding-jumper": Uncoded<SupplySideJumperInput>;
  readonly "grounded-conductor": Uncoded<GroundedConductorInput>;
  readonly "impedance-grounding-conductor": Uncoded<ImpedanceConductorInput>;
  readonly "impedance-bonding-jumper": Uncoded<ImpedanceJumperInput>;
  readonly "equipment-grounding-conductor": Uncoded<EquipmentGroundingConductorInput>;
  readonly "equipment-bonding-jumper": Uncoded<EquipmentBondingJumperInput>;
  readonly "water-piping-bonding-jumper": Uncoded<WaterPipingInput>;
  readonly "other-piping-bonding-jumper": Uncoded<OtherPipingInput>;
  readonly "structural-metal-bonding-jumper": Uncoded<StructuralMetalInput>;
  readonly "grounding-electrode-conductor": Uncoded<ElectrodeConductorInput> | CommonDerivedCheckInput;
  readonly "electrode-bonding-jumper": Uncoded<ElectrodeJumperInput>;
  readonly "electrode-raceway-bonding-jumper": Uncoded<ElectrodeRacewayInput>;
  readonly "intersystem-bonding-conductor": Uncoded<IntersystemConductorInput>;
}

/** Input of any check. */
export type CheckInput = CheckInputs[Role];
