import { chosenReading } from "../edition/index.js";
import {
  derivedElectrodeConnection,
  outdoorSource,
  systemJumperBothEnds,
  systemJumperPlace,
} from "../edition/tables/sections.generated.js";
import { type DerivedInCode, isBoundToSource, mayHaveBothEnds } from "./derived-system.js";
import type { PlacedCaution } from "./schedule.js";
import { hasGroundedConductor } from "./supplies.js";

/** What a plan reviewer would mark on a derived system: jumpers and electrode conductors at places where they may not be. */
export function derivedCautions(at: DerivedInCode): readonly PlacedCaution[] {
  const { system } = at;
  return [...(hasGroundedConductor(system) ? jumperCautions(at) : []), ...electrodeCautions(at)];
}

function jumperCautions(at: DerivedInCode): readonly PlacedCaution[] {
  const { system, code } = at;
  const place = system.source.id;
  if (system.jumperAt === "disconnects" && isBoundToSource(at)) {
    return [{ code: "jumper-not-permitted-here", section: outdoorSource[code.year].section, at: place }];
  }
  if (system.jumperAt !== "both-ends") return [];
  return mayHaveBothEnds(at)
    ? [{ code: "only-without-parallel-path", section: systemJumperBothEnds[code.year].section, at: place }]
    : [{ code: "jumper-not-permitted-here", section: systemJumperPlace[code.year].section, at: place }];
}

/** Electrode conductors that start elsewhere than at a jumper, and jumpers without one where each wants its own. */
function electrodeCautions(at: DerivedInCode): readonly PlacedCaution[] {
  const { system, code } = at;
  const { source, disconnects, electrodes = [], commonElectrodeConductor } = system;
  const places = [source.id, ...disconnects.map(({ id }) => id)];
  const starts = electrodes.filter(({ from }) => places.includes(from));
  const wanted = electrodePlaces(at);
  const section = (isBoundToSource(at) ? outdoorSource : derivedElectrodeConnection)[code.year].section;
  const astray = starts.filter(({ from }) => !wanted.includes(from)).map(({ id }) => id);
  const isEach = chosenReading(code, "electrode-connection-with-several-jumpers") === "at-each-jumper";
  const inEnclosures = system.jumperAt === "disconnects" && !isBoundToSource(at);
  const needsEach = isEach && inEnclosures && hasGroundedConductor(system);
  const bare =
    needsEach && starts.length > 0 && commonElectrodeConductor === undefined
      ? wanted.filter((place) => !starts.some(({ from }) => from === place))
      : [];
  return [...astray, ...bare].map((place) => {
    return { code: "electrode-conductor-not-at-jumper", section, at: place };
  });
}

/** Where the electrode conductor of a derived system may start. */
function electrodePlaces(at: DerivedInCode): readonly string[] {
  const { system } = at;
  const disconnects = system.disconnects.map(({ id }) => id);
  const source = [system.source.id];
  if (isBoundToSource(at)) return source;
  if (!hasGroundedConductor(system)) return [...source, ...disconnects];
  switch (system.jumperAt) {
    case "source":
      return source;
    case "disconnects":
      return disconnects;
    case "both-ends":
    case "compare":
      return [...source, ...disconnects];
  }
}
