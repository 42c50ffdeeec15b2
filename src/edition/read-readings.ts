import { member, type Reader, readObject, readOneOf } from "../input/reader.js";
import { type Readings, readingFacts } from "./tables/readings.generated.js";

const readingIds = /* @__PURE__ */ Object.keys(readingFacts) as readonly (keyof Readings)[];

/** Checks chosen readings in an input. */
export function readReadings(at: Reader): Partial<Readings> | undefined {
  if (!readObject(at, readingIds)) return undefined;
  const chosen: Record<string, string> = {};
  for (const id of Object.keys(at.value as object)) {
    if (!Object.hasOwn(readingFacts, id)) continue;
    const alternative = readOneOf(member(at, id), alternativesOf(id as keyof Readings));
    if (alternative !== undefined) chosen[id] = alternative;
  }
  return chosen as Partial<Readings>;
}

/** Checks the id of a reading in an input. */
export function readReadingId(at: Reader): keyof Readings | undefined {
  return readOneOf(at, readingIds);
}

/** The alternatives of a reading. */
export function alternativesOf(id: keyof Readings): readonly string[] {
  return Object.keys(readingFacts[id].policy);
}
