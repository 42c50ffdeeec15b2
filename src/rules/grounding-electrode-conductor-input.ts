import type { Material } from "../conductor/index.js";
import { type Code, type EditionYear, readCode } from "../edition/index.js";
import {
  member,
  optional,
  type Reader,
  readFlag,
  readList,
  readObject,
  readOneOf,
  refuse,
} from "../input/reader.js";
import type { Supply } from "../supply/index.js";
import { readSupply } from "../supply/read.js";
import { type Electrode, readElectrode } from "./electrode.js";
import { readConductorMaterial } from "./impedance-grounding-conductor.js";
import { refuseLargeControlTransformer } from "./small-supplies.js";

/** A grounding electrode conductor to be sized. */
export interface ElectrodeConductorInput {
  readonly code: Code;
  /** What it grounds: a service, a separately derived system, or a building or structure on a feeder. */
  readonly of: "service" | "separately-derived" | "building";
  /** The ungrounded conductors: to the disconnect or enclosure it serves, or of all of them for a common conductor. */
  readonly supply: Supply;
  readonly conductor: { readonly material: Material };
  /** Every electrode that this conductor serves, also those beyond the first, in any order. */
  readonly electrodes: readonly Electrode[];
  /**
   * Which part it is: the only conductor, an individual one of an enclosure or the one from a place ahead of several (`only`), the
   * common conductor of several enclosures, or the tap of one enclosure or system. The only one unless told.
   */
  readonly part?: "only" | "common" | "tap";
  /**
   * For the common conductor of a service: whether the conductors to the enclosures connect directly to the drop, lateral or service
   * conductors. Corresponding conductors are then added instead of each set's largest (Table 250.66 note 1).
   */
  readonly fromDrop?: boolean;
  /** Whether the system has no grounded conductor. The size is the same; another section asks for it. */
  readonly ungrounded?: boolean;
  /**
   * Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits whose frame is bonded to its grounded conductor
   * as the exception asks for; none is then required. Conductors for more than 100 A belong to no such transformer and are refused, and
   * an ungrounded system has no conductor to bond.
   */
  readonly controlTransformer?: boolean;
  /**
   * Whether one branch circuit, a multiwire one included, supplies the building and brings an equipment grounding conductor; none
   * is then required. Conductors larger than a circuit of 50 A has get a caution.
   */
  readonly onSingleBranchCircuit?: boolean;
}

/** The common conductor of several separately derived systems. */
export interface CommonDerivedConductorInput {
  readonly code: Code;
  readonly conductor: { readonly material: Material };
  /** All electrodes that are present: the exception from 2020 on asks for those, not only for the ones on this conductor. */
  readonly electrodes: readonly Electrode[];
}

const keys = [
  "code",
  "of",
  "supply",
  "conductor",
  "electrodes",
  "part",
  "fromDrop",
  "ungrounded",
  "controlTransformer",
  "onSingleBranchCircuit",
] as const;

/** Checks the input of a grounding electrode conductor. */
export function readElectrodeConductorInput(at: Reader): ElectrodeConductorInput | undefined {
  if (!readObject(at, keys)) return undefined;
  const code = readCode(member(at, "code"));
  const of = readOneOf(member(at, "of"), ["service", "separately-derived", "building"]);
  const supply = readSupply(member(at, "supply"));
  const conductor = readConductorMaterial(member(at, "conductor"));
  const electrodes = readElectrodes(member(at, "electrodes"), code?.year);
  const part = optional(member(at, "part"), (one) => readOneOf(one, ["only", "common", "tap"]));
  const flags = readFlags(at, of, part);
  if (part === "common" && of === "separately-derived") {
    return refuse(
      member(at, "part"),
      "unknown-value",
      '"only" or "tap"',
      "size a common conductor of derived systems with sizeCommonConductorOfDerivedSystems",
    );
  }
  if (flags.onSingleBranchCircuit === true && part !== undefined && part !== "only") {
    return refuse(
      member(at, "part"),
      "unknown-value",
      '"only"',
      "a building on one branch circuit has no several enclosures; leave out one of the two",
    );
  }
  if (flags.controlTransformer === true && flags.ungrounded === true) {
    return refuse(
      member(at, "ungrounded"),
      "unknown-value",
      "false",
      "the exception for control transformers bonds their grounded conductor; leave out one of the two",
    );
  }
  if (code === undefined || of === undefined || supply === undefined) return undefined;
  if (flags.controlTransformer === true && of === "separately-derived")
    refuseLargeControlTransformer(at, supply, code.year);
  if (conductor === undefined || electrodes === undefined) return undefined;
  return { code, of, supply, conductor, electrodes, ...(part && { part }), ...flags };
}

type Flags = Pick<
  ElectrodeConductorInput,
  "fromDrop" | "ungrounded" | "controlTransformer" | "onSingleBranchCircuit"
>;

/** Reads the flags that are set; one that is set where it means nothing is refused. */
function readFlags(
  at: Reader,
  of: ElectrodeConductorInput["of"] | undefined,
  part: ElectrodeConductorInput["part"],
): Flags {
  const flag = (key: keyof Flags, what: string, fits: boolean, fit: string): Flags => {
    if (optional(member(at, key), (one) => readFlag(one, what)) !== true) return {};
    if (of !== undefined && !fits) refuse(member(at, key), "unknown-value", "false", fit);
    return { [key]: true };
  };
  return {
    ...flag(
      "fromDrop",
      "whether the conductors connect directly to the drop or lateral",
      of === "service" && part === "common",
      "only the common conductor of a service has two ways to add conductors",
    ),
    ...flag("ungrounded", "whether the system has no grounded conductor", true, ""),
    ...flag(
      "controlTransformer",
      "whether this is a small control transformer",
      of === "separately-derived",
      "only a separately derived system is a control transformer",
    ),
    ...flag(
      "onSingleBranchCircuit",
      "whether one branch circuit supplies the building",
      of === "building",
      "only a building or structure can be on one branch circuit",
    ),
  };
}

/** Checks the input of the common conductor of several derived systems. */
export function readCommonDerivedInput(at: Reader): CommonDerivedConductorInput | undefined {
  if (!readObject(at, ["code", "conductor", "electrodes"])) return undefined;
  const code = readCode(member(at, "code"));
  const conductor = readConductorMaterial(member(at, "conductor"));
  const electrodes = readElectrodes(member(at, "electrodes"), code?.year);
  return code && conductor && electrodes && { code, conductor, electrodes };
}

/** Checks a list of electrodes. */
export function readElectrodes(at: Reader, year: EditionYear | undefined): readonly Electrode[] | undefined {
  return readList(at, (one) => readElectrode(one, year));
}
