import { impedanceBondingJumper } from "../roles/impedance-bonding-jumper/index.js";
import { impedanceGroundingConductor } from "../roles/impedance-grounding-conductor/index.js";
import type { Installation } from "./document.js";
import type { InstallationInCode, ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type Serving } from "./serving.js";

/** A system with its grounding impedance. */
export interface ImpedanceOf extends InstallationInCode {
  readonly id: string;
  readonly source: string;
  /** Ids of the disconnects to whose equipment grounding conductors the jumper goes. */
  readonly disconnects: readonly string[];
  readonly impedance: NonNullable<NonNullable<Installation["services"]>[number]["impedance"]> | undefined;
  /** All ungrounded conductors of the system. */
  readonly servings: readonly Serving[];
}

/** The conductor to a grounding impedance and the jumper from it. */
export function impedanceConductors(system: ImpedanceOf): readonly ScheduledConductor[] {
  const { installation, code, id, source, disconnects, impedance, servings } = system;
  if (impedance === undefined) return [];
  const toImpedance = impedanceGroundingConductor.decide({
    code,
    impedanceAmperes: impedance.amperes,
    conductor: { material: installation.materials.groundedConductors },
  });
  const conductor = { material: installation.materials.bondingJumpers };
  const { outcome } = toImpedance;
  const { by, result } =
    impedance.electrodeConductorAt === "first-disconnect" && outcome.kind === "conductor"
      ? {
          by: [],
          result: impedanceBondingJumper.decide({
            code,
            electrodeConductorAt: "first-disconnect",
            impedanceConductor: outcome.size,
            conductor,
          }),
        }
      : largestServed(servings, (supply) =>
          impedanceBondingJumper.decide({ code, electrodeConductorAt: "impedance", supply, conductor }),
        );
  const place = impedance.id ?? ({ kind: "impedance", of: id } as const);
  const [first, ...others] = disconnects;
  const start = first !== undefined && others.length === 0 ? first : ({ kind: "first-disconnect" } as const);
  return [
    scheduled({ subject: id }, { kind: "neutral-point", of: source }, place, toImpedance),
    scheduled({ subject: id }, start, place, result, { by }),
  ];
}
