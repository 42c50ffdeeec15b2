import type { Citation } from "../../edition/index.js";
import { equipmentGroundingKinds } from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import type { Installation } from "../document.js";
import type { ScheduledConductor } from "../schedule.js";
import type { DrawnRun } from "../supplies.js";
import type { Context } from "./context.js";
import type { FoundConductor } from "./shape.generated.js";

type Instead = NonNullable<FoundConductor["instead"]>;

/**
 * The section by which something may serve in place of a conductor, `null` where it may not: the installation is drawn with it and scheduled,
 * so that the rules decide.
 */
export function maySubstitute(context: Context, line: ScheduledConductor, instead: Instead): Citation | null {
  const { role, subject } = line;
  if (role === "equipment-grounding-conductor")
    return instead === "nonflexible-metal-raceway" ? byRaceway(context, subject) : null;
  if (role !== "supply-side-bonding-jumper") return null;
  const other = context.drawn(`${instead} for ${subject}`, (one) => drawnWith(one, subject, instead));
  const result = other?.lineOf(line)?.result;
  return result?.outcome.kind === "not-required" ? result.citation : null;
}

/** A metal raceway is an equipment grounding conductor itself, unless an amendment requires a wire. */
function byRaceway({ installation, schedule }: Context, circuit: string): Citation | null {
  const wiring = installation.circuits?.find(({ id }) => id === circuit)?.wiring;
  const isInRaceway = wiring === "raceway" || wiring === "parallel-raceways";
  if (!isInRaceway || isAlwaysWire(schedule.code, "equipment-grounding-conductor")) return null;
  return equipmentGroundingKinds[schedule.edition];
}

function drawnWith(installation: Installation, subject: string, instead: Instead): Installation {
  switch (instead) {
    case "bonding-fittings":
      return withSharedRaceway(
        withRun(installation, subject, (run) => ({ ...run, racewayJumpers: "fittings-instead" })),
        subject,
      );
    case "grounded-conductor":
      return withBox(installation, subject);
    default:
      return installation;
  }
}

/** An installation with one run changed. */
export function withRun(
  installation: Installation,
  id: string,
  change: (run: DrawnRun) => DrawnRun,
): Installation {
  const changed = (runs: readonly DrawnRun[]): readonly DrawnRun[] =>
    runs.map((run) => (run.id === id ? change(run) : run));
  return {
    ...installation,
    ...(installation.services && {
      services: installation.services.map((one) => ({ ...one, runs: changed(one.runs) })),
    }),
    ...(installation.derivedSystems && {
      derivedSystems: installation.derivedSystems.map((one) => ({ ...one, runs: changed(one.runs) })),
    }),
  };
}

/** An installation with a raceway that several runs share bonded by fittings. */
function withSharedRaceway(installation: Installation, id: string): Installation {
  const { services } = installation;
  if (services === undefined) return installation;
  return {
    ...installation,
    services: services.map((service) => {
      const { sharedRaceways } = service;
      if (sharedRaceways === undefined) return service;
      const changed = sharedRaceways.map((one) =>
        one.id === id ? { ...one, bondedBy: "fittings" as const } : one,
      );
      return { ...service, sharedRaceways: changed };
    }),
  };
}

function withBox(installation: Installation, id: string): Installation {
  const services = (installation.services ?? []).map((service) => ({
    ...service,
    ...(service.boxes && {
      boxes: service.boxes.map((box) =>
        box.id === id ? { ...box, bondedBy: "grounded-conductor" as const } : box,
      ),
    }),
    disconnects: service.disconnects.map((one) =>
      one.id === id && one.bondedBy !== undefined ? { ...one, bondedBy: "grounded-conductor" as const } : one,
    ),
  }));
  return { ...installation, services };
}
