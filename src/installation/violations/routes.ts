import { areaOf, type ConductorSize, columnOf } from "../../conductor/index.js";
import type { EditionYear } from "../../edition/index.js";
import {
  aluminumEndsInListedEnclosure,
  aluminumNotAgainst,
  aluminumRestrictedCover,
  electrodeConductorWantsSchedule80,
} from "../../edition/tables/placements.generated.js";
import {
  aluminumElectrodeConductor,
  electrodeConductorProtection,
} from "../../edition/tables/sections.generated.js";
import { identityOf } from "../conductor-identity.js";
import type { Installation } from "../document.js";
import { type DrawnElectrode, electrodesOf } from "../electrodes-of.js";
import { foundOf } from "../found-conductors.js";
import type { ScheduledConductor, ScheduledPart } from "../schedule.js";
import type { UnmetCondition, Violation } from "../violation.js";

/** Inches from the earth within which aluminum does not end outdoors (250.64(A)). */
const leastInches = 18;
const smallestOpen = /* @__PURE__ */ areaOf("6 AWG");

/** What is found of an installation as a whole. */
export type Findings = Required<Pick<ScheduledPart, "violations" | "cautions">>;

/** Conductors and jumpers to the electrodes that run where it is not permitted; and those that must be protected, of which it is not told how they run. */
export function routeFindings(
  installation: Installation,
  conductors: readonly ScheduledConductor[],
): Findings {
  const { year } = installation.code;
  const { section } = electrodeConductorProtection[year];
  const drawn = served(installation, conductors);
  return {
    violations: drawn.flatMap((one) => [...aluminumOutOfPlace(one, year), ...unprotected(one, year)]),
    cautions: drawn
      .filter(({ electrode, small }) => small.length > 0 && protectionOf(electrode) === undefined)
      .map(({ electrode: { id } }) => ({ code: "electrode-conductor-protection-unknown", section, at: id })),
  };
}

/** A conductor to an electrode as it is drawn, with the conductors or jumpers of the schedule that it is. */
interface Served {
  readonly electrode: DrawnElectrode;
  readonly conductors: readonly ScheduledConductor[];
  /** Those of them that are smaller than 6 AWG, as installed where that is told. */
  readonly small: readonly ScheduledConductor[];
}

function served(installation: Installation, conductors: readonly ScheduledConductor[]): readonly Served[] {
  const { services = [], derivedSystems = [], buildings = [] } = installation;
  const drawn = [...services, ...derivedSystems, ...buildings].flatMap((owner) =>
    electrodesOf(installation, owner).map((electrode): Drawn => ({ owner: owner.id, electrode })),
  );
  if (drawn.length === 0) return [];
  const byElectrode = new Map<string, Drawn[]>();
  for (const one of drawn) {
    const alike = byElectrode.get(one.electrode.id);
    if (alike === undefined) byElectrode.set(one.electrode.id, [one]);
    else alike.push(one);
  }
  const known = new Map<Drawn, ScheduledConductor[]>();
  for (const one of conductors) {
    const isToElectrode =
      one.role === "grounding-electrode-conductor" || one.role === "electrode-bonding-jumper";
    if (!isToElectrode || one.to.kind !== "place" || one.quantity === 0) continue;
    const as = drawnAs(byElectrode.get(one.to.id) ?? [], one);
    if (as === undefined) continue;
    const before = known.get(as);
    if (before === undefined) known.set(as, [one]);
    else before.push(one);
  }
  return drawn.map((one) => {
    const own = known.get(one) ?? [];
    return {
      electrode: one.electrode,
      conductors: own,
      small: own.filter((conductor) => {
        const found = foundOf(installation, conductor);
        const sizes = found.length > 0 ? found.map(({ size }) => size) : sizesOf(conductor);
        return sizes.some((size) => areaOf(size) < smallestOpen);
      }),
    };
  });
}

/** An electrode as the list of a system or building has it. */
interface Drawn {
  readonly owner: string;
  readonly electrode: DrawnElectrode;
}

/** Which of the conductors that are drawn to one electrode a conductor of the schedule is: that of its system, from where it starts. */
function drawnAs(to: readonly Drawn[], { system, place, from }: ScheduledConductor): Drawn | undefined {
  const own = to.filter(({ owner }) => system === undefined || owner === system);
  const [only, ...others] = own.length > 0 ? own : to;
  if (others.length === 0) return only;
  const start = place ?? (from.kind === "place" ? from.id : undefined);
  return own.find(({ electrode }) => electrode.from === start) ?? only;
}

function sizesOf({ result: { outcome } }: ScheduledConductor): readonly ConductorSize[] {
  return outcome.kind === "conductor" ? [outcome.size] : [];
}

/** What protects the conductor; a ferrous raceway around it is one of metal. */
function protectionOf({ route, ferrousRaceway }: DrawnElectrode): string | undefined {
  return ferrousRaceway === true ? "rigid-metal" : route?.protection;
}

function unprotected({ electrode, conductors, small }: Served, year: EditionYear): readonly Violation[] {
  const protection = protectionOf(electrode);
  const isExposed = electrode.route?.exposedToDamage === true;
  const isTooLight = protection === "pvc-schedule-40" && electrodeConductorWantsSchedule80[year];
  const concerned = isExposed ? conductors : small;
  if (concerned.length === 0 || (protection !== "none" && !isTooLight)) return [];
  return [
    {
      code: "electrode-conductor-unprotected",
      ...electrodeConductorProtection[year],
      at: [electrode.id],
      conductors: concerned.map(identityOf),
      found: { kind: protection ?? "none" },
      remedies: [
        isTooLight ? { code: "schedule-80" } : { code: "protect-conductor" },
        ...(isExposed ? [] : [{ code: "larger-electrode-conductor" } as const]),
      ],
    },
  ];
}

function aluminumOutOfPlace({ electrode, conductors }: Served, year: EditionYear): readonly Violation[] {
  const ofAluminum = conductors.filter(({ result }) => columnOf(result.material) === "aluminum");
  const contacts = contactsOf(electrode, year);
  const end = electrode.route?.outdoorEnd;
  const isLow = end !== undefined && end.inchesAboveEarth < leastInches;
  const mayBeLow = end?.inListedEnclosure === true && aluminumEndsInListedEnclosure[year];
  const unmet: readonly UnmetCondition[] = [
    ...contacts,
    ...(isLow && !mayBeLow ? ["end-near-earth" as const] : []),
  ];
  if (ofAluminum.length === 0 || unmet.length === 0) return [];
  return [
    {
      code: "aluminum-not-permitted-here",
      ...aluminumElectrodeConductor[year],
      at: [electrode.id],
      conductors: ofAluminum.map(identityOf),
      found: { unmet },
      remedies: [
        { code: "copper-conductor" },
        ...(contacts.length > 0 ? ([{ code: "insulated-conductor" }, { code: "keep-clear" }] as const) : []),
        ...(unmet.includes("end-near-earth") ? [{ code: "end-higher" } as const] : []),
        ...(unmet.includes("end-near-earth") && aluminumEndsInListedEnclosure[year]
          ? [{ code: "end-in-listed-enclosure" } as const]
          : []),
      ],
    },
  ];
}

/** Concrete counts as masonry where the edition names masonry. */
const excluded = {
  "masonry-or-earth": ["masonry", "concrete", "earth", "corrosive-surroundings"],
  concrete: ["concrete", "corrosive-surroundings"],
} as const;

const contactNames = {
  masonry: "against-masonry",
  concrete: "against-concrete",
  earth: "against-earth",
  "corrosive-surroundings": "corrosive-surroundings",
} as const;

/** A conductor whose cover is not told is not taken for a bare one. */
function contactsOf({ route }: DrawnElectrode, year: EditionYear): readonly UnmetCondition[] {
  const { cover, against = [] } = route ?? {};
  const isRestricted =
    cover === "bare" || (cover === "covered" && aluminumRestrictedCover[year] === "bare-or-covered");
  if (!isRestricted) return [];
  const wrong: readonly string[] = excluded[aluminumNotAgainst[year]];
  return [...new Set(against)].filter((one) => wrong.includes(one)).map((one) => contactNames[one]);
}
