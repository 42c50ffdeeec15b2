import type { SizingResult } from "../rules/result.js";
import type { ScheduledConductor } from "./schedule.js";

/** What a conductor of the schedule carries along. */
export interface ScheduledOptions {
  /** How often the result's own quantity occurs; once unless told. */
  readonly times?: number;
  /** The run whose length is the conductor's. */
  readonly run?: { readonly lengthFeet?: number | undefined };
  readonly alternative?: string;
}

/** Puts a result into the schedule. */
export function scheduled(
  id: string,
  from: string,
  to: string,
  result: SizingResult,
  { times = 1, run, alternative }: ScheduledOptions = {},
): ScheduledConductor {
  return {
    id,
    role: result.role,
    from,
    to,
    quantity: quantityOf(result) * times,
    result: withoutParallelCaution(result),
    ...(alternative === undefined ? {} : { alternative }),
    ...(run?.lengthFeet === undefined ? {} : { lengthFeet: run.lengthFeet }),
  };
}

/**
 * Sets that go to several places do not share a load, and a result that is sized from all of them cannot tell. Whether conductors are
 * too small to be in parallel is therefore said of each run; only a circuit is one run by itself.
 */
function withoutParallelCaution(result: SizingResult): SizingResult {
  if (result.role === "equipment-grounding-conductor") return result;
  return { ...result, cautions: result.cautions.filter(({ code }) => code !== "parallel-below-1-0") };
}

function quantityOf({ outcome }: SizingResult): number {
  switch (outcome.kind) {
    case "conductor":
      return outcome.quantity;
    case "area-only":
      return 1;
    case "not-required":
      return 0;
  }
}
