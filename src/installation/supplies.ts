import type { EditionYear } from "../edition/index.js";
import { requiredForLoad, type Supply, type SupplySet } from "../supply/index.js";
import type { Installation } from "./document.js";

/** A run of an installation. */
export type DrawnRun = NonNullable<Installation["services"]>[number]["runs"][number];

/** A supply as an installation gives it: conductors, or the load that they are yet to be chosen for. */
export type DrawnSupply = DrawnRun["supply"];

/** The supply that an installation describes; for a load without conductors, those that it requires in so many sets. */
export function supplyOf(drawn: DrawnSupply, year: EditionYear): Supply {
  if (drawn.sets !== undefined) return drawn;
  const required = drawn.forLoad === undefined ? null : requiredForLoad(year, drawn.forLoad);
  if (required === null) throw new TypeError("an installation is read before it is built from");
  return required;
}

/** How many sets a supply lists, entry by entry; none where its conductors are yet to be chosen. */
export function setCountsOf({ sets, forLoad }: DrawnSupply): readonly number[] {
  if (sets !== undefined) return sets.map(({ count }) => count);
  return forLoad === undefined ? [] : [forLoad.sets];
}

/** All sets of several runs as one supply. */
export function joined(supplies: readonly Supply[]): Supply {
  const [only] = supplies;
  if (only !== undefined && supplies.length === 1) return only;
  const required = supplies.flatMap(({ requiredForAmperes }) => requiredForAmperes ?? []);
  const sets = supplies.flatMap((supply) => supply.sets);
  return required.length === 0
    ? { sets }
    : { sets, requiredForAmperes: required.reduce((sum, one) => sum + one, 0) };
}

/** What runs in each of so many raceways that share a supply evenly. */
export function shareOf(supply: Supply, raceways: number): Supply {
  const sets = supply.sets.map((set): SupplySet => ({ ...set, count: set.count / raceways }));
  return { ...supply, sets };
}

/** Raceways of a run: its own, or the one that it shares with others of its system. */
export function racewaysOf(
  run: Pick<DrawnRun, "raceways" | "in">,
  { sharedRaceways = [] }: { readonly sharedRaceways?: Service["sharedRaceways"] | undefined },
): NonNullable<DrawnRun["raceways"]> {
  if (run.raceways !== undefined) return run.raceways;
  const shared = sharedRaceways.find(({ id }) => id === run.in);
  if (shared === undefined) throw new TypeError("an installation is read before it is built from");
  return { count: 1, kind: shared.kind };
}

/** Whether the runs of a system hold a grounded conductor, a neutral or a phase. */
export function hasGroundedConductor({ grounding }: Pick<Service, "grounding">): boolean {
  return grounding === "solidly-grounded" || grounding === "grounded-phase";
}

type Service = NonNullable<Installation["services"]>[number];
