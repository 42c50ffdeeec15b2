/**
 * How the cost of a large installation grows, and the memory that it takes, in a process of its own: npm run bench. Twice as large should take
 * twice as long. 300 disconnects and 2,000 circuits stay below 300 MB.
 */
import { checkOf, drawingOf, type Installation, scheduleOf } from "bondmil";
import { largeInstallation } from "./large-installation.js";
import { medians } from "./medians.js";

const half = largeInstallation({ disconnects: 150, circuits: 1000, perService: 75 });
const whole = largeInstallation({ disconnects: 300, circuits: 2000, perService: 75 });
const many = largeInstallation({ disconnects: 300, circuits: 2000, perService: 5 });

const asked: Readonly<Record<string, (installation: Installation) => unknown>> = {
  scheduleOf,
  checkOf,
  drawingOf,
};

console.log("\n300 disconnects and 2,000 circuits to 150 and 1,000. Medians of one run; 2.0 x is linear.\n");
for (const [name, ask] of Object.entries(asked)) {
  const [small = Number.NaN, large = Number.NaN, other = Number.NaN] = medians(
    [half, whole, many].map((one) => () => ask(one)),
  );
  const columns = [
    `${large.toFixed(0)} ms`,
    `${(large / small).toFixed(1)} x`,
    `${(other / large).toFixed(1)} x`,
  ];
  console.log(name.padEnd(24) + columns.map((one) => one.padStart(12)).join(""));
}
console.log("columns: 2 services of 75 disconnects; that to half of it; 30 services of 5 to those 2");
console.log(`most memory of the process: ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`);
