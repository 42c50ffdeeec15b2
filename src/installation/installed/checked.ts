import type { Citation, CitedEvidence } from "../../edition/index.js";
import type { Alternative, ConductorIdentity } from "../conductor-identity.js";
import type { Schedule } from "../schedule.js";
import type { CheckFinding, JudgedBy, RequiredConductor } from "./finding.js";
import type { FoundConductor } from "./shape.generated.js";

/** What a conductor comes to: as required, taken as scheduled without a look at it, not required and harmless, or with findings. */
export type CheckVerdict = "as-required" | "as-scheduled" | "not-required" | "with-findings";

/** A conductor of the schedule, or one found besides, with what it comes to. */
export interface CheckedConductor {
  /** Id in the schedule, or words for something found besides. */
  readonly id: string;
  /** Which conductor of the schedule it is; `null` for one found besides. */
  readonly identity: ConductorIdentity | null;
  /** Where several arrangements are compared and none is begun, the one that it belongs to. */
  readonly alternative?: Alternative;
  /** What it comes to. */
  readonly verdict: CheckVerdict;
  /** Everything that was found of it. */
  readonly found: readonly FoundConductor[];
  /** What is required; `null` where nothing is. */
  readonly required: RequiredConductor | null;
  /** Smallest of what was found less what is required, in circular mils of one conductor; `null` where the two cannot be compared. */
  readonly reserve: number | null;
  /** Where the requirement stands; `null` for something that the schedule does not know. */
  readonly citation: Citation | null;
  /** Weakest evidence that the requirement rests on; `null` for something that the schedule does not know. */
  readonly evidence: CitedEvidence | null;
  /** The edition that judges it. */
  readonly judgedBy: JudgedBy;
}

/** What is installed, held against what is required in the installation. */
export interface Check {
  /** Whether anything is listed as installed; where nothing is, there is nothing to check. */
  readonly isListed: boolean;
  /** Everything about which something is to be done: what is to be removed, moved, replaced, installed, settled. */
  readonly findings: readonly CheckFinding[];
  /** Each conductor with what it comes to. */
  readonly conductors: readonly CheckedConductor[];
  /** The schedule that it is checked against, with the jumpers of derived systems where they were found if that is lawful. */
  readonly schedule: Schedule;
  /** Ids of the derived systems whose jumpers were found at another lawful place than drawn. */
  readonly arrangedAsFound: readonly string[];
  /** Short mark of the schedule, of what is installed and of every verdict. */
  readonly fingerprint: string;
}
