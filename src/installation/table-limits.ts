import { ampacityIn, smallestConductorIn, terminationColumn } from "../ampacity/index.js";
import { areaOf, columnOf, type Material } from "../conductor/index.js";
import type { Code, EditionYear } from "../edition/index.js";
import { ringElectrodeLeast } from "../edition/tables/named-sizes.generated.js";
import { intersystemBusbarExists } from "../edition/tables/placements.generated.js";
import { mostSets } from "../input/limits.js";
import { ratingOf } from "../rules/protected-circuit.js";
import { largestRating } from "../rules/rating-table.js";
import { carriesMoreThan, mostControlTransformerAmperes } from "../rules/small-supplies.js";
import { requiredForLoad, type Supply, type SupplySet } from "../supply/index.js";
import { conductorsOf, countSets } from "../supply/sums.js";
import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { inMaterialsOf } from "./materials-of.js";
import { type DrawnSupply, joined, supplyOf } from "./supplies.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];

/** What the tables of the edition have no row, no conductor or no word for. */
export function tableFaults(installation: Installation): readonly Fault[] {
  const { code } = installation;
  const { services = [], derivedSystems = [], generators = [], circuits = [], buildings = [] } = installation;
  const rating = (amperes: number | undefined, keys: Keys): readonly Fault[] =>
    ratingFaults(code, amperes, keys);
  return [
    ...services.flatMap((one, i) => systemFaults(one, installation, code, ["services", i])),
    ...derivedSystems.flatMap((one, i) => [
      ...systemFaults(one, installation, code, ["derivedSystems", i]),
      ...controlTransformerFaults(one, code, ["derivedSystems", i]),
      ...rating(one.source.deviceAmperes, ["derivedSystems", i, "source", "deviceAmperes"]),
    ]),
    ...[...generators.entries()].flatMap(([i, { groundedConductor: one, raceways }]) =>
      loadFaults(one?.load, raceways, installation, ["generators", i]),
    ),
    ...[...circuits.entries()].flatMap(([i, { groundedConductor: one, raceways }]) =>
      loadFaults(one?.load, raceways, installation, ["circuits", i]),
    ),
    ...generators.flatMap(({ supply, deviceAmperes }, i) => [
      ...supplyFaults(supply, code, ["generators", i, "supply"]),
      ...rating(deviceAmperes, ["generators", i, "deviceAmperes"]),
    ]),
    ...circuits.flatMap(({ device, conductors, increasedFrom }, i) => [
      ...rating(ratingOf(device), ["circuits", i, "device"]),
      ...(conductors ? setFaults(conductors.sets, ["circuits", i, "conductors", "sets"]) : []),
      ...(increasedFrom
        ? setFaults(increasedFrom.conductors.sets, ["circuits", i, "increasedFrom", "conductors", "sets"])
        : []),
    ]),
    ...buildings.flatMap(({ electrodes }, i) => ringFaults(electrodes, code, ["buildings", i])),
    ...(installation.piping ?? []).flatMap((one, i) =>
      "deviceAmperes" in one ? rating(one.deviceAmperes, ["piping", i, "deviceAmperes"]) : [],
    ),
    ...(installation.intersystem ?? []).flatMap(({ termination }, i) =>
      termination !== "busbar" || intersystemBusbarExists[code.year]
        ? []
        : [
            fault(
              "unknown-value",
              ["intersystem", i, "termination"],
              '"on-enclosure" or "apart"',
              termination,
              `the ${code.year} edition knows no busbar here`,
            ),
          ],
    ),
  ];
}

function systemFaults(
  system: Service | Derived,
  installation: Installation,
  code: Code,
  at: Keys,
): readonly Fault[] {
  const { runs, impedance, electrodes, grounding } = system;
  const own = inMaterialsOf({ installation }, system);
  const material = own.installation.materials.groundedConductors;
  const materialOf = (run: Service["runs"][number]): Material =>
    inMaterialsOf(own, run).installation.materials.groundedConductors;
  const wrong = runs.flatMap(({ supply }, i) => supplyFaults(supply, code, [...at, "runs", i, "supply"]));
  const drawn = runs.flatMap(({ supply }) => ("sets" in supply ? supply.sets : []));
  return [
    ...wrong,
    ...(wrong.length > 0
      ? []
      : [...unlikePhases(drawn, [...at, "runs"]), ...tooManySets(drawn, [...at, "runs"])]),
    ...runs.flatMap(({ load, ...run }, i) => {
      if (load === undefined) return [];
      const { count } = run.raceways ?? { count: 1 };
      const column = terminationColumn(load.circuitAmperes, load.listedFor75 ?? false);
      const keys = [...at, "runs", i, "load", "amperes"];
      return currentFaults(code, load.amperes, count, materialOf(run), column, keys);
    }),
    ...(grounding === "grounded-phase" && wrong.length === 0
      ? phaseFaults(system, materialOf, code, at)
      : []),
    ...(impedance
      ? currentFaults(code, impedance.amperes, 1, material, 60, [...at, "impedance", "amperes"])
      : []),
    ...ringFaults(electrodes, code, at),
  ];
}

/** The load of the grounded conductor of a feeder that none carries, and a rating of its circuit that the table does not have. */
function loadFaults(
  load: Service["runs"][number]["load"],
  raceways: number | undefined,
  { code, materials }: Installation,
  at: Keys,
): readonly Fault[] {
  if (load === undefined) return [];
  const keys = [...at, "groundedConductor", "load"];
  const column = terminationColumn(load.circuitAmperes, load.listedFor75 ?? false);
  return [
    ...currentFaults(code, load.amperes, raceways ?? 1, materials.groundedConductors, column, [
      ...keys,
      "amperes",
    ]),
    ...ratingFaults(code, load.circuitAmperes, [...keys, "circuitAmperes"]),
  ];
}

/** Conductors that no transformer of at most 1000 VA has. */
function controlTransformerFaults({ source, runs }: Derived, { year }: Code, at: Keys): readonly Fault[] {
  if (source.controlTransformer !== true || source.kind !== "transformer") return [];
  const most = mostControlTransformerAmperes;
  const supplies = runs.map(({ supply }) => knownSupply(supply, year));
  const known = supplies.filter((one) => one !== null);
  if (known.length === 0 || !carriesMoreThan(joined(known), most, year)) return [];
  const expected = `conductors for at most ${most} A together, of a control transformer`;
  const advice = "a transformer of at most 1000 VA gives no such current; leave controlTransformer out";
  return [fault("out-of-range", [...at, "runs"], expected, runs, advice)];
}

/** The conductors of a supply; `null` where the load asks more than there is, or they are yet to be chosen. */
function knownSupply({ sets, forLoad }: DrawnSupply, year: EditionYear): Supply | null {
  if (sets !== undefined) return { sets };
  return forLoad === undefined ? null : requiredForLoad(year, forLoad);
}

function supplyFaults(supply: DrawnSupply, { year }: Code, keys: Keys): readonly Fault[] {
  if (supply.sets !== undefined) return setFaults(supply.sets, [...keys, "sets"]);
  if (supply.toChoose !== undefined) return [notChosen(keys)];
  const { forLoad } = supply;
  const { amperes, circuitAmperes = amperes } = forLoad;
  if (circuitAmperes < amperes) {
    const least = `a circuit of at least ${amperes} A, the load that it carries`;
    const advice = "give the rating of the device, or the load that it is for";
    return [fault("out-of-range", [...keys, "forLoad", "circuitAmperes"], least, circuitAmperes, advice)];
  }
  if (requiredForLoad(year, forLoad) !== null) return [];
  const expected = `a number of sets that carry ${forLoad.amperes} A`;
  const advice = "the ampacity table has no such conductors, of at least 1/0 AWG if in parallel";
  return [fault("out-of-range", [...keys, "forLoad", "sets"], expected, forLoad.sets, advice)];
}

/** The conductors of a run are yet to be chosen, so that nothing can be sized by them. */
function notChosen(keys: Keys): Fault {
  const expected = "the ungrounded conductors, sets that are chosen";
  const advice = "choose one of the candidates that candidatesOf gives for this run, and write its sets here";
  return fault("missing", [...keys, "sets"], expected, undefined, advice);
}

function setFaults(sets: readonly SupplySet[], keys: Keys): readonly Fault[] {
  return [
    ...sets.flatMap((set, i) =>
      "phases" in set && set.phases.every((phase) => phase === null)
        ? [
            fault(
              "empty-list",
              [...keys, i, "phases"],
              "a conductor in at least one phase",
              set.phases,
              "leave the set out if it has none",
            ),
          ]
        : [],
    ),
    ...unlikePhases(sets, keys),
    ...tooManySets(sets, keys),
  ];
}

function tooManySets(sets: readonly SupplySet[], keys: Keys): readonly Fault[] {
  const count = Math.max(countSets({ sets }), sets.length);
  if (count <= mostSets) return [];
  return [fault("out-of-range", keys, `at most ${mostSets} sets together`, count, "divide the supply")];
}

/** Sets that are added phase by phase list the same phases. */
function unlikePhases(sets: readonly SupplySet[], keys: Keys): readonly Fault[] {
  const lengths = new Set(sets.flatMap((set) => ("phases" in set ? [set.phases.length] : [])));
  if (lengths.size <= 1) return [];
  const expected = "the same number of phases in every set";
  const advice = "list the phases of every set in the same order, with null where a set leaves a phase out";
  return [fault("unlike-phases", keys, expected, sets, advice)];
}

function currentFaults(
  { year }: Code,
  amperes: number,
  parts: number,
  material: Material,
  column: Parameters<typeof smallestConductorIn>[3],
  keys: Keys,
): readonly Fault[] {
  if (smallestConductorIn(year, amperes / parts, material, column) !== null) return [];
  const expected = "a current that one conductor of the ampacity table can carry";
  return [fault("out-of-range", keys, expected, amperes, "divide it over more raceways")];
}

/** The grounded conductor of a corner-grounded delta, of another material, must find a conductor of the same ampacity. */
function phaseFaults(
  { runs }: Service | Derived,
  materialOf: (run: Service["runs"][number]) => Material,
  { year }: Code,
  at: Keys,
): readonly Fault[] {
  return runs.flatMap((run, i) => {
    const { supply } = run;
    const material = materialOf(run);
    const others = conductorsOf(supplyOf(supply, year)).filter(
      (one) => columnOf(one.material) !== columnOf(material),
    );
    const lost = others.find((one) => {
      const { amperes } = ampacityIn(year, one.size, one.material, 75);
      return amperes !== null && smallestConductorIn(year, amperes, material, 75) === null;
    });
    if (lost === undefined) return [];
    const expected = `conductors that one of ${material} can equal`;
    const advice =
      "the grounded conductor of a corner-grounded delta carries as much as the others; choose their material for it";
    return [fault("out-of-range", [...at, "runs", i, "supply"], expected, lost.size, advice)];
  });
}

function ringFaults(electrodes: Service["electrodes"], { year }: Code, at: Keys): readonly Fault[] {
  const least = ringElectrodeLeast[year].copper;
  return (electrodes ?? []).flatMap(({ ringConductor }, i) =>
    ringConductor === undefined || areaOf(ringConductor) >= areaOf(least)
      ? []
      : [
          fault(
            "out-of-range",
            [...at, "electrodes", i, "ringConductor"],
            `a ring conductor of at least ${least}`,
            ringConductor,
            "a smaller one is no electrode",
          ),
        ],
  );
}

function ratingFaults(code: Code, amperes: number | undefined, keys: Keys): readonly Fault[] {
  const largest = largestRating(code);
  if (amperes === undefined || amperes <= largest) return [];
  const advice = "the table has no row for a larger device";
  return [fault("out-of-range", keys, `at most ${largest} A, where the table ends`, amperes, advice)];
}
