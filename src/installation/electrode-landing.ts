import type { ConductorEnd } from "./conductor-identity.js";
import type { DrawnDerivedSystem } from "./derived-system.js";
import { groundedBar, groundedTerminal, landing } from "./landing.js";
import type { DrawnService } from "./service.js";
import { hasGroundedConductor } from "./supplies.js";

/**
 * What an electrode conductor of a service is connected to at a place: the bar of the grounded conductor in a service disconnect or a switchboard, the
 * conductor itself in what stands ahead (250.24(A)(1)). Elsewhere the place alone is known.
 */
export function landingAtService(service: DrawnService, from: string): ConductorEnd {
  const isGrounded = hasGroundedConductor(service) && service.grounding !== "impedance";
  const isBar = [...service.disconnects, ...(service.buses ?? [])].some(({ id }) => id === from);
  const isAhead = (service.boxes ?? []).some(({ id }) => id === from);
  if (!isBar && !isAhead) return { kind: "place", id: from };
  if (!isGrounded) return landing(from, isAhead ? "enclosure" : "grounding-bar");
  return isAhead ? landing(from, "grounded-conductor") : groundedBar(service, from);
}

/** What an electrode conductor of a derived system is connected to: the terminal of its grounded conductor at the source, the bar in a disconnect. */
export function landingAtDerived(system: DrawnDerivedSystem, from: string): ConductorEnd {
  const isGrounded = hasGroundedConductor(system) && system.grounding !== "impedance";
  if (from === system.source.id)
    return isGrounded ? groundedTerminal(system, from) : landing(from, "enclosure");
  if (!system.disconnects.some(({ id }) => id === from)) return { kind: "place", id: from };
  return isGrounded ? groundedBar(system, from) : landing(from, "grounding-bar");
}
