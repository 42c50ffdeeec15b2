import type { Amendment, Circumstances } from "./shape.generated.js";

/** Whether a condition holds; `unknown` where it depends on something that is not given. */
export type Holds = "yes" | "no" | "unknown";

/** Whether an amendment applies under what is known. */
export function holds({ when = {} }: Amendment, known: Circumstances = {}): Holds {
  const tests: readonly Holds[] = [
    compare(when.lengthBelowFeet, known.lengthFeet, (limit, length) => length < limit),
    compare(when.lengthFromFeet, known.lengthFeet, (limit, length) => length >= limit),
    compare(when.location, known.location, (wanted, location) => wanted === location),
    compare(when.serviceFromAmperes, known.serviceAmperes, (limit, amperes) => amperes >= limit),
    compare(when.serviceThroughAmperes, known.serviceAmperes, (limit, amperes) => amperes <= limit),
  ];
  if (tests.includes("no")) return "no";
  return tests.includes("unknown") ? "unknown" : "yes";
}

/** A code, as far as its amendments go. */
export interface Amended {
  readonly amendments?: readonly Amendment[];
  readonly circumstances?: Circumstances;
}

/** The amendments of a kind that apply under a code. */
export function amendmentsInForce<K extends Amendment["kind"]>(
  { amendments = [], circumstances }: Amended,
  kind: K,
): readonly Extract<Amendment, { readonly kind: K }>[] {
  if (amendments.length === 0) return [];
  return amendments.filter(
    (one): one is Extract<Amendment, { readonly kind: K }> =>
      one.kind === kind && holds(one, circumstances) === "yes",
  );
}

/** How an amendment is cited in a result. */
export function citeAmendment({ citation }: Amendment): string {
  return `${citation.jurisdiction}, ${citation.section}`;
}

function compare<T>(
  limit: T | undefined,
  known: T | undefined,
  test: (limit: T, known: T) => boolean,
): Holds {
  if (limit === undefined) return "yes";
  if (known === undefined) return "unknown";
  return test(limit, known) ? "yes" : "no";
}
