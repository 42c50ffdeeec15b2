import {
  numberOfDisconnects,
  serviceElectrodeSeveralEnclosures,
} from "../edition/tables/sections.generated.js";
import { enclosuresOf, isServiceDisconnect, type ServiceInCode } from "./service.js";
import type { DrawnRun } from "./supplies.js";
import type { Violation } from "./violation.js";

const mostDisconnects = 6;

/** What the edition forbids in a service as it is drawn, or misses in it. */
export function serviceViolations(at: ServiceInCode): readonly Violation[] {
  return [...tooManyDisconnects(at), ...enclosuresWithoutElectrode(at)];
}

function tooManyDisconnects({ service, code: { year } }: ServiceInCode): readonly Violation[] {
  const { id, disconnects } = service;
  if (disconnects.filter(isServiceDisconnect).length <= mostDisconnects) return [];
  return [{ code: "more-than-six-disconnects", section: numberOfDisconnects[year].section, at: [id] }];
}

/**
 * Of several enclosures each has a tap or an electrode conductor of its own, or one that starts ahead of it serves it (250.64(D)). A service
 * for which no electrode is drawn at all says so otherwise.
 */
function enclosuresWithoutElectrode(at: ServiceInCode): readonly Violation[] {
  const { service, code } = at;
  const { runs, electrodes = [], commonElectrodeConductor } = service;
  const enclosures = enclosuresOf(at);
  if (commonElectrodeConductor !== undefined || electrodes.length === 0) return [];
  const starts = new Set(electrodes.map(({ from }) => from));
  const bare = enclosures.filter(
    ({ disconnects }) =>
      !disconnects.some((id) => starts.has(id) || ahead(runs, id).some((one) => starts.has(one))),
  );
  if (bare.length === 0) return [];
  const { section } = serviceElectrodeSeveralEnclosures[code.year];
  return [
    {
      code: "electrode-conductor-missing",
      section,
      at: bare.flatMap(({ disconnects }) => disconnects.slice(0, 1)),
    },
  ];
}

/** The places through which a place is supplied. */
function ahead(runs: readonly DrawnRun[], place: string): readonly string[] {
  const found = new Set([place]);
  for (const one of found) for (const { from, to } of runs) if (to === one) found.add(from);
  found.delete(place);
  return [...found];
}
