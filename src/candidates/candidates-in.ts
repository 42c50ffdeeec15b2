import type { ConductorColumn, StandardSize } from "../conductor/index.js";
import { poundsPer1000Feet } from "../engineering/metal-mass/metal-mass.js";
import type { RacewayKind } from "../engineering/raceway-fill/shape.generated.js";
import type { CausedConductor, SupplyCandidate } from "./candidate.js";
import { type Asked, supplyOf } from "./caused.js";
import type { LawfulSets } from "./lawful-sets.js";
import { type Filling, isMetal, type RacewayFinder } from "./raceways.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** A candidate before it was held against the others. */
export type Unmarked = Omit<SupplyCandidate, "unbeaten">;

/** Conductors that run the whole length of one raceway. */
interface Running {
  readonly size: StandardSize;
  readonly material: ConductorColumn;
  readonly count: number;
  readonly insulation: Filling["insulation"];
}

/** The candidates that lawful sets make: one for each kind of raceway that takes them. */
export function candidatesIn(
  question: SupplyCandidatesQuestion,
  sets: LawfulSets,
  asked: Asked,
  finder: RacewayFinder,
): readonly Unmarked[] {
  const kinds: readonly (RacewayKind | null)[] = question.raceways ?? [null];
  return kinds.flatMap((kind) => {
    const found = candidateIn(question, sets, asked, finder, kind);
    return found === null ? [] : [found];
  });
}

function candidateIn(
  question: SupplyCandidatesQuestion,
  sets: LawfulSets,
  asked: Asked,
  finder: RacewayFinder,
  kind: RacewayKind | null,
): Unmarked | null {
  const { material, size, carrying } = sets;
  const count = sets.sets / sets.setsInRaceway;
  const grounded = question.system.grounded === undefined ? null : asked.grounded(sets);
  const neutral = neutralOf(question, sets, grounded);
  const wire = wireOf(question, sets, asked, kind);
  const { insulation } = question.conductor;
  const running: readonly Running[] = [
    { size, material, count: question.system.ungrounded * sets.setsInRaceway, insulation },
    ...(neutral === null ? [] : [{ ...neutral, material, insulation }]),
    ...runningWire(question, wire),
  ];
  const bore = kind === null ? null : finder.find(kind, running, isNipple(question));
  if (kind !== null && bore === null) return null;
  return {
    material,
    sets: sets.sets,
    size,
    setsInRaceway: sets.setsInRaceway,
    supply: supplyOf(sets, sets.sets),
    raceways: kind === null || bore === null ? null : { kind, count, tradeSize: bore.tradeSize },
    ampacity: {
      amperes: carrying.each * sets.sets,
      each: carrying.each,
      limitedBy: carrying.limitedBy,
      terminations: carrying.terminations,
      nextRating: sets.nextRating,
    },
    smallestSize: size === sets.baseline,
    grounded: neutral === null ? null : { size: neutral.size, count: neutral.count * count },
    conductors: [
      ...(question.system.kind === "feeder" ? [] : asked.ofSupply(sets)),
      ...(grounded === null ? [] : [grounded]),
      ...(wire === null ? [] : [wire]),
    ],
    mass: massOf(running, count),
    terminations: 2 * count * running.reduce((sum, one) => sum + one.count, 0),
  };
}

/** The grounded conductors in one raceway: as large as the ungrounded ones, or what its load and the table require. */
function neutralOf(
  { system }: SupplyCandidatesQuestion,
  { size, setsInRaceway }: LawfulSets,
  grounded: CausedConductor | null,
): { readonly size: StandardSize; readonly count: number } | null {
  if (grounded === null) return null;
  const { outcome } = grounded;
  if (system.grounded?.loadAmperes === undefined || outcome.kind !== "conductor") {
    return { size, count: setsInRaceway };
  }
  return { size: outcome.size, count: outcome.quantity };
}

/** The conductor that bonds or grounds along one raceway; `null` where the code asks none of this kind. */
function wireOf(
  { system, bonding }: SupplyCandidatesQuestion,
  sets: LawfulSets,
  asked: Asked,
  kind: RacewayKind | null,
): CausedConductor | null {
  const metal = kind !== null && isMetal(kind);
  const serves = metal && bonding.metalRaceway === "serves";
  switch (system.kind) {
    case "service":
      return metal ? asked.supplySide(sets, false) : null;
    case "separately-derived":
      return asked.supplySide(sets, serves);
    case "feeder":
      return serves ? null : asked.equipmentGrounding(sets);
  }
}

/** Whether the raceways are nipples, which may be filled further (Chapter 9 note 4). */
function isNipple({ place }: SupplyCandidatesQuestion): boolean {
  return (place.racewayInches ?? Number.POSITIVE_INFINITY) <= longestNipple;
}

/** Inches. */
const longestNipple = 24;

/** A jumper at a service raceway joins it to the enclosure and does not run in it. */
function runningWire(
  { system, bonding }: SupplyCandidatesQuestion,
  wire: CausedConductor | null,
): readonly Running[] {
  if (system.kind === "service" || wire?.outcome.kind !== "conductor") return [];
  const { size, quantity } = wire.outcome;
  return [{ size, material: bonding.material, count: quantity, insulation: bonding.insulation ?? null }];
}

function massOf(running: readonly Running[], raceways: number): SupplyCandidate["mass"] {
  const of = (metal: ConductorColumn): number =>
    raceways *
    running
      .filter(({ material }) => material === metal)
      .reduce((sum, one) => sum + one.count * poundsPer1000Feet(one.size, metal), 0);
  return { copper: of("copper"), aluminum: of("aluminum") };
}
