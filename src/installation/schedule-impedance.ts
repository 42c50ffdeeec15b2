import { sizeImpedanceBondingJumper } from "../rules/impedance-bonding-jumper.js";
import { sizeImpedanceGroundingConductor } from "../rules/impedance-grounding-conductor.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type Serving } from "./serving.js";

/** A system with its grounding impedance. */
export interface ImpedanceOf extends DrawingInCode {
  readonly id: string;
  readonly source: string;
  readonly impedance: NonNullable<NonNullable<Drawing["services"]>[number]["impedance"]> | undefined;
  /** All ungrounded conductors of the system. */
  readonly servings: readonly Serving[];
}

/** The conductor to a grounding impedance and the jumper from it. */
export function impedanceConductors(system: ImpedanceOf): readonly ScheduledConductor[] {
  const { drawing, code, id, source, impedance, servings } = system;
  if (impedance === undefined) return [];
  const conductor = sizeImpedanceGroundingConductor({
    code,
    impedanceAmperes: impedance.amperes,
    conductor: { material: drawing.materials.groundedConductors },
  });
  const jumper = { material: drawing.materials.bondingJumpers };
  const { outcome } = conductor;
  const { by, result } =
    impedance.electrodeConductorAt === "first-disconnect" && outcome.kind === "conductor"
      ? {
          by: [],
          result: sizeImpedanceBondingJumper({
            code,
            electrodeConductorAt: "first-disconnect",
            impedanceConductor: outcome.size,
            jumper,
          }),
        }
      : largestServed(servings, (supply) =>
          sizeImpedanceBondingJumper({ code, electrodeConductorAt: "impedance", supply, jumper }),
        );
  const place = `impedance of ${id}`;
  return [
    scheduled(`impedance-grounding-conductor ${id}`, `neutral point of ${source}`, place, conductor),
    scheduled(`impedance-bonding-jumper ${id}`, "equipment grounding conductors", place, result, { by }),
  ];
}
