import {
  controlCircuitJumperLeast,
  impedanceConductorLeast,
} from "../../../../src/edition/tables/named-sizes.generated.js";
import { areaOf, type ConductorSize, columnOf, type Material } from "../../../../src/index.js";
import { changed, inMemory, policies, ratingPolicies } from "../in-memory.js";
import {
  type AnyInput,
  type Asked,
  type Decided,
  onDecided,
  onInput,
  type Wrong,
  withArea,
  withSize,
} from "../program.js";
import { columnOfSupply, conductorsOf, countSets, largestOf, setsOf, sumOf } from "../supplies.js";
import { withoutElectrodeLimits } from "./electrodes.js";

const unlimited: ConductorSize = "2000 kcmil";
const smallest = { copper: "18 AWG", aluminum: "18 AWG" } as const;
const endOfTable = { copper: "3/0 AWG", aluminum: "250 kcmil" } as const;

/** The cap of a feeder to a building, which no policy has, is raised by its conductors. */
const largeFeeder = (input: AnyInput): AnyInput => {
  const { supply, system, deviceAmperes } = input;
  if (supply === undefined || system !== "building" || deviceAmperes === undefined) return input;
  const { material } = largestOf(conductorsOf(supply));
  return { ...input, supply: setsOf(1, { size: unlimited, material }) };
};

const capsAs = (cap: "none" | "set" | "conductor", from: readonly string[]): Wrong =>
  inMemory(({ year }) => [
    ...policies(year, (policy) => (from.includes(policy.cap) ? { cap } : {})),
    ...ratingPolicies(year, (policy) => (from.includes(policy.cap) ? { cap } : {})),
  ]);

const noCaps: Wrong = (right) => onInput(largeFeeder)(capsAs("none", ["set", "conductor"])(right));

const ungroundedOf = ({ supply, circuits }: AnyInput) => supply ?? circuits?.[0]?.conductors;

/** What the cap is by the set, in an edition that has one. */
const capOf = ({ role, year, input }: Asked): number | null => {
  const supply = ungroundedOf(input);
  const isRated = input.circuits !== undefined;
  const always = role === "grounded-conductor" || isRated;
  if (supply === undefined || (!always && year < "2017")) return null;
  return sumOf(supply);
};

const isAcross = ({ input }: Asked): boolean => {
  const supply = ungroundedOf(input);
  const { conductor } = input;
  return (
    supply !== undefined && conductor !== undefined && columnOfSupply(supply) !== columnOf(conductor.material)
  );
};

const atLeast = (decided: Decided, area: number): Decided =>
  decided.requiredArea < area ? withArea(decided, area) : decided;

const capOverFloor = onDecided((decided, asked) => {
  const cap = isAcross(asked) ? null : capOf(asked);
  const isFloor = decided.governs === "floor" && cap !== null && cap < decided.requiredArea;
  return isFloor ? withArea(decided, cap) : decided;
});

/** A conductor that is not one of several in parallel, so that nothing but a policy gives it the minimum of those. */
const notInParallel = ({ scope, ...input }: AnyInput): AnyInput =>
  input.feederDeviceAmperes !== undefined ||
  input.rebondedAtBuildingWithDevice !== undefined ||
  input.jumperAt === "source" ||
  input.grounded === "phase"
    ? input
    : { ...input, ...(scope !== undefined && { scope }) };

const noFloors: Wrong = inMemory(({ year }) => [
  ...policies(year, () => ({ floor: null })),
  ...ratingPolicies(year, () => ({ floor: null })),
]);

const ofMaterial = (material: Material | undefined, copper: ConductorSize, aluminum: ConductorSize) =>
  material === undefined || material === "copper" ? copper : aluminum;

const always = (copper: ConductorSize, aluminum: ConductorSize): Wrong =>
  onDecided((decided, { input }) =>
    decided.outcome.kind === "conductor"
      ? withSize(ofMaterial(input.conductor?.material, copper, aluminum))
      : decided,
  );

/** Programs that forget a limit or a minimum size, or take one for the other. */
export const ofLimits: Readonly<Record<string, Wrong>> = {
  "limit-left-out-everywhere": (right) =>
    noCaps(withoutElectrodeLimits(inMemory(({ year }) => policies(year, () => ({ ceiling: null })))(right))),
  "floor-left-out-everywhere": (right) =>
    onInput(({ run: _run, ...input }) => notInParallel(input))(
      inMemory(({ year }) => [
        ...changed(impedanceConductorLeast[year], smallest),
        ...changed(controlCircuitJumperLeast[year], smallest),
      ])(noFloors(right)),
    ),
  "cap-forgotten": noCaps,
  "cap-in-every-edition": capsAs("set", ["none"]),
  "cap-at-one-conductor": capsAs("conductor", ["set"]),
  "cap-at-whole-set": (right) =>
    onInput((input) =>
      input.supply !== undefined && countSets(input.supply) > 1 ? largeFeeder(input) : input,
    )(capsAs("set", ["conductor"])(right)),
  "cap-only-above-the-table": (right) => (asked) => {
    const decided = right(asked);
    return decided.steps.some(({ kind }) => kind === "one-eighth") ? decided : noCaps(right)(asked);
  },
  "cap-across-materials": onDecided((decided, asked) => {
    const cap = isAcross(asked) ? capOf(asked) : null;
    return cap !== null && cap < decided.requiredArea ? withArea(decided, cap) : decided;
  }),
  "cap-over-floor": capOverFloor,
  "cap-as-minimum": onDecided((decided, asked) => {
    const cap = isAcross(asked) ? null : capOf(asked);
    return cap === null ? decided : atLeast(decided, cap);
  }),
  "parallel-floor-forgotten": (right) => onInput(notInParallel)(noFloors(right)),
  "parallel-floor-on-jumpers": onDecided((decided, { input: { scope, run, circuits } }) => {
    const sets = (circuits ?? []).map(({ conductors }) => (conductors ? countSets(conductors) : 1));
    const isParallel = scope === "raceway" || run?.kind === "parallel-raceways" || Math.max(1, ...sets) > 1;
    return isParallel ? atLeast(decided, areaOf("1/0 AWG")) : decided;
  }),
  "parallel-floor-always": onDecided((decided) => atLeast(decided, areaOf("1/0 AWG"))),
  "ceiling-forgotten": inMemory(({ year }) => policies(year, () => ({ ceiling: null }))),
  "ceiling-in-every-edition": inMemory(({ year }) =>
    policies(year, ({ ceiling, basis }) => ({ ceiling: ceiling ?? { ...endOfTable, citation: basis.rule } })),
  ),
  "six-awg-at-least": onDecided((decided, { input }) =>
    atLeast(decided, areaOf(ofMaterial(input.conductor?.material, "6 AWG", "4 AWG"))),
  ),
  "six-awg-always": always("6 AWG", "4 AWG"),
  "four-awg-always": always("4 AWG", "2 AWG"),
};
