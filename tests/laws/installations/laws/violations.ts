import { compareInstallation, drawingOf, type Installation, type Violation } from "bondmil";
import type { Built } from "../built.js";
import { electrodesIn, endOf, listsOf } from "../electrodes.js";
import { type Electrode, ownersOf, racewaysOf } from "../parts.js";
import type { Law } from "./law.js";

/** What is forbidden in a drawing stands in its schedule, and nothing else of the kind. */
export const violationsHaveCauses: Law = {
  name: "what is forbidden is a violation, and nothing else is",
  breaches: (built) => {
    const wanted = causesOf(built).sort();
    const codes = new Set(judged);
    const said = built.schedule.violations
      .filter(({ code }) => codes.has(code))
      .flatMap(({ code, at }) => at.map((one) => `${code} ${one}`))
      .sort();
    return [
      ...wanted.filter((one) => !said.includes(one)).map((one) => `${one} is not said`),
      ...said.filter((one) => !wanted.includes(one)).map((one) => `${one} is said without cause`),
    ];
  },
};

/** Every violation names places, says what would be right, and is listed with a sheet and with the column of a comparison. */
export const violationsAreShown: Law = {
  name: "every violation has places and remedies, and is shown wherever the installation is",
  breaches: ({ installation, schedule }) => {
    const { violations } = schedule;
    const empty = violations.filter(({ at, remedies }) => at.length === 0 || remedies.length === 0);
    const sheets = violations.length === 0 ? [] : drawingOf(installation).sheets;
    const drawn = new Set(sheets.flatMap((one) => (one.violations ?? []).map(({ mark }) => mark)));
    const missing = violations.map((_, i) => `V${i + 1}`).filter((mark) => !drawn.has(mark));
    return [
      ...empty.map(({ code }) => `${code} without place or remedy`),
      ...(sheets.length === 0 ? [] : missing.map((mark) => `${mark} is on no sheet`)),
      ...inComparison(installation, violations),
    ];
  },
};

function inComparison(
  installation: Built["installation"],
  violations: readonly Violation[],
): readonly string[] {
  if (violations.length === 0) return [];
  const { variants } = compareInstallation({
    over: "editions",
    editions: [installation.code.year],
    installation,
  });
  const [only] = variants;
  const same = only?.refused === undefined && JSON.stringify(only?.violations) === JSON.stringify(violations);
  return same ? [] : ["a comparison has other violations"];
}

const judged: readonly Violation["code"][] = [
  "more-than-six-disconnects",
  "disconnects-share-a-compartment",
  "bonded-by-locknuts",
  "electrode-not-connected",
  "electrode-not-supplemented",
  "water-pipe-not-supplemented",
];

function causesOf({ installation }: Built): string[] {
  const { services = [], derivedSystems = [], buildings = [], code } = installation;
  const own = buildings.filter(({ onSingleBranchCircuit }) => !onSingleBranchCircuit);
  const outdoors = derivedSystems.filter(({ source }) => source.outdoors);
  return [
    ...services.flatMap(({ id, disconnects, housing, assembly, boxes = [], runs }) => {
      const count = disconnects.filter(({ designation }) => designation === "service-disconnect").length;
      const isShared = housing === "listed-assembly" && count > 1 && assembly?.compartments === "shared";
      const mayStay = code.year < "2020" || (code.year >= "2023" && assembly?.existing === true);
      return [
        ...(count > 6 ? [`more-than-six-disconnects ${id}`] : []),
        ...(isShared && !mayStay ? [`disconnects-share-a-compartment ${id}`] : []),
        ...[...boxes, ...disconnects]
          .filter(({ bondedBy }) => bondedBy === "locknuts")
          .map((one) => `bonded-by-locknuts ${one.id}`),
        ...runs
          .filter((run) => run.racewayJumpers === "locknuts" && racewaysOf(run).kind !== "nonmetallic")
          .map((one) => `bonded-by-locknuts ${one.id}`),
      ];
    }),
    ...[...services, ...own].flatMap(({ electrodesNotConnected = [] }) =>
      electrodesNotConnected
        .filter((one) => one.steelNotAccessible !== true)
        .map((one) => `electrode-not-connected ${one.id}`),
    ),
    ...unconnectedMetal(installation).map((id) => `electrode-not-connected ${id}`),
    ...[services, ...outdoors.map((one) => [one]), ...own.map((one) => [one])].flatMap((lists) => {
      const electrodes = electrodesOnce(installation, lists);
      const kinds = electrodes.map(({ kind }) => kind).filter((kind) => kind !== "metal-water-pipe");
      if (kinds.length === 0) return electrodes.map(({ id }) => `water-pipe-not-supplemented ${id}`);
      const rod = electrodes.find(({ kind }) => kind !== "metal-water-pipe");
      const isLone = kinds.length === 1 && /^(rod|pipe|plate)$/.test(kinds[0] ?? "");
      return isLone && (rod?.ohms ?? 26) > 25 ? [`electrode-not-supplemented ${rod?.id}`] : [];
    }),
  ];
}

/**
 * Metal that is said to be an electrode, of owners that have none of its kind, and that is named in no list and serves as no common conductor. A building
 * on one branch circuit has to have none.
 */
function unconnectedMetal(installation: Built["installation"]): readonly string[] {
  const { piping = [], structuralMetal = [], derivedSystems = [], buildings = [] } = installation;
  const excused = buildings.filter((one) => one.onSingleBranchCircuit).map(({ id }) => id);
  const named = listsOf(installation).flatMap(({ electrodes = [] }) => electrodes.map(endOf));
  const said = [
    ...piping.flatMap((one) => (one.kind === "water" ? [{ one, kind: "metal-water-pipe" }] : [])),
    ...structuralMetal.map((one) => ({ one, kind: "structural-metal" })),
  ].filter(
    ({ one }) =>
      one.isElectrode === true &&
      !named.includes(one.id) &&
      !ownersOf(one).every((owner) => excused.includes(owner)),
  );
  return said
    .filter(({ one, kind }) => {
      const owners = ownersOf(one);
      const lists = listsOf(installation).filter(({ id }) => owners.includes(id));
      const serves = derivedSystems.some(
        ({ id, commonElectrodeConductor: common }) => owners.includes(id) && common?.id === one.id,
      );
      return !serves && !lists.some(({ electrodes = [] }) => electrodes.some((other) => other.kind === kind));
    })
    .map(({ one }) => one.id);
}

/** The electrodes of some lists, each once; none where one stands in the list of another system, whose list then tells. */
function electrodesOnce(
  installation: Installation,
  lists: readonly Parameters<typeof electrodesIn>[1][],
): readonly Electrode[] {
  const named = lists.flatMap(({ electrodes = [] }) => electrodes.flatMap(({ id }) => id ?? []));
  const metal = [...(installation.piping ?? []), ...(installation.structuralMetal ?? [])].map(({ id }) => id);
  const all = lists.flatMap((one) => electrodesIn(installation, one));
  if (all.some(({ id }) => !named.includes(id) && !metal.includes(id))) return [];
  return [...new Map(all.map((one) => [one.id, one])).values()];
}
