import type { Installation } from "bondmil";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type Circuit = NonNullable<Installation["circuits"]>[number];
type Found = NonNullable<NonNullable<Installation["installed"]>["found"]>[number];

/** How large an installation is, and of how many disconnects each of its services is. */
export interface Extent {
  readonly disconnects: number;
  readonly circuits: number;
  readonly perService: number;
}

/** Most derived systems that a document holds. */
const mostDerived = 200;
/** Branch circuits behind each feeder, so that what supplies a circuit is found over several others. */
const perFeeder = 9;

/**
 * Half of the disconnects in services, each in an enclosure of its own behind a wireway; half of them in transformers of one disconnect, compared
 * in both arrangements. Circuits are shared out among them, feeders with branch circuits behind. The equipment grounding conductor of every
 * circuit is listed as found, some of them too small; the rest is as scheduled.
 */
export function largeInstallation({ disconnects, circuits, perService }: Extent): Installation {
  const derivedCount = Math.min(mostDerived, disconnects / 2);
  const services = countTo((disconnects - derivedCount) / perService).map((n) => serviceOf(n, perService));
  const derivedSystems = countTo(derivedCount).map(derivedOf);
  const starts = [...services, ...derivedSystems].flatMap((one) => one.disconnects.map(({ id }) => id));
  const drawn = countTo(circuits).map((n) => circuitOf(n, starts));
  return {
    format: 1,
    title: "Works of many enclosures",
    code: { year: "2023" },
    materials: {
      bondingJumpers: "copper",
      groundedConductors: "copper",
      electrodeConductors: "copper",
      equipmentGrounding: "copper",
    },
    services,
    derivedSystems,
    circuits: drawn,
    installed: { found: drawn.map(({ id }) => foundOf(id)), rest: "as-scheduled" },
  };
}

function countTo(end: number): readonly number[] {
  return Array.from({ length: end }, (_, n) => n);
}

function serviceOf(n: number, count: number): Service {
  const id = `S${n}`;
  const disconnects = countTo(count).map((at) => ({
    id: `${id}-D${at}`,
    designation: "service-disconnect" as const,
    amperes: 200,
  }));
  return {
    id,
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    utility: { id: `${id}-utility`, outdoorTransformer: false },
    boxes: [{ id: `${id}-wireway`, kind: "wireway", bondedBy: "jumper" }],
    runs: [
      {
        id: `${id}-lateral`,
        from: `${id}-utility`,
        to: `${id}-wireway`,
        supply: { sets: [{ count: 4, size: "500 kcmil", material: "copper" }] },
        raceways: { count: 4, kind: "nonmetallic" },
      },
      ...disconnects.map((one) => ({
        id: `${one.id}-run`,
        from: `${id}-wireway`,
        to: one.id,
        supply: { sets: [{ count: 1, size: "3/0 AWG" as const, material: "copper" as const }] },
        raceways: { count: 1, kind: "nonflexible-metal" as const },
      })),
    ],
    disconnects,
    housing: "separate-enclosures",
    commonElectrodeConductor: { id: `${id}-common` },
    electrodes: [{ id: `${id}-footing`, kind: "concrete-encased", from: `${id}-common` }],
  };
}

function derivedOf(n: number): Derived {
  const id = `T${n}`;
  return {
    id,
    source: { id: `${id}-transformer`, kind: "transformer", outdoors: false },
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    runs: [
      {
        id: `${id}-run`,
        from: `${id}-transformer`,
        to: `${id}-panel`,
        supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] },
        raceways: { count: 1, kind: "nonflexible-metal" },
      },
    ],
    disconnects: [{ id: `${id}-panel`, amperes: 200 }],
    jumperAt: "compare",
    electrodes: [{ id: `${id}-steel`, kind: "structural-metal", from: `${id}-transformer` }],
  };
}

function circuitOf(n: number, starts: readonly string[]): Circuit {
  const place = n % (perFeeder + 1);
  const isFeeder = place === 0;
  const feeder = n - place;
  return {
    id: `C${n}`,
    from: isFeeder ? (starts[(n / (perFeeder + 1)) % starts.length] ?? "") : `panel ${feeder}`,
    to: isFeeder ? `panel ${n}` : `load ${n}`,
    device: { amperes: isFeeder ? 100 : 20 + (n % 3) * 20 },
    wiring: "raceway",
  };
}

/** Sufficient behind a device of 20 A, too small behind a larger one. */
function foundOf(id: string): Found {
  return { role: "equipment-grounding-conductor", of: id, size: "12 AWG", material: "copper" };
}
