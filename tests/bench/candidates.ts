/** What the candidates of a large service cost, in a process of its own: npm run bench. The baseline is as many whole calls of a main bonding jumper. */
import { mainBondingJumper, size, supplyCandidates } from "bondmil";
import { medians } from "./medians.js";

const code = { year: "2023" } as const;

/** The candidates for 4,000 A in up to twelve sets of copper and aluminum and five kinds of raceway; how many there are. */
const candidates = (): number =>
  supplyCandidates({
    code,
    system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
    load: { continuous: 0, other: 4000 },
    conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
    place: { location: "wet" },
    limits: { mostSets: 12 },
    raceways: [
      "electrical-metallic-tubing",
      "intermediate-metal",
      "rigid-metal",
      "pvc-schedule-40",
      "pvc-schedule-80",
    ],
    bonding: { material: "copper" },
  }).total;

const count = candidates();
if (count < 300) throw new Error(`there are only ${count} candidates for 4,000 A`);

/** One whole call for each candidate. */
const jumpers = (): number => {
  let sum = 0;
  for (let i = 0; i < count; i += 1)
    sum += size(mainBondingJumper, {
      code,
      supply: { sets: [{ count: 11, size: "600 kcmil", material: "copper" }] },
      conductor: { material: "copper" },
    }).requiredArea;
  return sum;
};

const [whole = Number.NaN, baseline = Number.NaN] = medians([candidates, jumpers]);
console.log(
  `\nCandidates for 4,000 A: ${count} in ${whole.toFixed(0)} ms, ${(whole / baseline).toFixed(2)} of a whole call of one jumper for each`,
);
