import type { Dice } from "../dice.js";
import type { Service } from "../parts.js";

/** How a system is grounded, with the connections that may be. */
export type Grounded = Pick<Service, "grounding" | "connection" | "impedance"> & { readonly phases: number };

/** A grounding with a connection that it fits, most often solid. */
export function drawGrounding(dice: Dice): Grounded {
  const grounding = dice.pick([
    ...(["solidly-grounded", "solidly-grounded", "solidly-grounded"] as const),
    ...(["grounded-phase", "impedance", "ungrounded"] as const),
  ]);
  const connection = dice.pick(connections[grounding]);
  const phases = connection === "single-phase-three-wire" ? 2 : 3;
  if (grounding !== "impedance") return { grounding, connection, phases };
  const electrodeConductorAt = dice.pick(["impedance", "first-disconnect"] as const);
  return {
    grounding,
    connection,
    phases,
    impedance: { amperes: dice.pick([5, 10, 60, 130]), electrodeConductorAt },
  };
}

const connections: Readonly<Record<Service["grounding"], readonly Service["connection"][]>> = {
  "solidly-grounded": ["three-phase-wye", "single-phase-three-wire", "high-leg-delta"],
  "grounded-phase": ["three-phase-delta"],
  impedance: ["three-phase-wye", "three-phase-delta"],
  ungrounded: ["three-phase-wye", "single-phase-three-wire", "three-phase-delta", "high-leg-delta"],
};
