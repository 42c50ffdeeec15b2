import { type Members, readShape } from "../../input/read-shape.js";
import { member, type Reader, refuse } from "../../input/reader.js";
import { refuseSmallRings } from "../../rules/electrode.js";
import { refuseLargeControlTransformer } from "../../rules/small-supplies.js";
import {
  type CommonOfDerivedSystems,
  commonOfDerivedSystemsShape,
  type ElectrodeConductorOfSupply,
  electrodeConductorOfSupplyShape,
  type GroundingElectrodeConductorInput,
} from "./shape.generated.js";

export type { CommonOfDerivedSystems, ElectrodeConductorOfSupply, GroundingElectrodeConductorInput };

/** Checks the input of a grounding electrode conductor. */
export function readInput(at: Reader): GroundingElectrodeConductorInput | undefined {
  const isCommonOfSystems =
    member(at, "system").value === "separately-derived" && member(at, "part").value === "common";
  return isCommonOfSystems
    ? readShape<CommonOfDerivedSystems>(at, commonOfDerivedSystemsShape, refineElectrodes)
    : readShape<ElectrodeConductorOfSupply>(at, electrodeConductorOfSupplyShape, refine);
}

function refineElectrodes(at: Reader, { code, electrodes }: Members<CommonOfDerivedSystems>): void {
  if (code !== undefined && electrodes !== undefined) refuseSmallRings(at, electrodes, code);
}

function refine(at: Reader, members: Members<ElectrodeConductorOfSupply>): void {
  const { code, electrodes, system, part = "only", supply } = members;
  if (code !== undefined && electrodes !== undefined) refuseSmallRings(at, electrodes, code);
  if (system !== undefined) refuseFlags(at, members, system);
  if (members.onSingleBranchCircuit === true && part !== "only") {
    const advice = "a building on one branch circuit has no several enclosures; leave out one of the two";
    refuse(member(at, "part"), "unknown-value", '"only"', advice, ["only"]);
  }
  if (members.controlTransformer !== true) return;
  if (members.ungrounded === true) {
    const advice =
      "the exception for control transformers bonds their grounded conductor; leave out one of the two";
    refuse(member(at, "ungrounded"), "unknown-value", "false", advice);
  }
  if (code !== undefined && supply !== undefined && system === "separately-derived") {
    refuseLargeControlTransformer(at, supply, code.year);
  }
}

/** Refuses flags that are set where they mean nothing. */
function refuseFlags(
  at: Reader,
  { part, fromDrop, controlTransformer, onSingleBranchCircuit }: Members<ElectrodeConductorOfSupply>,
  system: ElectrodeConductorOfSupply["system"],
): void {
  const unless = (fits: boolean, flag: string, value: boolean | undefined, advice: string): void => {
    if (value === true && !fits) refuse(member(at, flag), "unknown-value", "false", advice);
  };
  unless(
    system === "service" && part === "common",
    "fromDrop",
    fromDrop,
    "only the common conductor of a service has two ways to add conductors",
  );
  unless(
    system === "separately-derived",
    "controlTransformer",
    controlTransformer,
    "only a separately derived system is a control transformer",
  );
  unless(
    system === "building",
    "onSingleBranchCircuit",
    onSingleBranchCircuit,
    "only a building or structure can be on one branch circuit",
  );
}
