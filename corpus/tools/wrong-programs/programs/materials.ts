import type { OtherMaterialRule } from "../../../../src/edition/policy.js";
import type { SupplyAreaTable } from "../../../../src/edition/supply-area-table.js";
import {
  areaOf,
  type Conductor,
  type ConductorColumn,
  columnOf,
  type Material,
  nextSizeUp,
  type Supply,
  type SupplySet,
} from "../../../../src/index.js";
import {
  type Ampacities,
  ampacities,
  type Change,
  inMemory,
  movedEnds,
  policies,
  ratingTable,
  supplyTables,
} from "../in-memory.js";
import { type AnyInput, type Asked, both, onInput, type Wrong, withSize } from "../program.js";
import {
  columnOfSupply,
  conductorFor,
  conductorsOf,
  mapConductors,
  mapSupplies,
  onSupplies,
} from "../supplies.js";

const tables = (change: (table: SupplyAreaTable) => Partial<SupplyAreaTable>): Wrong =>
  inMemory(({ year }) => supplyTables(year, change));

/** The last row of one column stops elsewhere. */
const lastEnd = (moved: ConductorColumn, end: number): Wrong =>
  tables((table) =>
    movedEnds(table, (through, column, place) =>
      column === moved && place === table.rows.length - 1 ? end : through,
    ),
  );

const enteredAs = (entered: ConductorColumn, asIf: ConductorColumn): Wrong =>
  tables((table) =>
    movedEnds(table, (through, column, _place, row) => (column === entered ? row.through[asIf] : through)),
  );

/** Both kinds of tables with one column printed in both. */
const readAs = ({ year }: Asked, read: ConductorColumn): readonly Change[] => {
  const alike = <T extends Readonly<Record<ConductorColumn, unknown>>>(row: T): T => ({
    ...row,
    copper: row[read],
    aluminum: row[read],
  });
  return [
    ...supplyTables(year, ({ rows, last }) => ({ rows: rows.map(alike), last: last && alike(last) })),
    ...ratingTable(year, alike),
  ];
};

const wanted = (input: AnyInput, is: (material: Material) => boolean): boolean =>
  input.conductor !== undefined && is(input.conductor.material);

const inMaterial = (supply: Supply, material: Material | undefined): Supply =>
  material === undefined ? supply : mapConductors(supply, (one) => ({ ...one, material }));

const isCopper = ({ material }: Conductor) => material === "copper";

const onMixed = (map: (supply: Supply, input: AnyInput) => Supply): Wrong =>
  onSupplies((supply, input) => (columnOfSupply(supply) === "mixed" ? map(supply, input) : supply));

const copperAlone = (supply: Supply): Supply => ({
  ...supply,
  sets: supply.sets.flatMap((set): readonly SupplySet[] => {
    if (!("phases" in set)) return isCopper(set) ? [set] : [];
    const phases = set.phases.map((phase) => (phase !== null && isCopper(phase) ? phase : null));
    return phases.some((phase) => phase !== null) ? [{ count: set.count, phases }] : [];
  }),
});

const asCopper = (material: Material): Material =>
  material === "copper-clad aluminum" ? "copper" : material;

const otherMaterial = (rule: OtherMaterialRule): Wrong =>
  inMemory(({ year }) => policies(year, () => ({ otherMaterial: rule })));

const matchedAt = (temperature: 60 | 90): Wrong => onInput((input) => ({ ...input, temperature }));

/** So that the largest conductor with at most an ampacity is found where the smallest with at least it is looked for. */
const nextLess = (_own: Ampacities, _size: unknown, next: Ampacities | undefined): Ampacities =>
  [0, 1, 2, 3, 4, 5].map((place) => {
    const amperes = next?.[place];
    return amperes == null ? null : amperes - 1;
  });

const severalFor = (supply: Supply, { conductor }: AnyInput, year: Asked["year"]): Supply => ({
  ...supply,
  sets: supply.sets.map((set) => {
    if ("phases" in set || conductor === undefined || !isCopper(set)) return set;
    if (columnOf(conductor.material) === "copper" || areaOf(set.size) < 1_250_000) return set;
    const size = conductorFor(year, 310, "aluminum");
    return size === null ? set : { count: set.count * 2, size, material: "aluminum" };
  }),
});

const twoSizesUp: Wrong = (right) => (asked) => {
  const { conductor } = asked.input;
  if (conductor === undefined || conductor.material === "copper") return right(asked);
  const copper = right({
    ...asked,
    input: { ...asked.input, conductor: { ...conductor, material: "copper" } },
  });
  const { outcome } = copper;
  if (outcome.kind !== "conductor") return copper;
  const one = nextSizeUp(outcome.size);
  return withSize((one && nextSizeUp(one)) ?? one ?? outcome.size);
};

/** Programs that take one material for another, or match them otherwise. */
export const ofMaterials: Readonly<Record<string, Wrong>> = {
  "copper-threshold-for-aluminum": tables((table) =>
    movedEnds(table, (through, column) => (column === "aluminum" ? Math.min(through, 1_100_000) : through)),
  ),
  "aluminum-threshold-for-copper": lastEnd("copper", 1_750_000),
  "supply-material-ignored": enteredAs("aluminum", "copper"),
  "copper-enters-as-aluminum": enteredAs("copper", "aluminum"),
  "sized-material-ignored": inMemory((asked) =>
    wanted(asked.input, (material) => material !== "copper") ? readAs(asked, "copper") : [],
  ),
  "copper-read-as-aluminum": inMemory((asked) =>
    wanted(asked.input, (material) => material === "copper") ? readAs(asked, "aluminum") : [],
  ),
  "sized-in-supply-material": inMemory((asked) => {
    const { supply } = asked.input;
    const column = supply === undefined ? "mixed" : columnOfSupply(supply);
    return column === "mixed" ? [] : readAs(asked, column);
  }),
  "supply-taken-in-sized-material": onSupplies((supply, input) =>
    input.supply === undefined ? supply : inMaterial(supply, input.conductor?.material),
  ),
  "aluminum-two-sizes-up": twoSizesUp,
  "copper-clad-as-copper": onInput((input) => ({
    ...mapSupplies(input, (supply) =>
      mapConductors(supply, (one) => ({ ...one, material: asCopper(one.material) })),
    ),
    ...(input.conductor && {
      conductor: { ...input.conductor, material: asCopper(input.conductor.material) },
    }),
  })),
  "mixed-by-first-entry": onMixed((supply) => inMaterial(supply, conductorsOf(supply)[0]?.material)),
  "mixed-aluminum-left-out": onMixed(copperAlone),
  "mixed-as-sized-material": onMixed((supply, input) => inMaterial(supply, input.conductor?.material)),
  "other-material-never-replaced": otherMaterial("never"),
  "other-material-always-replaced": otherMaterial("always"),
  "other-material-replaced-if-parallel": otherMaterial("parallel-above-threshold"),
  "assumed-at-60": matchedAt(60),
  "assumed-at-90": matchedAt(90),
  "assumed-by-conductance": inMemory(({ year }) =>
    ampacities(year, (_amperes, size) => {
      const copper = areaOf(size);
      const aluminum = copper * 0.61;
      return [copper, copper, copper, aluminum, aluminum, aluminum];
    }),
  ),
  "assumed-one-size-down": (right) => (asked) => {
    const { supply, conductor } = asked.input;
    if (supply === undefined || conductor === undefined) return right(asked);
    return oneSizeDown(right, asked, conductor.material);
  },
  "assumed-as-several": both((right) => (asked) => {
    const { supply } = asked.input;
    const input = supply && { ...asked.input, supply: severalFor(supply, asked.input, asked.year) };
    return right({ ...asked, ...(input && { input }) });
  }),
};

/** Only the column of the sized conductor is looked up one size lower. */
const oneSizeDown = (right: Parameters<Wrong>[0], asked: Asked, material: Material) => {
  const sized = columnOf(material) === "copper" ? [0, 1, 2] : [3, 4, 5];
  const lower: Wrong = inMemory(({ year }) =>
    ampacities(year, (own, size, next) => {
      const less = nextLess(own, size, next);
      return own.map((amperes, place) => (sized.includes(place) ? (less[place] ?? null) : amperes));
    }),
  );
  return lower(right)(asked);
};

/** Programs that look up a load one size lower. */
export const lowerAmpacities: Wrong = inMemory(({ year }) => ampacities(year, nextLess));

/** Programs that look up every ampacity in the 90 C columns. */
export const ampacitiesAt90: Wrong = inMemory(({ year }) =>
  ampacities(year, (own) => own.map((amperes, place) => own[place < 3 ? 2 : 5] ?? amperes)),
);
