import { type ByEdition, type Citation, weakestEvidence } from "../edition/index.js";
import { emergencyDisconnectExists } from "../edition/tables/placements.generated.js";
import {
  emergencyDisconnectAhead,
  emergencyDisconnectAsService,
  mainJumperPlace,
  meterDisconnect,
  supplySideSourceBonding,
} from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import {
  type Designation,
  type DesignationBonding,
  type DesignationInput,
  readDesignation,
} from "./designation.js";
import { type Asked, answers, type Place } from "./designation-answers.js";

/**
 * Tells what a designation on the supply side means for bonding: whether the enclosure has a main bonding jumper, what bonds it,
 * and whether it must have an electrode conductor (250.24, 250.25, 230.82, 230.85).
 *
 * @param input - the code, the designation, and how the utility's system is grounded
 * @returns the answers with their sections, and what the conductors beyond are
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { bondingAtDesignation } from "bondmil";
 * const solar = (year: "2017" | "2020") =>
 *   bondingAtDesignation({ code: { year }, designation: "supply-side-source", grounding: "solidly-grounded" });
 * solar("2017").mainBondingJumper.status; // => "disputed"
 * solar("2020").mainBondingJumper; // => { status: "required", note: "as-a-service", citation: { section: "250.25", evidence: "single" } }
 * ```
 */
export function bondingAtDesignation(input: DesignationInput): DesignationBonding {
  const { code, designation, grounding } = readAll(input, readDesignation);
  const { topic, place, isNamed } = facts[designation];
  const namedInEdition = isNamed === null || isNamed[code.year];
  const at: Asked = { code, grounding, namedInEdition, designatedBy: topic[code.year] };
  const answer = answers[namedInEdition ? place : "service"](at);
  const rest = [at.designatedBy, answer.mainBondingJumper.citation, answer.box.citation];
  const cited = [...rest, answer.electrodeConductor.citation];
  return {
    edition: code.year,
    designation,
    citation: at.designatedBy,
    namedInEdition,
    ...answer,
    evidence: weakestEvidence(cited.map((one) => one.evidence)),
  };
}

interface DesignationFacts {
  /** What the designation rests on. */
  readonly topic: ByEdition<Citation>;
  readonly place: Place;
  /** Which editions name it; `null` for all. */
  readonly isNamed: ByEdition<boolean> | null;
}

const facts: Readonly<Record<Designation, DesignationFacts>> = {
  "service-disconnect": { topic: mainJumperPlace, place: "service", isNamed: null },
  "emergency-disconnect-as-service-disconnect": {
    topic: emergencyDisconnectAsService,
    place: "service",
    isNamed: emergencyDisconnectExists,
  },
  "emergency-disconnect-not-service-equipment": {
    topic: emergencyDisconnectAhead,
    place: "ahead",
    isNamed: emergencyDisconnectExists,
  },
  "meter-disconnect": { topic: meterDisconnect, place: "ahead", isNamed: null },
  "supply-side-source": { topic: supplySideSourceBonding, place: "source", isNamed: null },
};
