import type { Keys } from "../../input/place.js";
import { type Members, readShape } from "../../input/read-shape.js";
import { member, placeIn, type Reader, refuse } from "../../input/reader.js";
import { refuseSmallRings } from "../../rules/electrode.js";
import { refuseUnaddableSets } from "../../supply/read.js";
import {
  type DerivedElectrodesInput,
  derivedElectrodesInputShape,
  type ElectrodeConductorsInput,
  type EnclosureElectrodesInput,
  enclosureElectrodesInputShape,
  type MainJumpersInput,
  mainJumpersInputShape,
  type RacewayJumpersInput,
  racewayJumpersInputShape,
  type SuppliedPlace,
  type SystemJumpersInput,
  systemJumpersInputShape,
} from "./shape.generated.js";

/** Checks the question about main bonding jumpers. */
export function readMainJumpers(at: Reader): MainJumpersInput | undefined {
  return readShape<MainJumpersInput>(at, mainJumpersInputShape, (there, { enclosures, wireway }) => {
    refuseUnlike(there, "enclosures", enclosures);
    refuseDuplicates(there, [...named(["enclosures"], enclosures), ...alone("wireway", wireway)]);
  });
}

/** Checks the question about system bonding jumpers. */
export function readSystemJumpers(at: Reader): SystemJumpersInput | undefined {
  return readShape<SystemJumpersInput>(at, systemJumpersInputShape, (there, { enclosures, source }) => {
    refuseUnlike(there, "enclosures", enclosures);
    refuseDuplicates(there, [...alone("source", source), ...named(["enclosures"], enclosures)]);
  });
}

/** Checks the question about the jumpers of raceways. */
export function readRacewayJumpers(at: Reader): RacewayJumpersInput | undefined {
  return readShape<RacewayJumpersInput>(at, racewayJumpersInputShape, (there, { raceways }) => {
    refuseUnlike(there, "raceways", raceways);
    refuseDuplicates(there, named(["raceways"], raceways));
  });
}

/** Checks the question about grounding electrode conductors. */
export function readElectrodeConductors(at: Reader): ElectrodeConductorsInput | undefined {
  return member(at, "system").value === "separately-derived"
    ? readShape<DerivedElectrodesInput>(at, derivedElectrodesInputShape, refineDerived)
    : readShape<EnclosureElectrodesInput>(at, enclosureElectrodesInputShape, refineEnclosures);
}

/** Separate systems are not added phase by phase. */
function refineDerived(at: Reader, { code, electrodes, systems }: Members<DerivedElectrodesInput>): void {
  if (code !== undefined && electrodes !== undefined) refuseSmallRings(at, electrodes, code);
  refuseDuplicates(at, named(["systems"], systems));
}

function refineEnclosures(
  at: Reader,
  { code, electrodes, system, enclosures, wireway, fromDrop }: Members<EnclosureElectrodesInput>,
): void {
  if (code !== undefined && electrodes !== undefined) refuseSmallRings(at, electrodes, code);
  refuseUnlike(at, "enclosures", enclosures);
  if (fromDrop === true && system === "building") {
    const fit = "only the common conductor of a service has two ways to add conductors";
    refuse(member(at, "fromDrop"), "unknown-value", "false", fit);
  }
  refuseDuplicates(at, [...named(["enclosures"], enclosures), ...alone("wireway", wireway)]);
}

/** Refuses places whose conductors cannot be added phase by phase. */
function refuseUnlike(at: Reader, list: string, places: readonly SuppliedPlace[] | undefined): void {
  if (places === undefined) return;
  refuseUnaddableSets(
    member(at, list),
    places.flatMap(({ supply }) => supply.sets),
  );
}

interface Named {
  readonly id: string;
  readonly keys: Keys;
}

function named(keys: Keys, places: readonly SuppliedPlace[] = []): readonly Named[] {
  return places.map(({ id }, i) => ({ id, keys: [...keys, i] }));
}

function alone(key: string, place: { readonly id: string } | undefined): readonly Named[] {
  return place === undefined ? [] : [{ id: place.id, keys: [key] }];
}

/** Notes every id that stands twice. */
function refuseDuplicates(at: Reader, places: readonly Named[]): void {
  places.forEach(({ id, keys }, i) => {
    if (places.findIndex((other) => other.id === id) === i) return;
    refuse(
      placeIn(at, [...keys, "id"], id),
      "duplicate-id",
      "an id of its own",
      "give every place a different id",
    );
  });
}
