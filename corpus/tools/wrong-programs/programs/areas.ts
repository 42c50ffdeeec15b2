import { areaOf, type ConductorSize, columnOf, type Supply, standardSizes } from "../../../../src/index.js";
import { type Change, inMemory, movedEnds, supplyTables } from "../in-memory.js";
import { type Asked, type Decided, type Wrong, withSize } from "../program.js";
import { columnOfSupply, conductorsOf, sumOf } from "../supplies.js";

/** Areas of its own that a program has, in a unit of its own. */
type OwnArea = (size: ConductorSize) => number;

const sumBy = (supply: Supply, own: OwnArea): number => sumOf(supply, ({ size }) => own(size));

const largest: ConductorSize = "2000 kcmil";
const smallestBy = (own: OwnArea, area: number): ConductorSize =>
  standardSizes.find((size) => own(size) >= area) ?? largest;

const sizeWith = (area: number) => standardSizes.find((size) => areaOf(size) === area);

/** Rows stop where a comparison of the program's own areas would have them stop for this very supply. */
const ownRows = (
  own: OwnArea,
  endsAreOwn: boolean,
  { year, input: { supply } }: Asked,
): readonly Change[] => {
  if (supply === undefined) return [];
  const sum = sumOf(supply);
  const ownSum = sumBy(supply, own);
  const isWithin = (through: number): boolean => {
    const named = endsAreOwn ? sizeWith(through) : undefined;
    return ownSum <= (named === undefined ? through : own(named));
  };
  return supplyTables(year, (table) => movedEnds(table, (through) => (isWithin(through) ? sum : sum - 1)));
};

/** Unlike phases and materials that differ are left as they are: other mistakes are about them. */
const isPlain = ({ input: { supply, conductor } }: Asked): boolean =>
  supply !== undefined &&
  conductor !== undefined &&
  columnOfSupply(supply) === columnOf(conductor.material) &&
  conductorsOf(supply).length === supply.sets.length;

const shared = (own: OwnArea, { steps, governs }: Decided, { input }: Asked): ConductorSize | null => {
  if (governs === "one-eighth" && input.supply !== undefined)
    return smallestBy(own, sumBy(input.supply, own) / 8);
  const [circuit] = input.circuits ?? [];
  const row = steps.find(({ kind }) => kind === "rating-row");
  if (governs !== "increase" || row?.kind !== "rating-row") return null;
  if (circuit?.conductors === undefined || circuit.increasedFrom === undefined) return null;
  const baseline = sumBy(circuit.increasedFrom.conductors, own);
  return smallestBy(own, (own(row.size) * sumBy(circuit.conductors, own)) / baseline);
};

const byAreas = (own: OwnArea, endsAreOwn: boolean): Wrong => {
  const rows = inMemory((asked) => (isPlain(asked) ? ownRows(own, endsAreOwn, asked) : []));
  return (right) => (asked) => {
    const decided = rows(right)(asked);
    if (!isPlain(asked) && asked.input.circuits === undefined) return decided;
    const size = decided.outcome.kind === "conductor" ? shared(own, decided, asked) : null;
    return size === null ? decided : withSize(size);
  };
};

/** The number of a gauge, 1/0 being 0 and 4/0 being -3; none of a size in kcmil. */
const gaugeOf = (size: ConductorSize): number | null => {
  const [, aughts] = /^(\d)\/0 AWG$/.exec(size) ?? [];
  if (aughts !== undefined) return 1 - Number(aughts);
  const [, gauge] = /^(\d+) AWG$/.exec(size) ?? [];
  return gauge === undefined ? null : Number(gauge);
};

/** 5 mils at 36 AWG, 460 mils at 4/0 AWG, in 39 equal ratios. */
const byFormula: OwnArea = (size) => {
  const gauge = gaugeOf(size);
  return gauge === null ? areaOf(size) : (5 * 92 ** ((36 - gauge) / 39)) ** 2;
};

/** Strands with gaps, and insulation: roughly, for a program that is wrong anyway. */
const overInsulation: OwnArea = (size) => (1.15 * Math.sqrt(areaOf(size)) + 110) ** 2;

const inKcmil: OwnArea = (size) => Math.round(areaOf(size) / 1000);
const inMm2: OwnArea = (size) => Math.round(areaOf(size) * 5.067_075e-4);

/** Programs that have other areas than those of Chapter 9 Table 8. */
export const ofAreas: Readonly<Record<string, Wrong>> = {
  "exact-gauge-geometry": byAreas(byFormula, false),
  "area-over-the-insulation": byAreas(overInsulation, false),
  "areas-in-rounded-kcmil": byAreas(inKcmil, true),
  "areas-in-rounded-mm2": byAreas(inMm2, true),
};
