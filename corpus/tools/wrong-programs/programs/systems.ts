import {
  impedanceConductorLeast,
  intersystemLeast,
  leastAboveFifteenAmperes,
  leastAboveThirtyAmperes,
  leastAboveTwentyAmperes,
  leastAboveTwentyFiveAmperes,
} from "../../../../src/edition/tables/named-sizes.generated.js";
import {
  busbarFollowsElectrodeConductor,
  intersystemBusbarExists,
  intersystemExcusedWhereUnlikely,
} from "../../../../src/edition/tables/placements.generated.js";
import { areaOf } from "../../../../src/index.js";
import { changed, inMemory, policies } from "../in-memory.js";
import { type AnyInput, onDecided, onInput, type Wrong, withArea, withSize } from "../program.js";
import { largestOf } from "../supplies.js";
import { ampacitiesAt90, lowerAmpacities } from "./materials.js";

const smallest = { copper: "18 AWG", aluminum: "18 AWG" } as const;
const smallConductors = [
  leastAboveFifteenAmperes,
  leastAboveTwentyAmperes,
  leastAboveTwentyFiveAmperes,
  leastAboveThirtyAmperes,
];

const placed = (data: object, value: boolean): Wrong =>
  inMemory(({ year }) => changed(data, { [year]: value }));

/** A question that speaks of a current, so that ampacities decide. */
const ofLoads = (wrong: Wrong): Wrong => {
  return (right) => (asked) =>
    asked.input.load !== undefined || asked.input.impedanceAmperes !== undefined
      ? wrong(right)(asked)
      : right(asked);
};

const withPlace = (input: AnyInput): AnyInput =>
  input.system === "separately-derived" && input.jumperAt === undefined
    ? { ...input, jumperAt: "enclosure" }
    : input;

const asService = (input: AnyInput): AnyInput => {
  if (input.system !== "separately-derived" || input.supply === undefined) return input;
  const { jumperAt: _, controlTransformer: __, ...rest } = input;
  return { ...rest, system: "service" };
};

const asDerived = (input: AnyInput, role: string): AnyInput => {
  if (role === "supply-side-bonding-jumper") return { ...input, system: "separately-derived" };
  if (input.system !== "service") return input;
  const { fromDrop: _, ...rest } = input;
  if (input.part !== "common") return { ...rest, system: "separately-derived" };
  const { supply: __, ...fixed } = rest;
  return { ...fixed, system: "separately-derived" };
};

const excuses = (input: AnyInput): AnyInput => {
  const {
    controlTransformer: _control,
    onSingleBranchCircuit: _branch,
    isElectrode: _electrode,
    instead: _instead,
    communicationsUnlikely: _unlikely,
    ...rest
  } = input;
  return {
    ...rest,
    ...(rest.ferrous === false && { ferrous: true }),
    ...(rest.jumperAt === "source" && { jumperAt: "enclosure" }),
    ...(rest.termination === "on-enclosure" && { termination: "apart" }),
  };
};

/** Programs that take one system, place or purpose for another. */
export const ofSystems: Readonly<Record<string, Wrong>> = {
  "excuses-forgotten": onInput(excuses),
  "load-forgotten": onInput(({ load: _, ...input }) => input),
  "load-alone": onDecided((decided) => {
    const load = decided.steps.find(({ kind }) => kind === "load");
    return load?.kind === "load" ? withArea(decided, load.requiredArea) : decided;
  }),
  "load-at-75": onInput((input) => ({
    ...input,
    ...(input.load && { load: { ...input.load, listedFor75: true } }),
    ...(input.impedanceAmperes !== undefined && { temperature: 75 }),
  })),
  "load-at-90": ofLoads(ampacitiesAt90),
  "load-ampacity-below": ofLoads(lowerAmpacities),
  "small-conductors-forgotten": inMemory(({ year }) =>
    smallConductors.flatMap((named) => changed(named[year], smallest)),
  ),
  "jumper-place-ignored": onInput((input) =>
    input.jumperAt === "source" ? { ...input, jumperAt: "enclosure" } : input,
  ),
  "corner-grounded-as-neutral": onInput(({ grounded: _, ...input }) => input),
  "feeder-as-service": onInput(({ feederDeviceAmperes: _, ...input }) => withPlace(input)),
  "rebonded-as-service": onInput(({ rebondedAtBuildingWithDevice: _, ...input }) => withPlace(input)),
  "impedance-floor-forgotten": inMemory(({ year }) => changed(impedanceConductorLeast[year], smallest)),
  "impedance-floor-six": inMemory(({ year }) =>
    changed(impedanceConductorLeast[year], { copper: "6 AWG", aluminum: "4 AWG" }),
  ),
  "impedance-by-eight": onDecided((decided, { input }) =>
    input.conductor?.material === "copper" ? withSize("8 AWG") : decided,
  ),
  "impedance-limit-forgotten": inMemory(({ year }) => policies(year, () => ({ oneEighth: true }))),
  "derived-as-service": onInput(asService),
  "service-as-derived": onInput((input, { role }) => asDerived(input, role)),
  "control-transformer-ignored": onInput(({ controlTransformer: _, ...input }) => input),
  "single-raceway-as-several": onInput((input) =>
    input.scope === "single-raceway" ? { ...input, scope: "all" } : input,
  ),
  "enclosed-first-only": onInput((input) => ({
    ...input,
    ...(input.enclosed && { enclosed: input.enclosed.slice(0, 1) }),
  })),
  "enclosed-summed": onDecided((decided, { input: { enclosed = [] } }) =>
    withArea(
      decided,
      enclosed.reduce((sum, { size }) => sum + areaOf(size), 0),
    ),
  ),
  "enclosed-six": onDecided((decided, { input: { enclosed } }) =>
    enclosed === undefined || decided.outcome.kind === "not-required" || largestOf(enclosed).size === "6 AWG"
      ? decided
      : withSize("6 AWG"),
  ),
  "nonferrous-bonded": onInput((input) => ({ ...input, ferrous: true })),
  "ferrous-not-bonded": onInput((input) => ({ ...input, ferrous: false })),
  "intersystem-always": onInput((input) =>
    input.termination === "on-enclosure" ? { ...input, termination: "apart" } : input,
  ),
  "intersystem-four": inMemory(({ year }) => changed(intersystemLeast[year], { copper: "4 AWG" })),
  "intersystem-busbar-early": placed(intersystemBusbarExists, true),
  "intersystem-busbar-not-followed": placed(busbarFollowsElectrodeConductor, false),
  "intersystem-busbar-followed-early": placed(busbarFollowsElectrodeConductor, true),
  "intersystem-excuse-forgotten": placed(intersystemExcusedWhereUnlikely, false),
  "intersystem-excuse-early": placed(intersystemExcusedWhereUnlikely, true),
};
