import type { ConductorEnd, Landing } from "./conductor-identity.js";
import type { DrawnService } from "./service.js";

type Grounded = Pick<DrawnService, "grounding">;

/** The bar of an enclosure on which the grounded conductor of a system lands. */
export function groundedBar({ grounding }: Grounded, id: string): ConductorEnd {
  return landing(id, grounding === "grounded-phase" ? "grounded-phase-bar" : "neutral-bar");
}

/** The terminal of a source at which the grounded conductor of its system starts. */
export function groundedTerminal({ grounding }: Grounded, id: string): ConductorEnd {
  return landing(id, grounding === "grounded-phase" ? "grounded-phase-terminal" : "neutral-terminal");
}

/** The bus of an assembly on which the grounded conductor of its service lands. */
export function groundedBus({ grounding, id }: Grounded & Pick<DrawnService, "id">): ConductorEnd {
  return {
    kind: "assembly",
    of: id,
    on: grounding === "grounded-phase" ? "grounded-phase-bus" : "neutral-bus",
  };
}

/** A part of a place that a wire can land on. */
export function landing(id: string, on: Landing): ConductorEnd {
  return { kind: "place", id, on };
}
