import type { FlexibleConduit } from "./jumpers/shape.generated.js";

/** Most feet of a bonding jumper outside its raceway, and of flexible conduit in a path that it serves in (250.102(E), 250.118). */
export const mostFeetOutside = 6;

/** Largest device of a circuit in flexible metal conduit, and in liquidtight conduit up to trade size 1/2, without a wire, in amperes. */
const mostAmperes = 20;

/** The same in liquidtight conduit of the trade sizes above. */
const mostAmperesInLargerLiquidtight = 60;

/** Trade sizes through 1-1/4, beyond which no flexible conduit serves. */
const serving: readonly FlexibleConduit["tradeSize"][] = ["3/8", "1/2", "3/4", "1", "1-1/4"];

/** Whether a flexible conduit serves as equipment grounding conductor of circuits with a largest device (250.118). */
export function conduitServes(
  { kind, tradeSize, flexesInUse, lengthFeet }: FlexibleConduit,
  amperes: number,
): boolean {
  if (flexesInUse || lengthFeet > mostFeetOutside || !serving.includes(tradeSize)) return false;
  const isLarger = kind === "liquidtight-flexible-metal-conduit" && serving.indexOf(tradeSize) > 1;
  return amperes <= (isLarger ? mostAmperesInLargerLiquidtight : mostAmperes);
}
