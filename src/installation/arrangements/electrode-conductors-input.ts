import { type Code, readCode } from "../../edition/index.js";
import { readShape } from "../../input/read-shape.js";
import {
  member,
  optional,
  type Reader,
  readFlag,
  readList,
  readObject,
  readOneOf,
  refuse,
} from "../../input/reader.js";
import { readWantedWire, type WantedWire } from "../../rules/by-supply-input.js";
import { type Electrode, refuseSmallRings } from "../../rules/electrode.js";
import { electrodeShape } from "../../rules/shape.generated.js";
import { areOneSupply } from "../../supply/read.js";
import { readSuppliedPlace, refuseDuplicates, type SuppliedPlace, withKeys } from "./enclosure.js";

/** What all electrode conductors of one arrangement share. */
interface ElectrodeArrangement {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** Material of every conductor and tap. */
  readonly conductor: WantedWire;
  /** The electrodes of the building, all of them served by every conductor. */
  readonly electrodes: readonly Electrode[];
}

/** Electrode conductors of a service, or of a building on a feeder, with one enclosure or several. */
export interface EnclosureElectrodesInput extends ElectrodeArrangement {
  /** What it belongs to. */
  readonly system: "service" | "building";
  /** The disconnects' enclosures, each with the ungrounded conductors to it. */
  readonly enclosures: readonly SuppliedPlace[];
  /** An accessible wireway or enclosure ahead of them, with the conductors there; all those of the enclosures by default. */
  readonly wireway?: SuppliedPlace;
  /** Whether the conductors to the enclosures of a service connect directly to the drop, lateral or service conductors. */
  readonly fromDrop?: boolean;
}

/** Electrode conductors of several separately derived systems. */
export interface DerivedElectrodesInput extends ElectrodeArrangement {
  /** What it belongs to. */
  readonly system: "separately-derived";
  /** The systems, each with its derived ungrounded conductors. */
  readonly systems: readonly SuppliedPlace[];
}

/** Several places that are connected to the electrodes. */
export type ElectrodeConductorsInput = EnclosureElectrodesInput | DerivedElectrodesInput;

const keys = ["code", "system", "conductor", "electrodes"] as const;

/** Checks the input of an arrangement of electrode conductors. */
export function readElectrodeConductors(at: Reader): ElectrodeConductorsInput | undefined {
  const derived = member(at, "system").value === "separately-derived";
  if (!readObject(at, [...keys, ...(derived ? ["systems"] : ["enclosures", "wireway", "fromDrop"])])) {
    return undefined;
  }
  const system = readOneOf(member(at, "system"), ["service", "building", "separately-derived"]);
  const code = readCode(member(at, "code"));
  const conductor = readWantedWire(member(at, "conductor"));
  const electrodes = readList(member(at, "electrodes"), (one) => readShape<Electrode>(one, electrodeShape));
  if (code !== undefined && electrodes !== undefined) refuseSmallRings(at, electrodes, code);
  const list = derived ? "systems" : "enclosures";
  const places = readPlaces(at, list);
  const wireway = optional(member(at, "wireway"), readSuppliedPlace);
  const fromDrop = optional(member(at, "fromDrop"), (one) =>
    readFlag(one, "whether the conductors connect directly to the drop or lateral"),
  );
  if (fromDrop === true && system === "building") {
    const fit = "only the common conductor of a service has two ways to add conductors";
    refuse(member(at, "fromDrop"), "unknown-value", "false", fit);
  }
  if (system === undefined || code === undefined || conductor === undefined) return undefined;
  if (electrodes === undefined || places === undefined) return undefined;
  const ahead = wireway === undefined ? [] : [{ id: wireway.id, keys: ["wireway"] }];
  refuseDuplicates(at, [...withKeys(list, places), ...ahead]);
  if (system === "separately-derived") return { code, system, conductor, electrodes, systems: places };
  return {
    code,
    system,
    conductor,
    electrodes,
    enclosures: places,
    ...(wireway && { wireway }),
    ...(fromDrop === undefined ? {} : { fromDrop }),
  };
}

/** Places of one building are added phase by phase; separate systems are not. */
function readPlaces(at: Reader, list: "systems" | "enclosures"): readonly SuppliedPlace[] | undefined {
  const places = readList(member(at, list), readSuppliedPlace);
  if (places === undefined || list === "systems") return places;
  const sets = places.flatMap(({ supply }) => supply.sets);
  return areOneSupply(member(at, list), sets) ? places : undefined;
}
