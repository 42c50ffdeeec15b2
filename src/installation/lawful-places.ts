import type { Code } from "../edition/index.js";
import type { SizingResult } from "../rules/result.js";
import { metalParts } from "./bonded-otherwise.js";
import { idsOfEnd, isAt } from "./conductor-identity.js";
import { wantsEachConnected } from "./derived-electrodes.js";
import { isBoundToSource, jumperChoices, wholeServing } from "./derived-system.js";
import type { Installation } from "./document.js";
import { type DrawnElectrode, electrodeIds, electrodesOf } from "./electrodes-of.js";
import { withMaterial } from "./materials-of.js";
import { ownerIds } from "./metal-owners.js";
import type { ScheduledConductor } from "./schedule.js";
import { derivedElectrodes } from "./schedule-derived.js";
import { conductorFrom } from "./schedule-electrodes.js";
import { electrodeStarts, serviceElectrodes } from "./schedule-service.js";
import { enclosuresOf, type ServiceInCode } from "./service.js";
import { hasGroundedConductor } from "./supplies.js";

/**
 * What is required of a conductor that was found at a place: what the schedule requires at its own places and at others that are as good, what
 * the conductors there require where an electrode conductor may start elsewhere, and nothing, `null`, where it may not be.
 */
export function requiredAt(
  installation: Installation,
  code: Code,
  conductor: ScheduledConductor,
  place: string,
): SizingResult | null {
  const { result, from, to, subject, place: start } = conductor;
  const isNamed = [subject, start, ...idsOfEnd(from), ...idsOfEnd(to)].includes(place);
  if (isNamed || isAsGood(installation, code, conductor, place)) return result;
  return conductor.role === "grounding-electrode-conductor" && conductor.alternative === undefined
    ? electrodeConductorFrom(installation, code, conductor, place)
    : null;
}

/** Every place of its system at which a conductor may be connected. */
export function lawfulPlaces(
  installation: Installation,
  code: Code,
  conductor: ScheduledConductor,
): readonly string[] {
  const { system, to } = conductor;
  const service = installation.services?.find(({ id }) => id === system);
  const derived = installation.derivedSystems?.find(({ id }) => id === system);
  const ids = [...(service?.boxes ?? []), ...(service?.disconnects ?? []), ...(derived?.disconnects ?? [])];
  const places = [
    ...ids.map(({ id }) => id),
    ...(derived === undefined ? [] : [derived.source.id]),
    ...(system === undefined && to.kind === "place" ? placesOfOwner(installation, to.id) : []),
  ];
  return places.filter((place) => requiredAt(installation, code, conductor, place) !== null);
}

/** Places that a line of the schedule stands for although it names another. */
function isAsGood(
  installation: Installation,
  code: Code,
  { role, subject, place: drawnPlace, system, from, to }: ScheduledConductor,
  place: string,
): boolean {
  const service = installation.services?.find((one) => one.id === system);
  switch (role) {
    case "main-bonding-jumper":
    case "grounding-electrode-conductor": {
      const enclosures = service === undefined ? [] : enclosuresOf({ installation, code, service });
      const alone = enclosures.filter(({ disconnects, isBus }) => isBus || disconnects.length > 1);
      return alone.some(
        (one) =>
          (one.disconnects.includes(place) || (one.isBus && place === one.id)) &&
          (isAt(to, one.id) ||
            (one.isBus && isAt(from, one.id)) ||
            (to.kind === "assembly" && to.of === one.id) ||
            one.disconnects.some((id) => isAt(from, id))),
      );
    }
    case "water-piping-bonding-jumper":
    case "structural-metal-bonding-jumper":
      return metalParts(installation)
        .filter(({ id }) => id === subject)
        .flatMap((part) => (drawnPlace === undefined ? ownerIds(part) : [drawnPlace]))
        .some((owner) => placesOfOwner(installation, owner).includes(place));
    default:
      return false;
  }
}

/**
 * Piping and frames are bonded to the enclosure of the service or building, to the grounded conductor there, or to an electrode
 * (250.104(A)(1), (C)); those of a derived system where its electrode conductor is connected (250.104(D)).
 */
function placesOfOwner(installation: Installation, owner: string): readonly string[] {
  const ids = (list: readonly { readonly id: string }[] = []): readonly string[] => list.map(({ id }) => id);
  const service = installation.services?.find(({ id }) => id === owner);
  if (service !== undefined)
    return [...ids(service.boxes), ...ids(service.disconnects), ...electrodeIds(service)];
  const derived = installation.derivedSystems?.find(({ id }) => id === owner);
  if (derived !== undefined) return (derived.electrodes ?? []).map(({ from }) => from);
  const building = installation.buildings?.find(({ id }) => id === owner);
  const circuit = installation.circuits?.find(({ id }) => id === building?.circuit);
  return [...electrodeIds(building ?? {}), ...(circuit === undefined ? [] : [circuit.to])];
}

function electrodeConductorFrom(
  installation: Installation,
  code: Code,
  conductor: ScheduledConductor,
  place: string,
): SizingResult | null {
  const { system, from, result } = conductor;
  const ofMaterial = withMaterial(installation, "electrodeConductors", result.material);
  const service = installation.services?.find(({ id }) => id === system);
  if (service !== undefined) {
    const at: ServiceInCode = { installation: ofMaterial, code, service };
    const electrode = electrodesOf(installation, service).find((one) => isOf(conductor, one));
    const drawn = from.kind === "place" ? from.id : service.id;
    const isCommon = [place, drawn].includes(service.commonElectrodeConductor?.id ?? "");
    const [start] = isCommon ? [] : electrodeStarts(at, place);
    if (electrode === undefined || start === undefined) return null;
    const served = enclosuresBehind(at, place);
    const isLawful = enclosuresBehind(at, drawn).every((id) => served.includes(id));
    return isLawful ? conductorFrom(serviceElectrodes(at), electrode, start).result : null;
  }
  const derived = installation.derivedSystems?.find(({ id }) => id === system);
  const electrode = derived && electrodesOf(installation, derived).find((one) => isOf(conductor, one));
  if (derived === undefined || electrode === undefined) return null;
  const at = { installation: ofMaterial, code, system: derived };
  const servings = [wholeServing(at)];
  return derivedPlaces(at).includes(place)
    ? conductorFrom(derivedElectrodes(at), electrode, { servings }).result
    : null;
}

/** Whether a conductor is the one to an electrode; a further one has its place in its identity. */
function isOf({ subject, place }: ScheduledConductor, { id, from, isFurther }: DrawnElectrode): boolean {
  return id === subject && (isFurther !== true || place === from);
}

/** Enclosures that are supplied through a place, or that it is in. */
function enclosuresBehind(at: ServiceInCode, place: string): readonly string[] {
  const reached = new Set([at.service.runs.find(({ id }) => id === place)?.to ?? place]);
  for (const one of reached) for (const { from, to } of at.service.runs) if (from === one) reached.add(to);
  return enclosuresOf(at)
    .filter(({ id, disconnects }) => [id, ...disconnects].some((one) => reached.has(one)))
    .map(({ id }) => id);
}

/** Where the one electrode conductor of a derived system may start besides where it is drawn. */
function derivedPlaces(at: Parameters<typeof wholeServing>[0]): readonly string[] {
  const source = [at.system.source.id];
  const disconnects = at.system.disconnects.map(({ id }) => id);
  if (isBoundToSource(at)) return source;
  const { impedance } = at.system;
  if (impedance !== undefined)
    return impedance.electrodeConductorAt === "impedance"
      ? [...source, ...(impedance.id === undefined ? [] : [impedance.id])]
      : disconnects;
  if (!hasGroundedConductor(at.system)) return [...source, ...disconnects];
  return jumperChoices(at).flatMap((arrangement) => {
    if (wantsEachConnected(at, arrangement) && disconnects.length > 1) return [];
    return [
      ...(arrangement.jumperAt === "disconnects" ? [] : source),
      ...(arrangement.jumperAt === "source" ? [] : disconnects),
    ];
  });
}
