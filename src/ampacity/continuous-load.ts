import {
  type ByEdition,
  type Citation,
  type EditionYear,
  type Evidence,
  weakestEvidence,
} from "../edition/index.js";
import {
  continuousBranchCircuit,
  continuousBranchCircuitDevice,
  continuousFeeder,
  continuousFeederDevice,
  continuousService,
} from "../edition/tables/sections.generated.js";
import { readShape } from "../input/read-shape.js";
import { member, readAll, refuse } from "../input/reader.js";
import { type ContinuousLoadQuestion, continuousLoadQuestionShape } from "./shape.generated.js";

export type { ContinuousLoadQuestion };

/** Amperes that something has to reach. */
export interface RequiredAmperes {
  /** Amperes, not rounded. */
  readonly amperes: number;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/** What a load requires of conductors and of their device. */
export interface RequiredByLoad {
  /** Tells results apart. */
  readonly kind: "required-by-load";
  /** Edition. */
  readonly edition: EditionYear;
  /** What the conductors are part of. */
  readonly of: ContinuousLoadQuestion["of"];
  /** Whether the assembly is listed to run at 100 percent of its rating. */
  readonly listedForAll: boolean;
  /** Load in amperes, continuous and other together: what the ampacity in its place has to reach. */
  readonly load: number;
  /** Amperes that the ampacity before correction and adjustment has to reach. */
  readonly conductors: RequiredAmperes;
  /** Smallest rating of the device in amperes; `null` of a service, whose device follows its own rules. */
  readonly device: RequiredAmperes | null;
  /** The weakest that it rests on. */
  readonly evidence: Evidence;
}

const places: Readonly<
  Record<
    ContinuousLoadQuestion["of"],
    { readonly conductors: ByEdition<Citation>; readonly device: ByEdition<Citation> | null }
  >
> = {
  service: { conductors: continuousService, device: null },
  feeder: { conductors: continuousFeeder, device: continuousFeederDevice },
  "branch-circuit": { conductors: continuousBranchCircuit, device: continuousBranchCircuitDevice },
};

/**
 * What a load requires, a part of it being continuous: 125 percent of the continuous part and 100 percent of the rest, of the conductors before
 * any correction and adjustment and of the device; 100 percent of all where the assembly is listed for it. A grounded conductor that lands on
 * no overcurrent device counts its load at 100 percent.
 *
 * @param question - edition, what the conductors are part of, and the two parts of the load in amperes
 * @returns amperes, not rounded
 * @throws {@link InputError} listing everything that is wrong in the question, among it a load of nothing
 *
 * @example
 * ```ts
 * import { requiredByLoad } from "bondmil";
 * const feeder = requiredByLoad({ edition: "2023", of: "feeder", continuous: 40, other: 60 });
 * [feeder.load, feeder.conductors.amperes, feeder.device?.amperes]; // => [100, 110, 110]
 * feeder.conductors.citation.section; // => "215.2(A)(1)"
 * ```
 */
export function requiredByLoad(question: ContinuousLoadQuestion): RequiredByLoad {
  return readAll(question, (at) => {
    const read = readShape<ContinuousLoadQuestion>(at, continuousLoadQuestionShape);
    if (read === undefined) return undefined;
    const { edition, of, continuous, other, listedForAll = false } = read;
    if (continuous + other === 0) {
      return refuse(member(at, "continuous"), "not-positive", "a load", "give the load in amperes");
    }
    const amperes = countedLoad(read);
    const { conductors, device } = places[of];
    const cited = [conductors[edition], ...(device === null ? [] : [device[edition]])];
    return {
      kind: "required-by-load",
      edition,
      of,
      listedForAll,
      load: continuous + other,
      conductors: { amperes, citation: conductors[edition] },
      device: device === null ? null : { amperes, citation: device[edition] },
      evidence: weakestEvidence(cited.map(({ evidence }) => evidence)),
    };
  });
}

/** Amperes for which a load counts: 125 percent of what is continuous and all of the rest; all of both where the assembly is listed for it. */
export function countedLoad({
  continuous,
  other,
  listedForAll = false,
}: Pick<ContinuousLoadQuestion, "continuous" | "other" | "listedForAll">): number {
  return ((listedForAll ? 100 : 125) * continuous + 100 * other) / 100;
}
