import type { TemperatureColumn } from "../../ampacity/index.js";
import type { Code } from "../../edition/index.js";
import { readCode } from "../../edition/index.js";
import type { Keys } from "../../input/place.js";
import {
  member,
  optional,
  placeIn,
  type Reader,
  readList,
  readName,
  readObject,
  refuse,
} from "../../input/reader.js";
import { readWantedConductor, type WantedConductor } from "../../rules/by-supply-input.js";
import { readColumn } from "../../supply/for-load.js";
import type { Supply } from "../../supply/index.js";
import { areOneSupply, readSupply } from "../../supply/read.js";
import type { WantedJumper } from "../schedule.js";

/** A disconnecting means with its enclosure, or a wireway ahead of several, with the ungrounded conductors to it. */
export interface SuppliedPlace {
  /** Name on the drawing; unique within an input. */
  readonly id: string;
  /** The ungrounded conductors. */
  readonly supply: Supply;
}

/** What services and separately derived systems are described by alike. */
export interface CommonInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** The enclosures, each with the ungrounded conductors to it. */
  readonly enclosures: readonly SuppliedPlace[];
  /** The conductor. */
  readonly conductor: WantedConductor;
  /** Temperature column, in degrees Celsius. */
  readonly temperature?: TemperatureColumn;
}

/** Keys of {@link CommonInput}. */
export const commonKeys = ["code", "enclosures", "conductor", "temperature"] as const;

/** Checks the common part of an input. */
export function readCommon(at: Reader): CommonInput | undefined {
  const code = readCode(member(at, "code"));
  const enclosures = readList(member(at, "enclosures"), readSuppliedPlace);
  const conductor = readWantedConductor(member(at, "conductor"));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (code === undefined || enclosures === undefined || conductor === undefined) return undefined;
  const sets = enclosures.flatMap(({ supply }) => supply.sets);
  if (!areOneSupply(member(at, "enclosures"), sets)) return undefined;
  return { code, enclosures, conductor, ...(temperature && { temperature }) };
}

/** Checks a named place with its supply. */
export function readSuppliedPlace(at: Reader): SuppliedPlace | undefined {
  if (!readObject(at, ["id", "supply"])) return undefined;
  const id = readName(member(at, "id"), "this place, as on the drawing");
  const supply = readSupply(member(at, "supply"));
  return id === undefined || supply === undefined ? undefined : { id, supply };
}

/** Notes every id that stands twice. */
export function refuseDuplicates(
  at: Reader,
  places: readonly {
    /** Stable id. */
    readonly id: string;
    readonly keys: Keys;
  }[],
): void {
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

/** Every place of a list with the steps to it. */
export function withKeys(
  list: string,
  places: readonly SuppliedPlace[],
): readonly { readonly id: string; readonly keys: Keys }[] {
  return places.map(({ id }, i) => ({ id, keys: [list, i] }));
}

/** The conductor that the bonding jumpers of a question are sized as. */
export function wantedIn({
  conductor,
  temperature,
}: Pick<CommonInput, "conductor" | "temperature">): WantedJumper {
  return { conductor, ...(temperature && { temperature }) };
}
