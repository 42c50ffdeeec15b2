import {
  conductorName,
  endName,
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
import { type Built, idAt, named, nameOf } from "../built.js";
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
export function worsenings(before: Built, installed: readonly Installed[]): readonly InstalledChange[] {
  return installed.flatMap((one) => {
    const { size, quantity = 1 } = one;
    const change = changeOf(installed, one);
    const down = nextSizeDown(size as StandardSize);
    return [
      change("taken away", () => []),
      change("at a place that is nowhere", () => [{ ...one, at: "nowhere in this drawing" }]),
      ...(quantity > 1 ? [change("one too few", () => [{ ...one, quantity: quantity - 1 }])] : []),
      ...(down ? [change("one size smaller", () => [{ ...one, size: down }])] : []),
      ...(down && quantity > 1 ? [change("one of them smaller", () => oneSmaller(one, down))] : []),
      ...materials.map((material) =>
        change(`of ${material}, too small`, () => {
          const wanted = inMaterial(before, one, material);
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

/** Everything else that is lawful in place of what the schedule names. */
export function lawfulChanges(before: Built, installed: readonly Installed[]): readonly InstalledChange[] {
  const { conductors } = before.schedule;
  const enclosed = new Set(
    conductors.flatMap(({ from }) => (from.kind === "raceway" ? [conductorName(from.around)] : [])),
  );
  const scheduled = new Map(conductors.map((one) => [one.id, one]));
  return installed.flatMap((one) => {
    const { conductor, size, quantity = 1 } = one;
    const change = changeOf(installed, one);
    const line = scheduled.get(conductor);
    // What bonds the raceway of an electrode conductor grows with the conductor as it is installed.
    const isFree = line === undefined || !enclosed.has(conductorName(line));
    const up = nextSizeUp(size as StandardSize);
    return [
      ...(quantity > 1 ? [change("one by one", () => oneByOne(one, quantity))] : []),
      change("and a spare one", () => [one, { ...one, quantity: 1 }]),
      ...(line === undefined
        ? []
        : [
            change("at its start", () => [{ ...one, at: endName(line.from) }]),
            change("at its end", () => [{ ...one, at: endName(line.to) }]),
          ]),
      ...(up && isFree ? [change("one size larger", () => [{ ...one, size: up }])] : []),
      ...(isFree
        ? materials.map((material) =>
            change(`of ${material}`, () => {
              const wanted = inMaterial(before, one, material);
              return wanted && [{ ...one, size: wanted, material }];
            }),
          )
        : []),
      ...(isFree
        ? placesFor(before, one).map((place) => change(`at ${place}`, () => elsewhere(before, one, place)))
        : []),
    ];
  });
}

function changeOf(
  installed: readonly Installed[],
  one: Installed,
): (what: string, changed: () => Changed) => InstalledChange {
  return (what, changed) => ({
    what: `${one.conductor} ${what}`,
    conductor: one.conductor,
    installed: () => {
      const instead = changed();
      return instead && installed.flatMap((same) => (same === one ? instead : [same]));
    },
  });
}

function oneSmaller(one: Installed, size: Installed["size"]): readonly Installed[] {
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
  one: Installed,
  material: Material,
): StandardSize | undefined {
  const drawn = schedule.conductors.find(({ id, quantity }) => id === one.conductor && quantity > 0);
  const group = drawn && groupOf[drawn.role];
  if (drawn === undefined || group === undefined || drawn.result.material === material) return undefined;
  const other = scheduleOfRead({
    ...installation,
    materials: { ...installation.materials, [group]: material },
  });
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
function isCopperOnly({ conductor }: Installed): boolean {
  return conductor.startsWith("intersystem-bonding-conductor ");
}

/** An electrode conductor of a service with one disconnect may start anywhere ahead of that, 250.24(A)(1). */
function placesFor({ installation, schedule }: Built, { conductor }: Installed): readonly string[] {
  const scheduled = schedule.conductors.find(({ id }) => id === conductor);
  if (scheduled?.role !== "grounding-electrode-conductor") return [];
  const service = installation.services?.find((one) => has(one, scheduled));
  return service === undefined ? [] : aheadOf(service).filter((place) => place !== idAt(scheduled.from));
}

function has({ electrodes = [] }: Service, { to, from }: ScheduledConductor): boolean {
  return electrodes.some((one) => one.id === idAt(to) && one.from === idAt(from));
}

/** The same conductor from another place, of the size that the schedule asks for there. */
function elsewhere({ installation }: Built, one: Installed, place: string): Changed {
  const end = one.conductor.slice("grounding-electrode-conductor ".length);
  const services = (installation.services ?? []).map((service) => {
    const n = service.electrodes?.findIndex(({ id }) => id === end) ?? -1;
    if (n < 0) return service;
    return { ...service, electrodes: at(service.electrodes ?? [], n, (same) => ({ ...same, from: place })) };
  });
  const there = scheduleOfRead({ ...installation, services })?.conductors.find(
    ({ id }) => id === one.conductor,
  );
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
