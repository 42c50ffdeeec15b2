import {
  assemblyDivided,
  emergencyDisconnectExists,
  undividedAssemblyMayStay,
} from "../edition/tables/placements.generated.js";
import {
  emergencyDisconnectAhead,
  numberOfDisconnects,
  serviceElectrodeSeveralEnclosures,
  serviceRacewayFittings,
} from "../edition/tables/sections.generated.js";
import { enclosuresOf, isServiceDisconnect, type ServiceInCode } from "./service.js";
import { type DrawnRun, racewaysOf } from "./supplies.js";
import type { Violation } from "./violation.js";
import { parallelViolations } from "./violations/parallel.js";

const mostDisconnects = 6;

/** What the edition forbids in a service as it is drawn, or misses in it. */
export function serviceViolations(at: ServiceInCode): readonly Violation[] {
  const { runs, boxes } = at.service;
  return [
    ...tooManyDisconnects(at),
    ...undividedAssembly(at),
    ...unknownDesignations(at),
    ...parallelViolations(runs, at.code.year, boxes),
    ...bondedByLocknuts(at),
    ...enclosuresWithoutElectrode(at),
  ];
}

function tooManyDisconnects({ service, code: { year } }: ServiceInCode): readonly Violation[] {
  const { id, disconnects } = service;
  const count = disconnects.filter(isServiceDisconnect).length;
  if (count <= mostDisconnects) return [];
  return [
    {
      code: "more-than-six-disconnects",
      ...numberOfDisconnects[year],
      at: [id],
      found: { count, most: mostDisconnects },
      remedies: [{ code: "six-disconnects-at-most" }],
    },
  ];
}

/** Several disconnects in one undivided enclosure; whether the enclosure is divided, the drawing has to say. */
function undividedAssembly({ service, code: { year } }: ServiceInCode): readonly Violation[] {
  const { id, assembly, disconnects, housing } = service;
  const count = disconnects.filter(isServiceDisconnect).length;
  const mayStay = assembly?.existing === true && undividedAssemblyMayStay[year];
  if (housing !== "listed-assembly" || count < 2 || assembly?.compartments !== "shared") return [];
  if (!assemblyDivided[year] || mayStay) return [];
  return [
    {
      code: "disconnects-share-a-compartment",
      ...numberOfDisconnects[year],
      at: [id],
      found: { count },
      remedies: [{ code: "compartment-for-each" }, { code: "enclosure-for-each" }],
    },
  ];
}

/** Before the edition that names them, an emergency disconnect ahead of the service disconnect is the service disconnect or a meter disconnect. */
function unknownDesignations({ service, code: { year } }: ServiceInCode): readonly Violation[] {
  const at = service.disconnects
    .filter((one) => one.designation === "emergency-disconnect")
    .map(({ id }) => id);
  if (at.length === 0 || emergencyDisconnectExists[year]) return [];
  const remedies = [{ code: "designate-otherwise" }] as const;
  return [{ code: "designation-not-in-edition", ...emergencyDisconnectAhead[year], at, remedies }];
}

/** Metal of the supply side that nothing but ordinary locknuts bonds. */
function bondedByLocknuts({ service, code: { year } }: ServiceInCode): readonly Violation[] {
  const { runs, boxes = [], disconnects } = service;
  const at = [
    ...boxes.filter(({ bondedBy }) => bondedBy === "locknuts"),
    ...disconnects.filter(({ bondedBy }) => bondedBy === "locknuts"),
    ...runs.filter(
      (run) => run.racewayJumpers === "locknuts" && racewaysOf(run, service).kind !== "nonmetallic",
    ),
  ].map(({ id }) => id);
  if (at.length === 0) return [];
  const remedies = [{ code: "jumper-or-fittings" }] as const;
  return [{ code: "bonded-by-locknuts", ...serviceRacewayFittings[year], at, remedies }];
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
  const ends = new Map(runs.map(({ id, to }) => [id, to]));
  const starts = new Set(electrodes.map(({ from }) => ends.get(from) ?? from));
  if (service.impedance?.id !== undefined && starts.has(service.impedance.id)) return [];
  const bare = enclosures.filter(
    ({ id: enclosure, disconnects }) =>
      ![enclosure, ...disconnects].some(
        (id) => starts.has(id) || ahead(runs, id).some((one) => starts.has(one)),
      ),
  );
  if (bare.length === 0) return [];
  return [
    {
      code: "electrode-conductor-missing",
      ...serviceElectrodeSeveralEnclosures[code.year],
      at: bare.flatMap(({ disconnects }) => disconnects.slice(0, 1)),
      remedies: [{ code: "connect-each-enclosure" }, { code: "connect-ahead-of-all" }],
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
