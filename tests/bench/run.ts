/** Ratios of sizing one main bonding jumper, in one run: npm run bench */
import { bench, do_not_optimize, run } from "mitata";
import { areas, contenders, fullCall } from "./contenders.js";

/** A loop over many areas, so that the cost of the timer is spread. */
for (const [name, contender] of Object.entries(contenders)) {
  bench(name, () => {
    let sum = 0;
    for (const area of areas) sum += contender(area);
    return do_not_optimize(sum);
  });
}
const full = "full call";
bench(full, () => do_not_optimize(fullCall()));

const { benchmarks } = await run({ format: "quiet" });
const times = new Map(
  benchmarks.map(({ alias, runs }) => {
    const median = runs[0]?.stats?.p50;
    if (median === undefined) throw new Error(`${alias} was not timed`);
    return [alias, alias === full ? median : median / areas.length];
  }),
);
const timeOf = (name: string): number => times.get(name) ?? Number.NaN;
const baseline = timeOf(Object.keys(contenders)[0] ?? "");

console.log(
  "One main bonding jumper, copper from copper, 2023. Medians of one run; read the ratios, not the times.\n",
);
for (const [name, time] of times) {
  const columns = [`${time.toFixed(1)} ns`.padStart(12), `${(time / baseline).toFixed(1)} x`.padStart(12)];
  console.log(name.padEnd(24) + columns.join(""));
}
console.log(`\nfull call to prepared path: ${(timeOf(full) / timeOf("prepared path")).toFixed(0)} x`);
