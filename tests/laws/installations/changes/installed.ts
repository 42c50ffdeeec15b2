import {
  areaOf,
  conductorName,
  InputError,
  type Installation,
  type Material,
  materials,
  nextSizeDown,
  nextSizeUp,
  type Role,
  type ScheduledConductor,
  type StandardSize,
  scheduleOf,
} from "bondmil";
import type { Listed } from "../as-scheduled.js";
import { askedOf, type Built, idAt, named, nameOf } from "../built.js";
import type { Installed, Service } from "../parts.js";
import { at } from "./within.js";

/** One change of what is installed: the conductor that it concerns, and what is installed then; nothing where it cannot be. */
export interface InstalledChange {
  readonly what: string;
  readonly conductor: string;
  readonly installed: () => readonly Installed[] | undefined;
}

type Changed = readonly Installed[] | undefined;

/** Everything that makes one installed conductor worse than the schedule asks for. */
export function worsenings(before: Built, listed: readonly Listed[]): readonly InstalledChange[] {
  const lines = new Map(before.schedule.conductors.map((one) => [one.id, one]));
  return listed.flatMap((entry) => {
    const { id, found: one } = entry;
    const { size, busArea, quantity = 1 } = one;
    const line = lines.get(id);
    const change = changeOf(listed, entry);
    const down = size && nextSizeDown(size as StandardSize);
    const isElsewhere = line !== undefined && ![line.from, line.to].some((end) => idAt(end) === elsewhereId);
    return [
      change("taken away", () => []),
      ...(isElsewhere ? [change("at a place that is not its own", () => [{ ...one, at: elsewhereId }])] : []),
      ...(quantity > 1
        ? [
            change("one too few", () =>
              mayServeAsCommon(before, entry) ? undefined : [{ ...one, quantity: quantity - 1 }],
            ),
          ]
        : []),
      ...(busArea ? [change("a circular mil smaller", () => [{ ...one, busArea: busArea - 1 }])] : []),
      ...(down ? [change("one size smaller", () => [{ ...one, size: down }])] : []),
      ...(down && quantity > 1 ? [change("one of them smaller", () => oneSmaller(one, down))] : []),
      ...materials.map((material) =>
        change(`of ${material}, too small`, () => {
          const wanted = inMaterial(before, entry, material);
          const less = wanted && nextSizeDown(wanted);
          return less ? [{ ...one, size: less, material }] : undefined;
        }),
      ),
      ...(isCopperOnly(one)
        ? [change("of aluminum", () => [{ ...one, size: "500 kcmil", material: "aluminum" }])]
        : []),
    ];
  });
}

/** Something that every drawing names as existing beyond its edge. */
const elsewhereId = "main panel";

/** Everything else that is lawful in place of what the schedule names. */
export function lawfulChanges(before: Built, listed: readonly Listed[]): readonly InstalledChange[] {
  const { conductors, code } = before.schedule;
  const enclosed = new Set(
    conductors.flatMap(({ from }) => (from.kind === "raceway" ? [conductorName(from.around)] : [])),
  );
  const scheduled = new Map(conductors.map((one) => [one.id, one]));
  const isPlain = Object.keys(code).every((key) => key === "year");
  return listed.flatMap((entry) => {
    const { id, found: one } = entry;
    const { size, quantity = 1 } = one;
    const change = changeOf(listed, entry);
    const line = scheduled.get(id);
    // What bonds the raceway of an electrode conductor grows with the conductor as it is installed.
    const isFree = line === undefined || !enclosed.has(conductorName(line));
    const up = size && nextSizeUp(size as StandardSize);
    // A place that tells several conductors apart stays.
    const ends = line === undefined || one.at !== undefined ? [] : [line.from, line.to];
    const places = ends.flatMap((end) => idAt(end) ?? []);
    return [
      ...(quantity > 1 ? [change("one by one", () => oneByOne(one, quantity))] : []),
      change("and a spare one", () => [one, { ...one, quantity: 1 }]),
      change("under a name of its own", () => [{ ...one, name: "green wire" }]),
      ...(isPlain ? [change("built under this edition", () => [{ ...one, edition: code.year }])] : []),
      ...places.map((at) => change(`at its end ${at}`, () => [{ ...one, at }])),
      ...(up && isFree ? [change("one size larger", () => [{ ...one, size: up }])] : []),
      ...(isFree
        ? materials.map((material) =>
            change(`of ${material}`, () => {
              const wanted = inMaterial(before, entry, material);
              return wanted && [{ ...one, size: wanted, material }];
            }),
          )
        : []),
      ...(isFree
        ? placesFor(before, entry).map((place) =>
            change(`at ${place}`, () => elsewhere(before, entry, place)),
          )
        : []),
    ];
  });
}

function changeOf(
  listed: readonly Listed[],
  entry: Listed,
): (what: string, changed: () => Changed) => InstalledChange {
  return (what, changed) => ({
    what: `${entry.id} ${what}`,
    conductor: entry.id,
    installed: () => {
      const instead = changed();
      return instead && listed.flatMap((same) => (same === entry ? instead : [same.found]));
    },
  });
}

/** Whether one jumper of the raceways of a run is as large as one in common for all of them has to be, which is lawful (250.102(C)(2)). */
function mayServeAsCommon({ installation, schedule }: Built, { id, found }: Listed): boolean {
  const line = schedule.conductors.find((one) => one.id === id);
  if (line?.role !== "supply-side-bonding-jumper" || found.size === undefined) return false;
  const inCommon = <T extends Pick<Service, "runs">>(system: T): T => ({
    ...system,
    runs: system.runs.map((run) => (run.id === line.subject ? { ...run, racewayJumpers: "common" } : run)),
  });
  const { services = [], derivedSystems = [] } = installation;
  const drawn = { services: services.map(inCommon), derivedSystems: derivedSystems.map(inCommon) };
  const common = scheduleOfRead({ ...installation, ...drawn })?.conductors.find((one) => one.id === id);
  return common !== undefined && common.quantity === 1 && areaOf(found.size) >= common.result.requiredArea;
}

function oneSmaller(one: Installed, size: StandardSize): readonly Installed[] {
  return [
    { ...one, quantity: (one.quantity ?? 1) - 1 },
    { ...one, size, quantity: 1 },
  ];
}

function oneByOne(one: Installed, quantity: number): readonly Installed[] {
  return Array.from({ length: quantity }, () => ({ ...one, quantity: 1 }));
}

/** The size that the schedule asks for of another material, where that may be used and the same number is wanted. */
function inMaterial(
  { installation, schedule }: Built,
  { id: own, found }: Listed,
  material: Material,
): StandardSize | undefined {
  if (found.size === undefined) return undefined;
  const drawn = schedule.conductors.find(({ id, quantity }) => id === own && quantity > 0);
  const group = drawn && groupOf[drawn.role];
  if (drawn === undefined || group === undefined || drawn.result.material === material) return undefined;
  const other = scheduleOfRead({
    ...withoutOwn(installation),
    materials: { ...installation.materials, [group]: material },
  });
  // Where own materials of another group size this one, the comparison says nothing.
  const same = scheduleOfRead(withoutOwn(installation));
  if (same && askedOf(drawn) !== askedOf(named(same).get(nameOf(drawn)) ?? drawn)) return undefined;
  const wanted = other && named(other).get(nameOf(drawn));
  const isForbidden = wanted?.result.cautions.some(({ code }) => code === "material-forbidden");
  if (wanted?.result.outcome.kind !== "conductor" || isForbidden) return undefined;
  return wanted.quantity === drawn.quantity ? wanted.result.outcome.size : undefined;
}

/** The materials of a drawing that roles go by; the conductor of an intersystem termination is of copper. */
const groupOf: Readonly<Record<Role, keyof Installation["materials"] | undefined>> = {
  "main-bonding-jumper": "bondingJumpers",
  "system-bonding-jumper": "bondingJumpers",
  "supply-side-bonding-jumper": "bondingJumpers",
  "grounded-conductor": "groundedConductors",
  "impedance-grounding-conductor": "groundedConductors",
  "impedance-bonding-jumper": "bondingJumpers",
  "equipment-grounding-conductor": "equipmentGrounding",
  "equipment-bonding-jumper": "bondingJumpers",
  "water-piping-bonding-jumper": "bondingJumpers",
  "other-piping-bonding-jumper": "bondingJumpers",
  "structural-metal-bonding-jumper": "bondingJumpers",
  "grounding-electrode-conductor": "electrodeConductors",
  "electrode-bonding-jumper": "electrodeConductors",
  "electrode-raceway-bonding-jumper": "bondingJumpers",
  "intersystem-bonding-conductor": undefined,
};

function scheduleOfRead(installation: Installation): Built["schedule"] | undefined {
  try {
    return scheduleOf(installation);
  } catch (error) {
    // Not every material has a conductor for every current.
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** The conductor to an intersystem termination is of copper, 250.94. */
function isCopperOnly({ role }: Installed): boolean {
  return role === "intersystem-bonding-conductor";
}

/** An electrode conductor of a service with one disconnect may start anywhere ahead of that, 250.24(A)(1). */
function placesFor({ installation, schedule }: Built, listed: Listed): readonly string[] {
  const scheduled = schedule.conductors.find(({ id }) => id === listed.id);
  if (scheduled?.role !== "grounding-electrode-conductor") return [];
  const service = installation.services?.find((one) => has(one, scheduled));
  return service === undefined ? [] : aheadOf(service).filter((place) => place !== idAt(scheduled.from));
}

function has({ electrodes = [] }: Service, { to, from }: ScheduledConductor): boolean {
  return electrodes.some((one) => one.id === idAt(to) && one.from === idAt(from));
}

/** The same conductor from another place, of the size that the schedule asks for there. */
function elsewhere({ installation }: Built, { id: own, found: one }: Listed, place: string): Changed {
  const end = one.of;
  const services = (installation.services ?? []).map((service) => {
    const n = service.electrodes?.findIndex(({ id }) => id === end) ?? -1;
    if (n < 0) return service;
    return { ...service, electrodes: at(service.electrodes ?? [], n, (same) => ({ ...same, from: place })) };
  });
  const there = scheduleOfRead({ ...installation, services })?.conductors.find(({ id }) => id === own);
  const outcome = there?.result.outcome;
  return outcome?.kind === "conductor" ? [{ ...one, size: outcome.size, at: place }] : undefined;
}

/** The boxes in the one chain to the one disconnect of a service, and that disconnect. */
function aheadOf({
  boxes = [],
  disconnects,
  runs,
  commonElectrodeConductor: common,
}: Service): readonly string[] {
  const [only, ...others] = disconnects;
  const starts = runs.map(({ from }) => from);
  const isChain = new Set(starts).size === starts.length;
  if (only === undefined || others.length > 0 || !isChain || common !== undefined) return [];
  return [...boxes.map(({ id }) => id), only.id];
}

/** An installation whose things name no materials of their own. */
function withoutOwn({ materials: all, ...rest }: Installation): Installation {
  const plain = JSON.parse(
    JSON.stringify(rest, (key, value) => (key === "materials" ? undefined : value)),
  ) as Omit<Installation, "materials">;
  return { ...plain, materials: all };
}
