import type { Citation } from "../../edition/index.js";
import {
  derivedLoadSide,
  rebondedBuilding,
  serviceLoadSide,
  supplySideConnections,
  systemJumperBothEnds,
} from "../../edition/tables/sections.generated.js";
import { buildingKeeping, mayStayRebonded } from "../building-supply.js";
import { isBoundToSource, mayHaveBothEnds } from "../derived-system.js";
import type { Installation } from "../document.js";
import { exceptionAt } from "../violations/load-side.js";
import type { Context } from "./context.js";
import { type Fault, faultMaker } from "./judge.js";
import { isConnection, type LineIndex } from "./lines.js";
import { sidesOf } from "./places.js";
import type { Purposed } from "./purposed.js";

/** Most conductors of the schedule that are named as meant. */
const mostNear = 3;

/** What was found besides the schedule: a fault, or the section that permits it. */
export type Besides = { readonly fault: Fault } | { readonly permitted: Citation };

/** Judges what the schedule does not hold: a connection of the grounded conductor by its place, anything else by being unknown. */
export function judgeBesides(context: Context, index: LineIndex, { role, of, at, found }: Purposed): Besides {
  const place = at ?? of;
  if (place !== undefined && (isConnection(role) || found.connectsGroundedConductor === true))
    return connectionAt(context, place);
  const near = [of, at].flatMap((id) => (id === undefined ? [] : index.near(id)));
  const lines = [...new Set(near.flatMap(({ all: [first] }) => first ?? []))].slice(0, mostNear);
  const identities = lines.map(({ role: its, part, subject, place: start }) => ({
    role: its,
    ...(part && { part }),
    subject,
    ...(start !== undefined && { place: start }),
  }));
  const remedies = [{ do: "draw", near: identities } as const];
  return { fault: faultMaker(null, null)("not-in-schedule", { remedies }) };
}

/** A connection of the grounded conductor that is drawn beyond the jumper of its system, at a place: under an exception, or forbidden. */
function drawnConnectionAt({ installation, schedule }: Context, place: string): Besides | null {
  const { loadSideConnections = [] } = installation;
  const building = buildingKeeping(installation, place);
  if (building !== undefined) {
    const citation = rebondedBuilding[schedule.edition];
    return mayStayRebonded(building) ? { permitted: citation } : removed(citation);
  }
  if (!loadSideConnections.some(({ at }) => at === place)) return null;
  const violation = schedule.violations.find(
    ({ code, at }) => code === "grounded-conductor-bonded-on-load-side" && at.includes(place),
  );
  if (violation !== undefined) return removed({ section: violation.section, evidence: violation.evidence });
  const permitted = exceptionAt(installation, place);
  return permitted && { permitted };
}

function removed(citation: Citation): Besides {
  return { fault: faultMaker(null, citation)("not-permitted", { remedies: [{ do: "remove" }] }) };
}

/** A connection of the grounded conductor to metal beside the one that the schedule holds. */
export function connectionAt(context: Context, place: string): Besides {
  const { installation, schedule } = context;
  const { edition } = schedule;
  const drawn = drawnConnectionAt(context, place);
  if (drawn !== null) return drawn;
  switch (sidesOf(installation)(place)) {
    case "supply-side":
      return { permitted: supplySideConnections[edition] };
    case "service-load-side":
      return removed(serviceLoadSide[edition]);
    case "derived": {
      const both = mayBeAtBothEnds(installation, context, place);
      if (!both) return removed(derivedLoadSide[edition]);
      const remedies = [{ do: "draw", near: [] }, { do: "remove" }] as const;
      return { fault: faultMaker(null, systemJumperBothEnds[edition])("open", { remedies }) };
    }
  }
}

/** Whether a derived system may have a jumper at its source and at its disconnect, if it is drawn so. */
function mayBeAtBothEnds(
  { derivedSystems = [] }: Installation,
  { installation, schedule }: Context,
  place: string,
): boolean {
  const system = derivedSystems.find(
    ({ source, disconnects }) => source.id === place || disconnects.some(({ id }) => id === place),
  );
  if (system === undefined || system.grounding !== "solidly-grounded") return false;
  const at = { installation, code: schedule.code, system };
  return (
    mayHaveBothEnds(at) &&
    (system.jumperAt !== "disconnects" || isBoundToSource(at) || place === system.source.id)
  );
}
