import type { TemperatureColumn } from "../ampacity/index.js";
import type { Code } from "../edition/index.js";
import { readCode } from "../edition/index.js";
import { member, optional, type Reader, readList, readName, readObject, refuse } from "../input/reader.js";
import { type JumperInput, type JumperRequest, readJumperRequest } from "../rules/jumper-input.js";
import { readColumn } from "../supply/for-load.js";
import type { Supply } from "../supply/index.js";
import { areLikePhases, readSupply } from "../supply/read.js";

/** A disconnecting means with its enclosure, or a wireway ahead of several, with the ungrounded conductors to it. */
export interface SuppliedPlace {
  /** Name on the drawing; unique within an input. */
  readonly id: string;
  readonly supply: Supply;
}

/** What services and separately derived systems are described by alike. */
export interface CommonInput {
  readonly code: Code;
  readonly enclosures: readonly SuppliedPlace[];
  readonly jumper: JumperRequest;
  readonly temperature?: TemperatureColumn;
}

/** Keys of {@link CommonInput}. */
export const commonKeys = ["code", "enclosures", "jumper", "temperature"] as const;

/** Checks the common part of an input. */
export function readCommon(at: Reader): CommonInput | undefined {
  const code = readCode(member(at, "code"));
  const enclosures = readList(member(at, "enclosures"), readSuppliedPlace);
  const jumper = readJumperRequest(member(at, "jumper"));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (code === undefined || enclosures === undefined || jumper === undefined) return undefined;
  const sets = enclosures.flatMap(({ supply }) => supply.sets);
  if (!areLikePhases(member(at, "enclosures"), sets)) return undefined;
  return { code, enclosures, jumper, ...(temperature && { temperature }) };
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
  places: readonly { readonly id: string; readonly path: string }[],
): void {
  places.forEach(({ id, path }, i) => {
    if (places.findIndex((other) => other.id === id) === i) return;
    refuse(
      { ...at, value: id, path: `${path}.id` },
      "duplicate-id",
      "an id of its own",
      "give every place a different id",
    );
  });
}

/** Every place of a list with its path in the input. */
export function withPaths(
  list: string,
  places: readonly SuppliedPlace[],
): readonly { readonly id: string; readonly path: string }[] {
  return places.map(({ id }, i) => ({ id, path: `${list}[${i}]` }));
}

/** All sets of several places as one supply. */
export function joinSupplies(places: readonly SuppliedPlace[]): Supply {
  const required = places.flatMap(({ supply }) => supply.requiredForAmperes ?? []);
  const sets = places.flatMap(({ supply }) => supply.sets);
  return required.length === 0
    ? { sets }
    : { sets, requiredForAmperes: required.reduce((sum, one) => sum + one, 0) };
}

/** The input of one jumper under the common part of an arrangement. */
export function jumperInput({ code, jumper, temperature }: CommonInput, supply: Supply): JumperInput {
  return { code, supply, jumper, ...(temperature && { temperature }) };
}
