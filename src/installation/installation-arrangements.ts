import type { SystemKind } from "../rules/shape.generated.js";
import { isBoundToSource } from "./derived-system.js";
import type { Installation } from "./document.js";
import type { VariantChange } from "./installation-comparison.js";
import { racewayJumpersDrawn } from "./raceway-jumpers.js";
import { type DrawnRun, hasGroundedConductor } from "./supplies.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];

interface Arranged {
  readonly change: VariantChange;
  readonly installation: Installation;
}

const jumperPlaces = ["source", "disconnects", "both-ends"] as const;
const racewayWays = {
  service: ["common", "per-raceway", "fittings-instead"],
  "separately-derived": ["common", "per-raceway"],
} as const;

/**
 * An installation as it is, then with each other arrangement that it could have, one changed at a time: enclosures or one assembly, the place
 * of the system bonding jumper, a jumper in each raceway, one for all, or fittings.
 * Whether the code permits it is for the schedule to say.
 */
export function otherArrangements(installation: Installation): readonly Arranged[] {
  const open = (installation.derivedSystems ?? []).filter(({ jumperAt }) => jumperAt === "compare");
  const takenAtSource = open.map(({ id }) => id);
  const asDrawn = withDerived(installation, (one) =>
    open.includes(one) ? { ...one, jumperAt: "source" } : one,
  );
  const { services = [], derivedSystems = [] } = asDrawn;
  return [
    { change: { kind: "as-drawn", takenAtSource }, installation: asDrawn },
    ...services.flatMap((one) => housedOtherwise(asDrawn, one)),
    ...derivedSystems.flatMap((one) => jumperElsewhere(asDrawn, one)),
    ...services.flatMap(({ runs }) => runs.flatMap((run) => bondedOtherwise(asDrawn, "service", run))),
    ...derivedSystems.flatMap(({ runs }) =>
      runs.flatMap((run) => bondedOtherwise(asDrawn, "separately-derived", run)),
    ),
  ];
}

/** A choice only where there are several service disconnects. */
function housedOtherwise(
  installation: Installation,
  { id, housing, disconnects }: Service,
): readonly Arranged[] {
  const own = disconnects.filter(
    ({ designation, bus }) => designation === "service-disconnect" && bus === undefined,
  );
  if (own.length < 2) return [];
  const as = housing === "listed-assembly" ? "separate-enclosures" : "listed-assembly";
  const changed = withServices(installation, (one) => {
    if (one.id !== id) return one;
    const { assembly: _, ...apart } = one;
    return { ...(as === "separate-enclosures" ? apart : one), housing: as };
  });
  return [{ change: { kind: "housing", of: id, as }, installation: changed }];
}

function jumperElsewhere(installation: Installation, system: Derived): readonly Arranged[] {
  const { id, jumperAt } = system;
  if (!hasGroundedConductor(system)) return [];
  return jumperPlaces
    .filter((at) => at !== jumperAt)
    .map((at) => ({
      change: { kind: "system-jumper", of: id, at },
      installation: withDerived(installation, (one) =>
        one.id === id ? withJumperAt(installation, one, at) : one,
      ),
    }));
}

/** The electrode conductors move with the jumper; those of an outdoor source stay where the edition keeps them. */
function withJumperAt(
  installation: Installation,
  system: Derived,
  jumperAt: (typeof jumperPlaces)[number],
): Derived {
  const { source, disconnects, electrodes } = system;
  if (electrodes === undefined) return { ...system, jumperAt };
  const [first = source] = disconnects;
  const isBound = isBoundToSource({ installation, code: installation.code, system });
  const isAway = jumperAt === "disconnects" && !isBound;
  const start = isAway ? first.id : source.id;
  const left = isAway ? [source.id] : disconnects.map(({ id }) => id);
  const isMoved = (from: string): boolean => jumperAt !== "both-ends" && left.includes(from);
  return {
    ...system,
    jumperAt,
    electrodes: electrodes.map((one) => (isMoved(one.from) ? { ...one, from: start } : one)),
  };
}

/** A choice only of metal raceways at a service, and of a wire in several raceways. */
function bondedOtherwise(installation: Installation, kind: SystemKind, run: DrawnRun): readonly Arranged[] {
  // A raceway that several runs share has one jumper, whatever is chosen.
  if (run.raceways === undefined) return [];
  const { count, kind: raceway } = run.raceways;
  const withoutWire = kind === "service" ? "nonmetallic" : "nonflexible-metal";
  if (raceway === withoutWire) return [];
  const drawn = racewayJumpersDrawn({ kind }, run);
  const usual = count === 1 && drawn === "per-raceway" ? "common" : drawn;
  return racewayWays[kind]
    .filter((as) => as !== usual && (count > 1 || as !== "per-raceway"))
    .map((as) => {
      const put = <T extends Service | Derived>(system: T): T => ({
        ...system,
        runs: system.runs.map((one) => (one.id === run.id ? { ...one, racewayJumpers: as } : one)),
      });
      const changed = withDerived(withServices(installation, put), put);
      return { change: { kind: "raceway-jumpers", of: run.id, as }, installation: changed };
    });
}

function withServices(installation: Installation, change: (one: Service) => Service): Installation {
  const { services } = installation;
  return services === undefined ? installation : { ...installation, services: services.map(change) };
}

function withDerived(installation: Installation, change: (one: Derived) => Derived): Installation {
  const { derivedSystems } = installation;
  return derivedSystems === undefined
    ? installation
    : { ...installation, derivedSystems: derivedSystems.map(change) };
}
