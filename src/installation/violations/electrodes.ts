import type { EditionYear } from "../../edition/index.js";
import {
  electrodeSupplement,
  electrodesPresent,
  waterPipeSupplement,
} from "../../edition/tables/sections.generated.js";
import type { Installation } from "../document.js";
import { type DrawnElectrode, electrodesOf, metalKind } from "../electrodes-of.js";
import type { Violation } from "../violation.js";

/** Most ohms of a single rod, pipe or plate that needs no supplement (250.53(A)(2) Exception; 2008 250.56). */
export const mostOhms = 25;

const driven: readonly DrawnElectrode["kind"][] = ["rod", "pipe", "plate"];

/** Electrodes that lack a supplement, and those that are present and not used. */
export function electrodeViolations(installation: Installation): readonly Violation[] {
  const {
    code: { year },
    services = [],
    derivedSystems = [],
    buildings = [],
  } = installation;
  const own = buildings.filter(({ onSingleBranchCircuit }) => !onSingleBranchCircuit);
  // The electrodes of all services of a building are one system (250.58).
  const together = services.flatMap((one) => electrodesOf(installation, one));
  const supplements = (electrodes: readonly DrawnElectrode[]) =>
    supplementViolations(electrodesHere(installation, electrodes), year);
  const outdoors = derivedSystems.filter(({ source }) => source.outdoors);
  return [
    ...supplements(together),
    ...outdoors.flatMap((one) => supplements(electrodesOf(installation, one))),
    ...own.flatMap((one) => supplements(electrodesOf(installation, one))),
    ...[...services, ...own].flatMap((one) => unusedElectrodes(one, year)),
  ];
}

/**
 * Each electrode once; none where one of them stands in the list of another system, whose electrodes are then the ones to look at. Metal parts
 * stand in no such list.
 */
function electrodesHere(
  installation: Installation,
  electrodes: readonly DrawnElectrode[],
): readonly DrawnElectrode[] {
  const own = electrodes.filter(({ isFurther }) => isFurther !== true);
  const named = new Set(own.map(({ id }) => id));
  const further = new Map(electrodes.filter(({ id }) => !named.has(id)).map((one) => [one.id, one] as const));
  const isElsewhere = [...further.keys()].some((id) => metalKind(installation, id) === undefined);
  return isElsewhere ? [] : [...own, ...further.values()];
}

/** A water pipe needs another electrode beside it; a single rod, pipe or plate one that is no water pipe, or a record of 25 ohms or less. */
function supplementViolations(
  electrodes: readonly DrawnElectrode[],
  year: EditionYear,
): readonly Violation[] {
  const pipes = electrodes.filter(({ kind }) => kind === "metal-water-pipe");
  const others = electrodes.filter(({ kind }) => kind !== "metal-water-pipe");
  const [only, ...further] = others;
  if (only === undefined) {
    return pipes.length === 0
      ? []
      : [
          {
            code: "water-pipe-not-supplemented",
            ...waterPipeSupplement[year],
            at: pipes.map(({ id }) => id),
            remedies: [{ code: "electrode-of-another-kind" }, { code: "further-rod" }],
          },
        ];
  }
  const { id, kind, ohms } = only;
  if (further.length > 0 || !driven.includes(kind) || (ohms !== undefined && ohms <= mostOhms)) return [];
  return [
    {
      code: "electrode-not-supplemented",
      ...electrodeSupplement[year],
      at: [id],
      found: { kind, ...(ohms === undefined ? {} : { ohms }) },
      remedies: [
        { code: "further-rod" },
        { code: "electrode-of-another-kind" },
        ...(ohms === undefined ? [{ code: "record-of-25-ohms" } as const] : []),
      ],
    },
  ];
}

function unusedElectrodes(
  {
    electrodesNotConnected: unused = [],
  }: Pick<NonNullable<Installation["buildings"]>[number], "electrodesNotConnected">,
  year: EditionYear,
): readonly Violation[] {
  return unused
    .filter(({ steelNotAccessible }) => steelNotAccessible !== true)
    .map(({ id, kind }) => ({
      code: "electrode-not-connected",
      ...electrodesPresent[year],
      at: [id],
      found: { kind },
      remedies: [{ code: "connect-electrode" }],
    }));
}
