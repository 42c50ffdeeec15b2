import type { ConductorColumn, StandardSize } from "../conductor/index.js";
import type { Evidence, Readings } from "../edition/index.js";
import { equipmentGroundingConductor } from "../roles/equipment-grounding-conductor/index.js";
import { groundedConductor } from "../roles/grounded-conductor/index.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import { mainBondingJumper } from "../roles/main-bonding-jumper/index.js";
import { supplySideBondingJumper } from "../roles/supply-side-bonding-jumper/index.js";
import { systemBondingJumper } from "../roles/system-bonding-jumper/index.js";
import type { SizingResult } from "../rules/result.js";
import type { Supply } from "../supply/index.js";
import type { CausedConductor } from "./candidate.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** Ungrounded conductors of a candidate, as far as they decide others. */
export interface Sets {
  readonly material: ConductorColumn;
  readonly size: StandardSize;
  readonly sets: number;
  readonly setsInRaceway: number;
  /** The smallest size that would be lawful in as many sets: from it an increase is counted (250.122(B)). */
  readonly baseline: StandardSize;
}

/** What the roles require for the conductors of one question; equal conductors are sized once. */
export interface Asked {
  /** Of all sets: the jumper of the system, and its electrode conductor. */
  ofSupply(sets: Sets): readonly CausedConductor[];
  /** The jumper on the supply side of one raceway; `serves` where the raceway takes its place. */
  supplySide(sets: Sets, serves: boolean): CausedConductor;
  /** The equipment grounding conductor in one raceway. */
  equipmentGrounding(sets: Sets): CausedConductor;
  /** The grounded conductor in one raceway, by the fault path and by its load. */
  grounded(sets: Sets): CausedConductor;
  /** Readings that would change one of them. */
  readonly readings: Set<keyof Readings>;
  /** Levels of evidence that they rest on. */
  readonly evidence: Set<Evidence>;
}

/** Prepares the roles for a question. */
export function askRoles(question: SupplyCandidatesQuestion, device: number): Asked {
  const { code, system, bonding } = question;
  const conductor = { material: bonding.material };
  const kind = system.kind === "separately-derived" ? "separately-derived" : "service";
  const readings = new Set<keyof Readings>();
  const evidence = new Set<Evidence>();
  const known = new Map<string, Omit<CausedConductor, "count">>();

  const once = (key: string, count: number, ask: () => SizingResult): CausedConductor => {
    const found = known.get(key) ?? answer(ask());
    known.set(key, found);
    return { ...found, count };
  };
  const answer = (result: SizingResult): Omit<CausedConductor, "count"> => {
    for (const { id } of result.readings) readings.add(id);
    evidence.add(result.evidence);
    const { role, outcome, requiredArea } = result;
    return { role, outcome, requiredArea };
  };
  const racewaysOf = ({ sets, setsInRaceway }: Sets): number => sets / setsInRaceway;
  const inEach = ({ material, size, setsInRaceway }: Sets): string => `${material} ${size} ${setsInRaceway}`;
  const inAll = ({ material, size, sets }: Sets): string => `${material} ${size} ${sets}`;
  const scopeOf = (sets: Sets): "raceway" | "single-raceway" =>
    racewaysOf(sets) > 1 ? "raceway" : "single-raceway";

  return {
    readings,
    evidence,
    ofSupply: (sets) => {
      const supply = supplyOf(sets, sets.sets);
      const key = inAll(sets);
      const jumper = kind === "service" ? mainBondingJumper : systemBondingJumper;
      const { electrodes = [{ kind: "metal-water-pipe" as const }], grounded } = system;
      const ungrounded = grounded === undefined;
      return [
        ...(ungrounded ? [] : [once(`jumper ${key}`, 1, () => jumper.decide({ code, supply, conductor }))]),
        once(`electrode ${key}`, 1, () =>
          groundingElectrodeConductor.decide({
            code,
            system: kind,
            supply,
            conductor,
            electrodes,
            ungrounded,
          }),
        ),
      ];
    },
    supplySide: (sets, serves) => {
      const count = racewaysOf(sets);
      const supply = supplyOf(sets, sets.setsInRaceway);
      return once(`supply side ${inEach(sets)} ${scopeOf(sets)} ${serves}`, count, () =>
        supplySideBondingJumper.decide({
          code,
          system: kind,
          supply,
          conductor,
          scope: scopeOf(sets),
          ...(serves && { instead: "nonflexible-metal-raceway" as const }),
          ungrounded: system.grounded === undefined,
        }),
      );
    },
    equipmentGrounding: (sets) => {
      const count = racewaysOf(sets);
      const conductors = supplyOf(sets, sets.sets);
      const baseline = supplyOf({ ...sets, size: sets.baseline }, sets.sets);
      const increasedFrom = { conductors: baseline, reason: "other" as const };
      const { feederDevice } = question;
      const own = { amperes: device };
      const ahead = feederDevice === undefined ? own : { aheadOfFeeder: { amperes: feederDevice } };
      return once(`grounding ${inAll(sets)} ${count > 1} ${sets.baseline}`, count, () =>
        equipmentGroundingConductor.decide({
          code,
          conductor,
          circuits: [{ device: ahead, conductors, increasedFrom }],
          run: { kind: count > 1 ? "parallel-raceways" : "single" },
        }),
      );
    },
    grounded: (sets) => {
      const count = racewaysOf(sets);
      const supply = supplyOf(sets, sets.setsInRaceway);
      const total = system.grounded?.loadAmperes;
      const { jumperAt = "enclosure" } = system;
      const share = total === undefined ? undefined : total / count;
      return once(`grounded ${inEach(sets)} ${scopeOf(sets)} ${share}`, count, () =>
        groundedConductor.decide({
          code,
          system: kind,
          supply,
          conductor: { material: sets.material },
          scope: count > 1 ? "raceway" : "all",
          ...(kind === "separately-derived" && { jumperAt }),
          ...(system.kind === "feeder" && { feederDeviceAmperes: device }),
          ...(share !== undefined && { load: { amperes: share, circuitAmperes: device } }),
        }),
      );
    },
  };
}

/** So many sets of the conductors, as a role takes them. */
export function supplyOf({ material, size }: Pick<Sets, "material" | "size">, count: number): Supply {
  return { sets: [{ count, size, material }] };
}
