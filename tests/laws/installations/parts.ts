import type { Installation } from "bondmil";

/** Parts of a drawing by name. */
export type Service = NonNullable<Installation["services"]>[number];
export type Derived = NonNullable<Installation["derivedSystems"]>[number];
export type System = Service | Derived;
export type Run = Service["runs"][number];
export type DrawnSupply = Run["supply"];
export type DrawnSet = Extract<DrawnSupply, { readonly sets: unknown }>["sets"][number];
export type Electrode = NonNullable<Service["electrodes"]>[number];
export type Generator = NonNullable<Installation["generators"]>[number];
export type Circuit = NonNullable<Installation["circuits"]>[number];
export type Building = NonNullable<Installation["buildings"]>[number];
export type Piping = NonNullable<Installation["piping"]>[number];
export type Structure = NonNullable<Installation["structuralMetal"]>[number];
export type Intersystem = NonNullable<Installation["intersystem"]>[number];
export type Installed = NonNullable<Installation["installed"]>[number];

/** Whether the runs of a system hold a grounded conductor. */
export function isGrounded({ grounding }: Pick<Service, "grounding">): boolean {
  return grounding === "solidly-grounded" || grounding === "grounded-phase";
}

/** Raceways of a run; one nonmetallic unless told. */
export function racewaysOf({ raceways }: Pick<Run, "raceways">): NonNullable<Run["raceways"]> {
  return raceways ?? { count: 1, kind: "nonmetallic" };
}

/** Whether each of several raceways has a jumper of its own; the wire of a derived system runs in each unless told. */
export function isJumperInEach(run: Run, isService: boolean): boolean {
  const { count, kind } = racewaysOf(run);
  const usual = isService || kind === "nonflexible-metal" ? "common" : "per-raceway";
  return count > 1 && (run.racewayJumpers ?? usual) === "per-raceway";
}
