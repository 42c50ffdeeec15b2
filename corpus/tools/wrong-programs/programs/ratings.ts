import { buildingPipingGoesBy } from "../../../../src/edition/tables/placements.generated.js";
import {
  areaOf,
  type ConductorSize,
  mainBondingJumper,
  type ProtectedCircuit,
  type Supply,
  size,
  standardSizes,
} from "../../../../src/index.js";
import { changed, inMemory, ratingPolicies, ratingRows, ratingTable } from "../in-memory.js";
import {
  type AnyInput,
  type Asked,
  type Decided,
  onDecided,
  onInput,
  type Wrong,
  withArea,
} from "../program.js";
import { amperesOf, conductorFor, conductorsOf, countSets, largestOf, setsOf, sumOf } from "../supplies.js";

type Device = ProtectedCircuit["device"];

const ratingOf = (device: Device): number => {
  if ("aheadOfFeeder" in device) return device.aheadOfFeeder.amperes;
  if (!("motor" in device)) return device.amperes;
  return "deviceAmperes" in device.motor ? device.motor.deviceAmperes : device.motor.dualElementFuseAmperes;
};

/** Every rating in an input is another. */
const onRatings = (map: (amperes: number, asked: Asked) => number): Wrong =>
  onInput((input, asked) => {
    const mapped = (key: "deviceAmperes" | "feederDeviceAmperes" | "rebondedAtBuildingWithDevice") => {
      const { [key]: amperes } = input;
      return amperes === undefined ? {} : { [key]: map(amperes, asked) };
    };
    return {
      ...input,
      ...mapped("deviceAmperes"),
      ...mapped("feederDeviceAmperes"),
      ...mapped("rebondedAtBuildingWithDevice"),
      ...(input.circuits && {
        circuits: input.circuits.map((circuit) => ({
          ...circuit,
          device: { amperes: map(ratingOf(circuit.device), asked) },
        })),
      }),
    };
  });

const throughOf = ({ year }: Asked): readonly number[] => ratingRows(year).map(({ through }) => through);

const rowBelow = (amperes: number, asked: Asked): number =>
  throughOf(asked)
    .filter((through) => through <= amperes)
    .at(-1) ?? amperes;

const nearestRow = (amperes: number, asked: Asked): number => {
  const below = rowBelow(amperes, asked);
  const above = throughOf(asked).find((through) => through >= amperes) ?? amperes;
  return amperes - below < above - amperes ? below : above;
};

const edgeUp = (amperes: number, asked: Asked): number =>
  throughOf(asked).slice(0, -1).includes(amperes) ? amperes + 1 : amperes;

const onCircuits = (
  map: (circuits: readonly ProtectedCircuit[], asked: Asked) => readonly ProtectedCircuit[],
) => onInput((input, asked) => (input.circuits ? { ...input, circuits: map(input.circuits, asked) } : input));

const eachCircuit = (map: (circuit: ProtectedCircuit, asked: Asked) => ProtectedCircuit): Wrong =>
  onCircuits((circuits, asked) => circuits.map((circuit) => map(circuit, asked)));

const withoutIncrease = ({ increasedFrom: _, ...circuit }: ProtectedCircuit): ProtectedCircuit => circuit;

/** The baseline of an increase is another. */
const onBaseline = (
  map: (baseline: Supply, installed: Supply, circuit: ProtectedCircuit, asked: Asked) => Supply,
) =>
  eachCircuit((circuit, asked) => {
    const { increasedFrom, conductors } = circuit;
    if (increasedFrom === undefined || conductors === undefined) return circuit;
    const baseline = map(increasedFrom.conductors, conductors, circuit, asked);
    return { ...circuit, increasedFrom: { ...increasedFrom, conductors: baseline } };
  });

/** The ratio of an increase is another, where an increase decides. */
const ofIncrease = (
  area: (step: { area: number; ratio: number }, circuit: ProtectedCircuit) => number | null,
) =>
  onDecided((decided, { input: { circuits = [] } }) => {
    const step = decided.steps.find(({ kind }) => kind === "increase");
    const [circuit] = circuits;
    if (decided.governs !== "increase" || step?.kind !== "increase" || circuit === undefined) return decided;
    const other = area({ area: step.area, ratio: step.installedArea / step.baselineArea }, circuit);
    return other === null ? decided : withArea(decided, other);
  });

const stepsBetween = ({ conductors, increasedFrom }: ProtectedCircuit): number | null => {
  if (conductors === undefined || increasedFrom === undefined) return null;
  if (countSets(conductors) !== countSets(increasedFrom.conductors)) return null;
  const place = (supply: Supply) =>
    (standardSizes as readonly string[]).indexOf(largestOf(conductorsOf(supply)).size);
  return place(conductors) - place(increasedFrom.conductors);
};

const stepped = (area: number, steps: number): number => {
  const place = standardSizes.findIndex((one) => areaOf(one) >= area) + steps;
  return areaOf(standardSizes[Math.min(place, standardSizes.length - 1)] ?? "18 AWG");
};

const nearestSize = (area: number): ConductorSize =>
  standardSizes.reduce((so, one) => (Math.abs(areaOf(one) - area) < Math.abs(areaOf(so) - area) ? one : so));

const decrease = onDecided((decided, { input: { circuits = [] } }) => {
  const [circuit] = circuits;
  if (circuit?.conductors === undefined || circuit.increasedFrom === undefined) return decided;
  const ratio = sumOf(circuit.conductors) / sumOf(circuit.increasedFrom.conductors);
  return ratio < 1 ? withArea(decided, decided.requiredArea * ratio) : decided;
});

/** A circuit goes by what its conductors carry, where its device is of one kind. */
const byConductors = (kind: "motor" | "aheadOfFeeder"): Wrong =>
  eachCircuit((circuit, { year }) => {
    if (!(kind in circuit.device) || circuit.conductors === undefined) return circuit;
    return { ...circuit, device: { amperes: amperesOf(circuit.conductors, year) || 1 } };
  });

const oneOf = (
  right: (asked: Asked) => Decided,
  asked: Asked,
  better: (a: Decided, b: Decided) => boolean,
) => {
  const { circuits } = asked.input;
  if (circuits === undefined) return right(asked);
  const each = circuits.map((circuit) => right({ ...asked, input: { ...asked.input, circuits: [circuit] } }));
  return each.reduce((so, one) => (better(one, so) ? one : so));
};

/** By the conductors of the circuit, or the ones that its rating requires. */
const bySupply = ({ year, input }: Asked): Decided | null => {
  const { circuits, conductor, deviceAmperes, supply } = input;
  if (conductor === undefined) return null;
  const amperes = circuits?.[0] === undefined ? deviceAmperes : ratingOf(circuits[0].device);
  const size75 = amperes === undefined ? null : conductorFor(year, amperes, "copper");
  const required = size75 === null ? undefined : setsOf(1, { size: size75, material: "copper" });
  const ungrounded = circuits?.[0]?.conductors ?? supply ?? required;
  return ungrounded === undefined
    ? null
    : size(mainBondingJumper, { code: { year }, supply: ungrounded, conductor });
};

const isBuilding = ({ system }: AnyInput) => system === "building";
const goesBy = (by: "device" | "conductors"): Wrong =>
  inMemory(({ year }) => changed(buildingPipingGoesBy, { [year]: by }));

/** Programs that take the rating, the increase or the circuits otherwise. */
export const ofRatings: Readonly<Record<string, Wrong>> = {
  "rating-row-below": onRatings(rowBelow),
  "rating-nearest-row": onRatings(nearestRow),
  "rating-edge-goes-up": onRatings(edgeUp),
  "rating-column-neighbor": inMemory(({ year }) =>
    ratingTable(year, (row, place, rows) => ({ ...(rows[place - 1] ?? row), through: row.through })),
  ),
  "conductors-for-rating": onDecided((decided, asked) => {
    const hasDevice = asked.input.circuits !== undefined || asked.input.deviceAmperes !== undefined;
    return (hasDevice && !isBuilding(asked.input) ? bySupply(asked) : null) ?? decided;
  }),
  "increase-forgotten": eachCircuit(withoutIncrease),
  "increase-from-the-rating": onBaseline((baseline, installed, { device }, { year }) => {
    const count = countSets(installed);
    const { material } = largestOf(conductorsOf(installed));
    const least = conductorFor(year, ratingOf(device) / count, material);
    return least === null ? baseline : setsOf(count, { size: least, material });
  }),
  "increase-of-one-conductor": onBaseline((baseline, installed) =>
    setsOf(countSets(installed), largestOf(conductorsOf(baseline))),
  ),
  "increase-of-every-reason": inMemory(({ year }) => ratingPolicies(year, () => ({ increase: "any" }))),
  "increase-reason-early": inMemory(({ year }) =>
    ratingPolicies(year, () => ({ increase: "not-for-temperature-or-number" })),
  ),
  "increase-by-steps": ofIncrease(({ area }, circuit) => {
    const steps = stepsBetween(circuit);
    return steps === null ? null : stepped(area, steps);
  }),
  "increase-ratio-to-one-decimal": ofIncrease(({ area, ratio }) => (area * Math.round(ratio * 10)) / 10),
  "increase-ratio-rounded-up": ofIncrease(({ area, ratio }) => (area * Math.ceil(ratio * 10)) / 10),
  "increase-to-nearest-size": ofIncrease(({ area, ratio }) => areaOf(nearestSize(area * ratio))),
  "decrease-counted": decrease,
  "divided-among-raceways": onDecided((decided, { input: { circuits = [] } }) => {
    const conductors = circuits[0]?.conductors;
    return conductors === undefined
      ? decided
      : withArea(decided, decided.requiredArea / countSets(conductors));
  }),
  "ratings-summed": onCircuits((circuits) => {
    const amperes = circuits.reduce((sum, { device }) => sum + ratingOf(device), 0);
    return circuits.length > 1 ? [{ device: { amperes } }] : circuits;
  }),
  "first-circuit-only": onCircuits((circuits) => circuits.slice(0, 1)),
  "smallest-circuit-decides": (right) => (asked) =>
    oneOf(right, asked, (one, so) => one.requiredArea < so.requiredArea),
  "largest-device-decides": onCircuits((circuits) => {
    const largest = Math.max(...circuits.map(({ device }) => ratingOf(device)));
    return circuits.filter(({ device }) => ratingOf(device) === largest);
  }),
  "tap-by-its-own-conductors": byConductors("aheadOfFeeder"),
  "motor-by-its-conductors": byConductors("motor"),
  "tray-floor-forgotten": onInput(({ run: _, ...input }) => input),
  "building-piping-by-device-early": goesBy("device"),
  "building-piping-by-conductors-late": goesBy("conductors"),
};
