import { type Protected, ratingsIn, requiredByLoad } from "../ampacity/index.js";
import type { Citation } from "../edition/index.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** What conductors must carry, and the device that protects them. */
export interface Requirement {
  /** Amperes before correction and adjustment: continuous load at 125 percent, and all other. */
  readonly before: number;
  /** Amperes in their place: the load as it is. */
  readonly inPlace: number;
  /** Where the edition says how a load counts; `null` without load. */
  readonly citation: Citation | null;
  readonly device: number;
  readonly deviceGiven: boolean;
}

/** The requirement of a question; `null` where no device is given and no standard rating is large enough. */
export function requirementOf(question: SupplyCandidatesQuestion): Requirement | null {
  const { device } = question;
  const load = requiredBy(question);
  const { amperes: before, citation } = load?.conductors ?? { amperes: 0, citation: null };
  const standard = ratingsOf(question).find((rating) => rating >= before);
  const chosen = device ?? standard;
  if (chosen === undefined) return null;
  return {
    before,
    inPlace: load?.load ?? 0,
    citation: citation && { ...citation },
    device: chosen,
    deviceGiven: device !== undefined,
  };
}

/** What the load requires; `null` where it is zero and the device alone decides. */
function requiredBy({
  code,
  system,
  load,
}: SupplyCandidatesQuestion): ReturnType<typeof requiredByLoad> | null {
  if (load.continuous + load.other === 0) return null;
  return requiredByLoad({
    edition: code.year,
    of: system.kind === "service" ? "service" : "feeder",
    ...load,
  });
}

/** The standard ratings of circuit breakers in the edition of a question, smallest first. */
export function ratingsOf({ code }: Pick<SupplyCandidatesQuestion, "code">): readonly number[] {
  return ratingsIn(code.year, "circuit-breaker");
}

/** What the conductors are to the rule on their protection. */
export function servesOf({ system, protection }: SupplyCandidatesQuestion): Protected["serves"] {
  if (protection !== "at-end") return "service-or-feeder";
  return system.kind === "separately-derived" ? "transformer-secondary" : "tap";
}
