import type { EditionYear } from "../../edition/index.js";
import type { Installation } from "../document.js";
import { electrodeIds } from "../electrodes-of.js";
import { fault, type Fault as Issue } from "../fault.js";
import type { Schedule, ScheduledConductor } from "../schedule.js";
import type { Context } from "./context.js";
import { listedBy } from "./match.js";

/** Whether a conductor that is not listed is as scheduled. */
export function coverageOf(installation: Installation): (line: ScheduledConductor) => boolean {
  const { installed = {} } = installation;
  if (installed.rest !== undefined) return () => true;
  const within = partsWithin(installation);
  const listed = new Set((installed.asScheduled ?? []).flatMap((id) => [id, ...within(id)]));
  return (line) => listedBy(line).some((id) => listed.has(id));
}

/** The electrodes of a building, and what is likely to be taken out of the water pipes of a system, of a building or of a pipe. */
function partsWithin(installation: Installation): (id: string) => readonly string[] {
  const { services = [], derivedSystems = [], buildings = [], piping = [] } = installation;
  const parts = new Map<string, string[]>();
  const note = (id: string, ids: readonly string[]): void => {
    if (ids.length > 0) parts.set(id, [...(parts.get(id) ?? []), ...ids]);
  };
  for (const { id, electrodes = [] } of buildings) note(id, electrodeIds({ electrodes }));
  for (const { id, electrodes = [] } of [...services, ...derivedSystems, ...buildings])
    for (const electrode of electrodes) {
      note(id, idsOf(electrode.removable));
      if (electrode.id !== undefined) note(electrode.id, idsOf(electrode.removable));
    }
  for (const one of piping) if (one.kind === "water") note(one.id, idsOf(one.removable));
  return (id) => parts.get(id) ?? [];
}

function idsOf(list: readonly { readonly id: string }[] = []): readonly string[] {
  return list.map(({ id }) => id);
}

/** Things listed as scheduled of which the schedule has nothing. */
export function coveringNothing(installation: Installation, schedule: Schedule): readonly Issue[] {
  const { asScheduled = [] } = installation.installed ?? {};
  if (asScheduled.length === 0) return [];
  const known = new Set(schedule.conductors.flatMap(listedBy));
  const within = partsWithin(installation);
  return asScheduled.flatMap((id, i) => {
    if ([id, ...within(id)].some((one) => known.has(one))) return [];
    const expected = "something that conductors of the schedule belong to";
    const advice = "name a run, a circuit, a disconnect, an electrode, a pipe, a frame or a system";
    return [fault("unknown-value", ["installed", "asScheduled", i], expected, id, advice)];
  });
}

/** Editions that something was built under and that refuse the installation. */
export function refusedEditions(
  { installed = {} }: Installation,
  contexts: (edition: EditionYear | undefined) => Context | null,
): readonly Issue[] {
  return (installed.found ?? []).flatMap(({ edition }, i) => {
    if (contexts(edition) !== null) return [];
    const advice = "that edition refuses this installation; leave it out, or name the edition that governed";
    return [
      fault(
        "unknown-value",
        ["installed", "found", i, "edition"],
        "an edition that takes the installation",
        edition,
        advice,
      ),
    ];
  });
}
