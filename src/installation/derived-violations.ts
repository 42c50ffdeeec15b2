import {
  derivedElectrodeConnection,
  outdoorSource,
  systemJumperPlace,
} from "../edition/tables/sections.generated.js";
import { wantsEachConnected } from "./derived-electrodes.js";
import { type DerivedInCode, isBoundToSource, jumperChoices, mayHaveBothEnds } from "./derived-system.js";
import { hasGroundedConductor } from "./supplies.js";
import type { Violation } from "./violation.js";

/** What the edition forbids in a derived system as it is drawn, or misses in it. */
export function derivedViolations(at: DerivedInCode): readonly Violation[] {
  return [...misplacedJumpers(at), ...strayElectrodes(at), ...unconnectedEnclosures(at)];
}

function misplacedJumpers(at: DerivedInCode): readonly Violation[] {
  const { system, code } = at;
  if (!hasGroundedConductor(system)) return [];
  const disconnects = system.disconnects.map(({ id }) => id);
  if (system.jumperAt === "disconnects" && isBoundToSource(at)) {
    return [
      { code: "jumper-not-permitted-here", section: outdoorSource[code.year].section, at: disconnects },
    ];
  }
  if (system.jumperAt !== "both-ends" || mayHaveBothEnds(at)) return [];
  const { section } = systemJumperPlace[code.year];
  return [{ code: "jumper-not-permitted-here", section, at: [system.source.id, ...disconnects] }];
}

/** Electrode conductors that start elsewhere than at a jumper. */
function strayElectrodes(at: DerivedInCode): readonly Violation[] {
  const { system, code } = at;
  const places = [system.source.id, ...system.disconnects.map(({ id }) => id)];
  const wanted = electrodePlaces(at);
  const astray = (system.electrodes ?? []).filter(
    ({ from }) => places.includes(from) && !wanted.includes(from),
  );
  if (astray.length === 0) return [];
  const { section } = (isBoundToSource(at) ? outdoorSource : derivedElectrodeConnection)[code.year];
  return [{ code: "electrode-conductor-not-at-jumper", section, at: astray.map(({ id }) => id) }];
}

/** Enclosures with a jumper that lack an electrode conductor, where each requires its own. */
function unconnectedEnclosures(at: DerivedInCode): readonly Violation[] {
  const { system, code } = at;
  const { disconnects, electrodes = [], commonElectrodeConductor, jumperAt } = system;
  if (jumperAt !== "disconnects" || !wantsEachConnected(at, { jumperAt })) return [];
  const starts = new Set(electrodes.map(({ from }) => from));
  const bare = disconnects.map(({ id }) => id).filter((id) => !starts.has(id));
  const isDrawn = electrodes.some(
    ({ from }) => disconnects.some(({ id }) => id === from) || from === system.source.id,
  );
  if (commonElectrodeConductor !== undefined || !isDrawn || bare.length === 0) return [];
  return [
    { code: "electrode-conductor-missing", section: derivedElectrodeConnection[code.year].section, at: bare },
  ];
}

/** Where the electrode conductor of a derived system may start. */
function electrodePlaces(at: DerivedInCode): readonly string[] {
  const { system } = at;
  const disconnects = system.disconnects.map(({ id }) => id);
  const source = [system.source.id];
  if (isBoundToSource(at)) return source;
  if (!hasGroundedConductor(system)) return [...source, ...disconnects];
  return jumperChoices(at).flatMap(({ jumperAt }) => [
    ...(jumperAt === "disconnects" ? [] : source),
    ...(jumperAt === "source" ? [] : disconnects),
  ]);
}
