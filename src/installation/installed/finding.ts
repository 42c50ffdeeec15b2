import type { Material, StandardSize } from "../../conductor/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import type { Alternative, ConductorEnd, ConductorIdentity } from "../conductor-identity.js";
import type { OpenQuestion } from "../open-question.js";
import type { FoundConductor } from "./shape.generated.js";

/** What is wrong with what was found, or that it was not found. One conductor may have several. */
export type FindingKind =
  | "not-permitted"
  | "wrong-place"
  | "wrong-material"
  | "short"
  | "cannot-serve"
  | "missing"
  | "too-few"
  | "not-in-schedule"
  | "open";

/** What is to be done about a finding. */
export type Todo = "remove" | "move" | "replace" | "install" | "settle";

/** What is to be done about each kind of finding. */
export const todoOf: Readonly<Record<FindingKind, Todo>> = {
  "not-permitted": "remove",
  "wrong-place": "move",
  "wrong-material": "replace",
  short: "replace",
  "cannot-serve": "install",
  missing: "install",
  "too-few": "install",
  "not-in-schedule": "settle",
  open: "settle",
};

/** What is to be done, in the order in which findings are listed. */
export const todos: readonly Todo[] = ["remove", "move", "replace", "install", "settle"];

/** A conductor as it is required: how many, of what size and material, from where to where. */
export interface RequiredConductor {
  /** How many alike. */
  readonly quantity: number;
  /** Smallest standard size; `null` where it is a bus, or none is large enough. */
  readonly size: StandardSize | null;
  /** Smallest area in circular mils of one of them. */
  readonly requiredArea: number;
  /** Material that the size is for. */
  readonly material: Material;
  /** Where it starts. */
  readonly from: ConductorEnd;
  /** Where it ends. */
  readonly to: ConductorEnd;
}

/** A way to mend a finding. */
export type Remedy =
  | {
      /** Install so many. */
      readonly do: "install";
      /** What is to be installed. */
      readonly conductor: RequiredConductor;
    }
  | {
      /** Replace what was found by this. */
      readonly do: "replace";
      /** What takes its place. */
      readonly conductor: RequiredConductor;
    }
  | {
      /** Connect it at one of these places. */
      readonly do: "move";
      /** Places where it may be. */
      readonly to: readonly ConductorEnd[];
    }
  | {
      /** Take it away. */
      readonly do: "remove";
    }
  | {
      /** Bond by something else that the section permits in its place. */
      readonly do: "bond-otherwise";
      /** What may serve. */
      readonly by: "bonding-fittings" | "grounded-conductor" | "equipment-grounding-conductor";
      /** Where the edition permits it. */
      readonly citation: Citation;
    }
  | {
      /** Draw it in the installation if it is meant to be there, so that it is sized. */
      readonly do: "draw";
      /** Conductors of the schedule that may be meant. */
      readonly near: readonly ConductorIdentity[];
    }
  | {
      /** Find out what the installation does not tell, and say it there. */
      readonly do: "find-out";
      /** What is not known. */
      readonly what: OpenQuestion["what"];
    }
  | {
      /** Have the authority having jurisdiction decide. */
      readonly do: "ask";
    };

/** Under which edition something is judged. */
export interface JudgedBy {
  /** The edition. */
  readonly edition: EditionYear;
  /** Whether it is the edition of the installation, or the one that the conductor says it was built under, as printed. */
  readonly of: "installation" | "conductor";
}

/** Something about which something is to be done, complete in itself. */
export interface CheckFinding {
  /** What is to be done; findings are listed by it. */
  readonly todo: Todo;
  /** What is wrong. */
  readonly kind: FindingKind;
  /** Id of the conductor in the schedule, or words for something found besides. */
  readonly id: string;
  /** Which conductor of the schedule it is about; `null` for something found besides. */
  readonly identity: ConductorIdentity | null;
  /** Where several arrangements are compared and none is begun, the one that it belongs to. */
  readonly alternative?: Alternative;
  /** What is there; `null` where nothing is. */
  readonly found: FoundConductor | null;
  /** What is required; `null` where nothing is, or it is not known. */
  readonly required: RequiredConductor | null;
  /** Circular mils that one conductor is short of; `null` where the area is not the point. */
  readonly shortBy: number | null;
  /** How many more are required; `null` where their number is not the point. */
  readonly more: number | null;
  /** Where the requirement, or what forbids it, stands; `null` where the schedule does not know of it. */
  readonly citation: Citation | null;
  /** The edition that judges it. */
  readonly judgedBy: JudgedBy;
  /** What can be done, the plainest first. */
  readonly remedies: readonly Remedy[];
}
