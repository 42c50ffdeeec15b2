import type { SystemKind } from "../rules/system-kind.js";
import type { Drawing } from "./document.js";
import type { VariantChange } from "./drawing-comparison.js";
import { racewayJumpersDrawn } from "./schedule-runs.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf } from "./supplies.js";

type Service = NonNullable<Drawing["services"]>[number];
type Derived = NonNullable<Drawing["derivedSystems"]>[number];

interface Arranged {
  readonly change: VariantChange;
  readonly drawing: Drawing;
}

const jumperPlaces = ["source", "disconnects", "both-ends"] as const;
const racewayWays = {
  service: ["common", "per-raceway", "fittings-instead"],
  "separately-derived": ["common", "per-raceway"],
} as const;

/**
 * A drawing as it is, then with each other arrangement that it could have, one changed at a time: enclosures or one assembly, the place
 * of the system bonding jumper, a jumper in each raceway, one for all, or fittings.
 * Whether the code permits it is for the schedule to say.
 */
export function otherArrangements(drawing: Drawing): readonly Arranged[] {
  const open = (drawing.derivedSystems ?? []).filter(({ jumperAt }) => jumperAt === "compare");
  const takenAtSource = open.map(({ id }) => id);
  const asDrawn = withDerived(drawing, (one) => (open.includes(one) ? { ...one, jumperAt: "source" } : one));
  const { services = [], derivedSystems = [] } = asDrawn;
  return [
    { change: { kind: "as-drawn", takenAtSource }, drawing: asDrawn },
    ...services.flatMap((one) => housedOtherwise(asDrawn, one)),
    ...derivedSystems.flatMap((one) => jumperElsewhere(asDrawn, one)),
    ...services.flatMap(({ runs }) => runs.flatMap((run) => bondedOtherwise(asDrawn, "service", run))),
    ...derivedSystems.flatMap(({ runs }) =>
      runs.flatMap((run) => bondedOtherwise(asDrawn, "separately-derived", run)),
    ),
  ];
}

/** A choice only where there are several service disconnects. */
function housedOtherwise(drawing: Drawing, { id, housing, disconnects }: Service): readonly Arranged[] {
  if (disconnects.filter(({ designation }) => designation === "service-disconnect").length < 2) return [];
  const as = housing === "listed-assembly" ? "separate-enclosures" : "listed-assembly";
  const changed = withServices(drawing, (one) => (one.id === id ? { ...one, housing: as } : one));
  return [{ change: { kind: "housing", of: id, as }, drawing: changed }];
}

function jumperElsewhere(drawing: Drawing, system: Derived): readonly Arranged[] {
  const { id, jumperAt } = system;
  if (!hasGroundedConductor(system)) return [];
  return jumperPlaces
    .filter((at) => at !== jumperAt)
    .map((at) => ({
      change: { kind: "system-jumper", of: id, at },
      drawing: withDerived(drawing, (one) => (one.id === id ? { ...one, jumperAt: at } : one)),
    }));
}

/** A choice only of metal raceways at a service, and of a wire in several raceways. */
function bondedOtherwise(drawing: Drawing, kind: SystemKind, run: DrawnRun): readonly Arranged[] {
  const { count, kind: raceway } = racewaysOf(run);
  const withoutWire = kind === "service" ? "nonmetallic" : "nonflexible-metal";
  if (raceway === withoutWire) return [];
  const drawn = racewayJumpersDrawn(kind, run);
  const usual = count === 1 && drawn === "per-raceway" ? "common" : drawn;
  return racewayWays[kind]
    .filter((as) => as !== usual && (count > 1 || as !== "per-raceway"))
    .map((as) => {
      const put = <T extends Service | Derived>(system: T): T => ({
        ...system,
        runs: system.runs.map((one) => (one.id === run.id ? { ...one, racewayJumpers: as } : one)),
      });
      const changed = withDerived(withServices(drawing, put), put);
      return { change: { kind: "raceway-jumpers", of: run.id, as }, drawing: changed };
    });
}

function withServices(drawing: Drawing, change: (one: Service) => Service): Drawing {
  const { services } = drawing;
  return services === undefined ? drawing : { ...drawing, services: services.map(change) };
}

function withDerived(drawing: Drawing, change: (one: Derived) => Derived): Drawing {
  const { derivedSystems } = drawing;
  return derivedSystems === undefined ? drawing : { ...drawing, derivedSystems: derivedSystems.map(change) };
}
