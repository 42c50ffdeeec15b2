import type { Grounding } from "../systems/shape.generated.js";
import type { Installation } from "./document.js";

/** The system that a circuit comes from, over panels, buildings and transfer switches. */
export interface Origin {
  /** Id of the service, derived system or generator. */
  readonly id: string;
  readonly kind: "service" | "derived-system" | "generator";
  /** How the system is grounded; a generator that is not separately derived takes that of the system it is tied to. */
  readonly grounding?: Grounding;
}

/** Tells of an id from which a circuit may start which system it belongs to; `undefined` of what exists beyond the edge of the drawing. */
export function originsOf(installation: Installation): (id: string) => Origin | undefined {
  const { services = [], derivedSystems = [], generators = [], circuits = [], buildings = [] } = installation;
  const systems = new Map<string, Origin>();
  for (const { id, grounding, disconnects } of services) {
    for (const one of disconnects) systems.set(one.id, { id, kind: "service", grounding });
  }
  for (const { id, grounding, disconnects, source } of derivedSystems) {
    const starts = source.deviceAmperes === undefined ? disconnects : [source, ...disconnects];
    for (const one of starts) systems.set(one.id, { id, kind: "derived-system", grounding });
  }
  for (const { id } of generators) systems.set(id, { id, kind: "generator" });
  const ahead = new Map<string, string>();
  const note = (id: string, before: string | undefined): void => {
    if (before !== undefined && !ahead.has(id)) ahead.set(id, before);
  };
  for (const { id, from } of circuits) note(id, from);
  for (const { id, circuit, disconnect } of buildings) note(id, circuit ?? disconnect);
  for (const { from, to } of circuits) note(to, from);
  for (const { to, id } of generators) note(to, id);
  for (const { transferSwitch, disconnects } of derivedSystems) {
    if (transferSwitch !== undefined) note(transferSwitch, disconnects[0]?.id);
  }
  return (start) => {
    const seen = new Set<string>();
    for (let id: string | undefined = start; id !== undefined && !seen.has(id); id = ahead.get(id)) {
      const found = systems.get(id);
      if (found !== undefined) return found;
      seen.add(id);
    }
    return undefined;
  };
}
