import { candidatesDocument, candidatesOf, type Document, InputError, type SupplyCandidate } from "bondmil";
import { isList, isObject, type Json, type Keys, valueAt, withValue } from "./data.js";

/** A run whose conductors are yet to be chosen, with its candidates. */
export interface OpenRun {
  readonly run: string;
  readonly keys: Keys;
  readonly document: Document;
  /** The smallest size of each number of sets. */
  readonly offered: readonly SupplyCandidate[];
}

/** The candidates of a document, or why there are none. */
export type Candidates =
  | { readonly kind: "open"; readonly runs: readonly OpenRun[] }
  | { readonly kind: "none"; readonly why: string };

/** The places of the runs that give a load in place of conductors. */
export function openRunsIn(document: Json): readonly Keys[] {
  return ["services", "derivedSystems"].flatMap((list) => {
    const systems = valueAt(document, [list]);
    return (isList(systems) ? systems : []).flatMap((_, i) => {
      const runs = valueAt(document, [list, i, "runs"]);
      return (isList(runs) ? runs : []).flatMap((run, n) =>
        isObject(valueAt(run, ["supply", "toChoose"])) ? [[list, i, "runs", n]] : [],
      );
    });
  });
}

/** The candidates for every run of a document whose conductors are yet to be chosen. */
export function candidatesIn(document: Json): Candidates {
  const places = openRunsIn(document);
  if (places.length === 0) return { kind: "none", why: "" };
  try {
    const { runs } = candidatesOf(JSON.stringify(document));
    return {
      kind: "open",
      runs: runs.flatMap(({ run, candidates }) => {
        const keys = places.find((place) => valueAt(document, [...place, "id"]) === run);
        const title = `Candidates for ${run}`;
        const offered = candidates.candidates.filter(({ smallestSize }) => smallestSize);
        return keys === undefined
          ? []
          : [{ run, keys, document: candidatesDocument(candidates, { title }), offered }];
      }),
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { kind: "none", why: error.issues.map(({ path, message }) => `${path}: ${message}`).join(" ") };
  }
}

/** What a button says that takes a candidate. */
export function candidateWords({ sets, size, material }: SupplyCandidate): string {
  return `${sets === 1 ? "one set" : `${sets} sets`} of ${size} ${material}`;
}

/** The document with a candidate as the conductors of a run, in as many raceways as it needs. */
export function withCandidate(document: Json, keys: Keys, candidate: SupplyCandidate): Json {
  const { sets, size, material, setsInRaceway } = candidate;
  const chosen = withValue(document, [...keys, "supply"], { sets: [{ count: sets, size, material }] });
  const raceways = [...keys, "raceways", "count"];
  if (valueAt(chosen, raceways) === undefined) return chosen;
  return withValue(chosen, raceways, Math.ceil(sets / setsInRaceway));
}
