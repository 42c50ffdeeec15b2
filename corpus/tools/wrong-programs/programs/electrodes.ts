import {
  concreteElectrodeCeiling,
  ringElectrodeLeast,
  rodElectrodeCeiling,
  supplementalRodCeiling,
} from "../../../../src/edition/tables/named-sizes.generated.js";
import {
  commonDerivedExceptionExists,
  electrodeCeilingWording,
} from "../../../../src/edition/tables/placements.generated.js";
import {
  areaOf,
  type ConductorSize,
  columnOf,
  type EditionYear,
  type Electrode,
} from "../../../../src/index.js";
import { type Change, changed, inMemory } from "../in-memory.js";
import { type AnyInput, onDecided, onInput, type Wrong, withSize } from "../program.js";

const unlimited = { copper: "2000 kcmil", aluminum: "2000 kcmil" } as const;
const water: Electrode = { kind: "metal-water-pipe" };

const rodLimits = (year: EditionYear, sizes: object): readonly Change[] => [
  ...changed(rodElectrodeCeiling[year], sizes),
  ...changed(supplementalRodCeiling[year], sizes),
];

const onElectrodes = (map: (electrodes: readonly Electrode[]) => readonly Electrode[]): Wrong =>
  onInput((input) => (input.electrodes ? { ...input, electrodes: map(input.electrodes) } : input));

const each = (map: (electrode: Electrode) => Electrode): Wrong =>
  onElectrodes((electrodes) => electrodes.map(map));

const isRod = ({ kind }: Electrode) => kind === "rod" || kind === "pipe" || kind === "plate";

/** The size for an electrode in copper, where the code names one. */
const limitOf = (electrode: Electrode): ConductorSize | null => {
  if (electrode.kind === "ring") return electrode.conductor;
  if (isRod(electrode)) return "6 AWG";
  return electrode.kind === "concrete-encased" ? "4 AWG" : null;
};

const limited = (electrodes: readonly Electrode[]) =>
  electrodes.flatMap((electrode) => {
    const limit = limitOf(electrode);
    return limit === null ? [] : [{ electrode, area: areaOf(limit), limit }];
  });

const smallestLimit = (electrodes: readonly Electrode[]): readonly Electrode[] => {
  const [least] = [...limited(electrodes)].sort((a, b) => a.area - b.area);
  return least === undefined ? electrodes : [least.electrode];
};

const withLimitsAlone = (electrodes: readonly Electrode[]): readonly Electrode[] => {
  const alone = limited(electrodes).map(({ electrode }) => electrode);
  return alone.length === 0 ? electrodes : alone;
};

const noRodLimits: Wrong = (right) =>
  inMemory(({ year }) => rodLimits(year, unlimited))(onInput(notSupplemental)(right));
const noConcreteLimit: Wrong = inMemory(({ year }) => changed(concreteElectrodeCeiling[year], unlimited));
const noRingLimit: Wrong = each((electrode) => (electrode.kind === "ring" ? water : electrode));

const notSupplemental = ({ supplemental: _, ...input }: AnyInput): AnyInput => input;

/** Forgets every limit for electrodes. */
export const withoutElectrodeLimits: Wrong = (right) => noRingLimit(noConcreteLimit(noRodLimits(right)));

const isCommonOf = ({ system, part }: AnyInput, of: string) => part === "common" && system === of;

const wording = (early: boolean): Wrong =>
  inMemory(({ year }) => [
    {
      data: electrodeCeilingWording,
      key: year,
      value: early ? "no-larger-kind" : "sole-connection",
    },
  ]);

const commonException = (exists: boolean): Wrong =>
  inMemory(({ year }) => [{ data: commonDerivedExceptionExists, key: year, value: exists }]);

const fixed = (of: string, copper: ConductorSize, aluminum: ConductorSize): Wrong =>
  onDecided((decided, { input }) => {
    if (!isCommonOf(input, of) || input.conductor === undefined) return decided;
    return withSize(columnOf(input.conductor.material) === "copper" ? copper : aluminum);
  });

/** Programs that take the electrodes of a conductor otherwise. */
export const ofElectrodes: Readonly<Record<string, Wrong>> = {
  "rod-limit-forgotten": noRodLimits,
  "concrete-limit-forgotten": noConcreteLimit,
  "ring-limit-forgotten": noRingLimit,
  "plates-and-pipes-without-limit": each(({ kind, ...rest }) =>
    kind === "pipe" || kind === "plate" ? water : ({ kind, ...rest } as Electrode),
  ),
  "electrode-limit-as-size": onDecided((decided, { input: { electrodes = [], conductor } }) => {
    const limits = limited(electrodes);
    const [largest] = [...limits].sort((a, b) => b.area - a.area);
    const isAll = limits.length === electrodes.length && conductor?.material === "copper";
    return largest === undefined || !isAll ? decided : withSize(largest.limit);
  }),
  "smallest-electrode-decides": onElectrodes(smallestLimit),
  "first-electrode-only": onElectrodes((electrodes) => electrodes.slice(0, 1)),
  "limit-beside-water-pipe": onElectrodes(withLimitsAlone),
  "rod-limit-for-concrete": each((one) => (one.kind === "concrete-encased" ? { kind: "rod" } : one)),
  "concrete-limit-for-rod": each((one) => (isRod(one) ? { kind: "concrete-encased" } : one)),
  "copper-limit-for-aluminum-to-rods": inMemory(({ year }) => rodLimits(year, { aluminum: "6 AWG" })),
  "aluminum-limit-for-concrete": inMemory(({ year }) =>
    changed(concreteElectrodeCeiling[year], { aluminum: "2 AWG" }),
  ),
  "limits-for-several-early": wording(true),
  "limits-for-several-late": wording(false),
  "supplemental-ignored": onInput(notSupplemental),
  "ring-of-any-size": inMemory(({ year }) => changed(ringElectrodeLeast[year], { copper: "18 AWG" })),
  "common-of-services-fixed": fixed("service", "3/0 AWG", "250 kcmil"),
  "common-of-systems-six": fixed("separately-derived", "6 AWG", "4 AWG"),
  "common-of-systems-limit-early": commonException(true),
  "common-of-systems-limit-late": commonException(false),
  "common-without-limits": onInput((input) =>
    input.part === "common" || input.part === "tap" ? { ...input, electrodes: [water] } : input,
  ),
  "drop-ignored": onInput(({ fromDrop: _, ...input }) => input),
  "taps-as-common": onInput((input) =>
    input.part === "tap" && input.supply !== undefined
      ? {
          ...input,
          supply: {
            ...input.supply,
            sets: input.supply.sets.map((set) => ({ ...set, count: set.count * 2 })),
          },
        }
      : input,
  ),
};
