import {
  derivedElectrodeConnection,
  derivedLoadSide,
  impedanceNoOtherConnection,
  outdoorSource,
  systemJumperBothEnds,
  systemJumperPlace,
  ungroundedDerived,
} from "../edition/tables/sections.generated.js";
import { wantsEachConnected } from "./derived-electrodes.js";
import {
  type DerivedInCode,
  isBoundOutdoors,
  isBoundToSource,
  isOfKindForBothEnds,
  jumperChoices,
  mayHaveBothEnds,
  metalBetween,
} from "./derived-system.js";
import { hasGroundedConductor } from "./supplies.js";
import type { Violation } from "./violation.js";
import { parallelViolations } from "./violations/parallel.js";

/** What the edition forbids in a derived system as it is drawn, or misses in it. */
export function derivedViolations(at: DerivedInCode): readonly Violation[] {
  return [
    ...misplacedJumpers(at),
    ...factoryJumpers(at),
    ...strayElectrodes(at),
    ...unconnectedEnclosures(at),
    ...parallelViolations(at.system.runs, at.code.year),
  ];
}

function misplacedJumpers(at: DerivedInCode): readonly Violation[] {
  const { system, code } = at;
  if (!hasGroundedConductor(system)) return [];
  const disconnects = system.disconnects.map(({ id }) => id);
  const isBound = isBoundToSource(at);
  const atSource = { code: "jumper-at-source-only", at: [system.source.id] } as const;
  if (system.jumperAt === "disconnects" && isBound) {
    return [
      {
        code: "jumper-not-permitted-here",
        ...(isBoundOutdoors(at) ? outdoorSource : systemJumperPlace)[code.year],
        at: disconnects,
        remedies: [atSource],
      },
    ];
  }
  if (system.jumperAt !== "both-ends" || mayHaveBothEnds(at)) return [];
  const mayHave = isOfKindForBothEnds(at);
  const parallelPaths = metalBetween(at);
  return [
    {
      code: "jumper-not-permitted-here",
      ...(mayHave ? systemJumperBothEnds : systemJumperPlace)[code.year],
      at: [system.source.id, ...disconnects],
      found: {
        parallelPaths,
        ...(mayHave ? {} : { unmet: [disconnects.length > 1 ? "several-disconnects" : "source-may-not"] }),
      },
      remedies: [
        atSource,
        ...(isBound ? [] : [{ code: "jumper-at-disconnects-only", at: disconnects } as const]),
        ...(mayHave ? [{ code: "nonmetallic-raceways", at: parallelPaths } as const] : []),
      ],
    },
  ];
}

/** A factory jumper at a source whose jumper is elsewhere, or that may have none. */
function factoryJumpers(at: DerivedInCode): readonly Violation[] {
  const { system, code } = at;
  const { source, grounding, jumperAt } = system;
  if (source.factoryJumper !== "in-place") return [];
  const none = grounding === "impedance" ? impedanceNoOtherConnection : ungroundedDerived;
  const isElsewhere = jumperAt === "disconnects" && !isBoundToSource(at);
  if (hasGroundedConductor(system) && !isElsewhere) return [];
  return [
    {
      code: "factory-jumper-to-be-removed",
      ...(hasGroundedConductor(system) ? derivedLoadSide : none)[code.year],
      at: [source.id],
      remedies: [{ code: "remove-connection" }],
    },
  ];
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
  return [
    {
      code: "electrode-conductor-not-at-jumper",
      ...(isBoundOutdoors(at) ? outdoorSource : derivedElectrodeConnection)[code.year],
      at: astray.map((one) => one.electrode ?? one.id),
      remedies: [{ code: "start-electrode-conductor-here", at: wanted }],
    },
  ];
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
    {
      code: "electrode-conductor-missing",
      ...derivedElectrodeConnection[code.year],
      at: bare,
      remedies: [{ code: "connect-each-enclosure" }],
    },
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
