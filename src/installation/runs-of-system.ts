import type { SystemKind } from "../rules/shape.generated.js";
import type { Grounding } from "../systems/shape.generated.js";
import type { InstallationInCode } from "./schedule.js";
import type { SharedRaceway } from "./shared-raceways.js";

/** What the runs of a system have in common. */
export interface RunsOfSystem extends InstallationInCode {
  readonly kind: SystemKind;
  readonly grounding: Grounding;
  /** Id of the place where its conductors start. */
  readonly source: string;
  /** Ids of the places through which they only pass. */
  readonly boxes: readonly string[];
  /** Raceways that several of its runs share. */
  readonly sharedRaceways?: readonly SharedRaceway[] | undefined;
}
