import type { FoundConductor, Installation } from "bondmil";

/** Parts of a drawing by name. */
export type Service = NonNullable<Installation["services"]>[number];
export type Derived = NonNullable<Installation["derivedSystems"]>[number];
export type System = Service | Derived;
export type Run = Service["runs"][number];
export type DrawnSupply = Run["supply"];
export type DrawnSet = Extract<DrawnSupply, { readonly sets: unknown }>["sets"][number];
export type ElectrodeEntry = NonNullable<Service["electrodes"]>[number];
export type Electrode = Extract<ElectrodeEntry, { readonly kind: unknown }>;
export type Generator = NonNullable<Installation["generators"]>[number];
export type Circuit = NonNullable<Installation["circuits"]>[number];
export type Building = NonNullable<Installation["buildings"]>[number];
export type LoadSide = NonNullable<Installation["loadSideConnections"]>[number];
export type Piping = NonNullable<Installation["piping"]>[number];
export type Structure = NonNullable<Installation["structuralMetal"]>[number];
export type Intersystem = NonNullable<Installation["intersystem"]>[number];
export type Installed = FoundConductor;

/** Whether the runs of a system hold a grounded conductor. */
export function isGrounded({ grounding }: Pick<Service, "grounding">): boolean {
  return grounding === "solidly-grounded" || grounding === "grounded-phase";
}

/** Raceways of a run: its own, or the one that it shares. Without the system the shared one is nothing of the run's own. */
export function racewaysOf(
  { raceways, in: shared }: Pick<Run, "raceways" | "in">,
  system?: System,
): NonNullable<Run["raceways"]> {
  const kind = system?.sharedRaceways?.find(({ id }) => id === shared)?.kind ?? "nonmetallic";
  return raceways ?? { count: 1, kind };
}

/** Whether each of several raceways has a jumper of its own; the wire of a derived system runs in each unless told. */
export function isJumperInEach(run: Run, isService: boolean): boolean {
  const { count, kind } = racewaysOf(run);
  const usual = isService || kind === "nonflexible-metal" ? "common" : "per-raceway";
  return count > 1 && (run.racewayJumpers ?? usual) === "per-raceway";
}

/** The systems that bond a metal part. */
export function ownersOf({ of }: { readonly of: string | readonly string[] }): readonly string[] {
  return typeof of === "string" ? [of] : of;
}
