import { citation, head } from "./emit.js";
import type { WithstandFile } from "./withstand-file.js";
import type { WithstandLevels } from "./withstand-levels.js";

/** Faults of the constants: copper stores more than aluminum, and the limits leave room. */
export function checkWithstand({ metals, limits }: WithstandFile): string[] {
  const faults: string[] = [];
  if (metals.copper.factor <= metals.aluminum.factor) faults.push("aluminum withstands as much as copper");
  if (limits.leastSeconds >= limits.mostSeconds) faults.push("no time is left between the limits");
  for (const [metal, { offset }] of Object.entries(metals)) {
    if (limits.lowestInitial + offset <= 0) faults.push(`${metal}: the lowest temperature has no logarithm`);
  }
  return faults;
}

/** Constants of the short-time withstand. */
export function emitWithstand(
  { basis, metals, limits, crossCheck }: WithstandFile,
  levels: WithstandLevels,
): string {
  const metal = ({ factor, offset, highestFinal }: WithstandFile["metals"]["copper"]): string =>
    `{ factor: ${factor}, offset: ${offset}, highestFinal: ${highestFinal} }`;
  const { leastSeconds, mostSeconds, lowestInitial, leastRise, mostAmperes, mostArea } = limits;
  const { metal: of, circularMilsPerAmpere, seconds, initial, final, restsOn } = crossCheck;
  return `${head("short-time-withstand")}import type { WithstandFacts } from "../withstand-facts.js";

export const withstandFacts: WithstandFacts = {
  formula: ${citation([basis.formula, levels.formula, []])},
  sizes: ${citation([basis.sizes, levels.sizes, []])},
  metals: { copper: ${metal(metals.copper)}, aluminum: ${metal(metals.aluminum)} },
  limits: ${JSON.stringify({ leastSeconds, mostSeconds, lowestInitial, leastRise, mostAmperes, mostArea })},
  crossCheck: ${JSON.stringify({ metal: of, circularMilsPerAmpere, seconds, initial, final, restsOn, evidence: levels.crossCheck })},
};
`;
}
