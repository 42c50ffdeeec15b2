import { isBoundToSource } from "../derived-system.js";
import type { Installation } from "../document.js";
import { hasGroundedConductor } from "../supplies.js";
import { isConnection } from "./lines.js";

type Derived = NonNullable<Installation["derivedSystems"]>[number];

/**
 * The installation with the jumpers of each derived system where they were found, if that is the other lawful place and none was found where they
 * are drawn: the conductors of the system then go by the arrangement that is there.
 */
export function arrangedAsFound(installation: Installation): Installation {
  const { derivedSystems, installed = {}, code } = installation;
  if (derivedSystems === undefined || installed.rest !== undefined) return installation;
  const places = new Set(
    (installed.found ?? []).flatMap(({ role, at, of }) => (isConnection(role) ? (at ?? of ?? []) : [])),
  );
  const listed = new Set(installed.asScheduled);
  const arranged = derivedSystems.map((system): Derived => {
    const { id, source, disconnects, jumperAt } = system;
    const atSource = places.has(source.id);
    const inEnclosures = disconnects.some((one) => places.has(one.id));
    const isListed = [id, source.id, ...disconnects.map((one) => one.id)].some((one) => listed.has(one));
    const isFree = hasGroundedConductor(system) && !isBoundToSource({ installation, code, system });
    if (!isFree || isListed || atSource === inEnclosures) return system;
    if (jumperAt === "source" && inEnclosures) return { ...system, jumperAt: "disconnects" };
    return jumperAt === "disconnects" && atSource ? { ...system, jumperAt: "source" } : system;
  });
  const isChanged = arranged.some((one, i) => one !== derivedSystems[i]);
  return isChanged ? { ...installation, derivedSystems: arranged } : installation;
}
