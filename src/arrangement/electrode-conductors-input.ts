import type { Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { member, optional, type Reader, readFlag, readList, readObject, readOneOf } from "../input/reader.js";
import type { Electrode } from "../rules/electrode.js";
import { readElectrodes } from "../rules/grounding-electrode-conductor-input.js";
import { readConductorMaterial } from "../rules/impedance-grounding-conductor.js";
import { areLikePhases } from "../supply/read.js";
import { readSuppliedPlace, refuseDuplicates, type SuppliedPlace, withPaths } from "./enclosure.js";

/** What all electrode conductors of one arrangement share. */
interface ElectrodeArrangement {
  readonly code: Code;
  /** Material of every conductor and tap. */
  readonly conductor: { readonly material: Material };
  /** The electrodes of the building, all of them served by every conductor. */
  readonly electrodes: readonly Electrode[];
}

/** Electrode conductors of a service, or of a building on a feeder, with one enclosure or several. */
export interface EnclosureElectrodesInput extends ElectrodeArrangement {
  readonly of: "service" | "building";
  /** The disconnects' enclosures, each with the ungrounded conductors to it. */
  readonly enclosures: readonly SuppliedPlace[];
  /** An accessible wireway or enclosure ahead of them, with the conductors there; all those of the enclosures unless told. */
  readonly wireway?: SuppliedPlace;
  /** Whether the conductors to the enclosures of a service connect directly to the drop, lateral or service conductors. */
  readonly fromDrop?: boolean;
}

/** Electrode conductors of several separately derived systems. */
export interface DerivedElectrodesInput extends ElectrodeArrangement {
  readonly of: "separately-derived";
  /** The systems, each with its derived ungrounded conductors. */
  readonly systems: readonly SuppliedPlace[];
}

/** Several places that are connected to the electrodes. */
export type ElectrodeArrangementInput = EnclosureElectrodesInput | DerivedElectrodesInput;

const keys = ["code", "of", "conductor", "electrodes"] as const;

/** Checks the input of an arrangement of electrode conductors. */
export function readElectrodeArrangement(at: Reader): ElectrodeArrangementInput | undefined {
  const derived = member(at, "of").value === "separately-derived";
  if (!readObject(at, [...keys, ...(derived ? ["systems"] : ["enclosures", "wireway", "fromDrop"])])) {
    return undefined;
  }
  const of = readOneOf(member(at, "of"), ["service", "building", "separately-derived"]);
  const code = readCode(member(at, "code"));
  const conductor = readConductorMaterial(member(at, "conductor"));
  const electrodes = readElectrodes(member(at, "electrodes"), code?.year);
  const list = derived ? "systems" : "enclosures";
  const places = readPlaces(at, list);
  const wireway = optional(member(at, "wireway"), readSuppliedPlace);
  const fromDrop = optional(member(at, "fromDrop"), (one) =>
    readFlag(one, "whether the conductors connect directly to the drop or lateral"),
  );
  if (of === undefined || code === undefined || conductor === undefined) return undefined;
  if (electrodes === undefined || places === undefined) return undefined;
  const ahead = wireway === undefined ? [] : [{ id: wireway.id, path: "wireway" }];
  refuseDuplicates(at, [...withPaths(list, places), ...ahead]);
  if (of === "separately-derived") return { code, of, conductor, electrodes, systems: places };
  return {
    code,
    of,
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
  return areLikePhases(member(at, list), sets) ? places : undefined;
}
