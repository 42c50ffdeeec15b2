import type { Supply, SupplySet } from "./shape.generated.js";

/** Writes a supply, for example `3 x 600 kcmil copper`. */
export function writeSupply(supply: Supply): string {
  return supply.sets.map(writeSet).join(" + ");
}

function writeSet(set: SupplySet): string {
  if (!("phases" in set)) return `${set.count} x ${set.size} ${set.material}`;
  const phases = set.phases.map((one) => (one === null ? "none" : `${one.size} ${one.material}`));
  return `${set.count} x (${phases.join(", ")})`;
}
