import type { Dice } from "../dice.js";
import { isGrounded, type Run, type Service } from "../parts.js";
import { drawSupply } from "./supplies.js";

/** What the runs of one system have in common. */
export interface RunsOf {
  readonly grounding: Service["grounding"];
  readonly phases: number;
  /** Whether fittings may bond the raceways instead of jumpers. */
  readonly fittings: boolean;
}

/** A run between two places, with and without each optional member. */
export function drawRun(dice: Dice, { id, from, to }: Pick<Run, "id" | "from" | "to">, of: RunsOf): Run {
  const count = dice.chance(65) ? 1 : dice.between(2, 4);
  const kind = dice.pick([
    "nonflexible-metal",
    "flexible-metal",
    "nonmetallic",
    "nonmetallic",
    "unknown",
  ] as const);
  const bonded =
    of.fittings && kind !== "nonmetallic"
      ? (["per-raceway", "common", "fittings-instead", "locknuts"] as const)
      : (["per-raceway", "common"] as const);
  const { phases, grounding } = of;
  return {
    id,
    from,
    to,
    supply: drawSupply(dice, { raceways: count, phases, matched: grounding === "grounded-phase" }),
    raceways: { count, kind },
    ...(dice.chance(40) && { racewayJumpers: dice.pick(bonded) }),
    ...(dice.chance(6) && {
      parallelException: dice.pick(["control-power", "high-frequency", "elevator"] as const),
    }),
    ...(isGrounded(of) &&
      dice.chance(10) && {
        groundedConductors: {
          size: dice.pick(["3 AWG", "2 AWG", "1/0 AWG"] as const),
          ...(grounding !== "grounded-phase" &&
            dice.chance(50) && { existingUnderSupervision: dice.chance(60) }),
        },
      }),
    ...(isGrounded(of) &&
      dice.chance(25) && {
        load: {
          amperes: dice.chance(15) ? 0 : dice.between(1, 100),
          circuitAmperes: dice.pick([60, 100, 200, 800]),
          ...(dice.chance(40) && { listedFor75: dice.chance(50) }),
        },
      }),
    ...(dice.chance(30) && { lengthFeet: dice.pick([0.5, 12, 87.25, 400]) }),
  };
}
