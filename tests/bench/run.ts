/**
 * Ratios of sizing, in one run: npm run bench, or npm run bench:write for docs/benchmarks.md and its picture. The library is the built one, which
 * is what a user runs: tsx, by which the benches run, names every function anew as often as it is made, and that costs more than many a call.
 */
import { writeFileSync } from "node:fs";
import { do_not_optimize } from "mitata";
import { filesOf } from "../../docs/pages/pictures/picture.js";
import { byEsbuild, byRollup, imported, kilobytes, kilobytesByRoom } from "./bundles.js";
import { calls } from "./calls.js";
import { areas, type Contender, contenders, everyRole, preparedRoles, warm } from "./contenders.js";
import { engines } from "./engines.js";
import { fetchedEngines } from "./fetched.js";
import { imports, profiledImport } from "./imports.js";
import { pageOf, ratioOf } from "./page.js";
import { timesOfALookUp } from "./picture.js";
import { profiled } from "./profile.js";
import { schedules } from "./schedules.js";
import { streams } from "./streams.js";
import { byTheClock, type Timed, time, timed } from "./timed.js";

const areasOfEngines = 200;

do_not_optimize(warm());
const loops = Object.entries(contenders).map(([name, one]) => loop(name, one, areas));
const roles = Object.entries(preparedRoles).map(([name, one]) => loop(name, one, askedOf(name)));
const whole = Object.entries(calls).map(([name, one]) => timed(name, 4000, () => do_not_optimize(one())));
const documents = Object.entries(schedules).map(([name, one]) =>
  timed(name, 60, () => do_not_optimize(one())),
);
await time([...loops, ...roles, ...whole, ...documents]);
await time(streams.flatMap(({ stream, bare }) => [stream, bare]));
await time(
  imports.map((one) => one.timed),
  byTheClock,
);

// After all of ours, for one of the engines brings threads of its own.
const later = Object.entries({ ...engines, ...(await fetchedEngines()) }).map(([name, one]) =>
  timed(name, 3, async () => {
    for (const area of areas.slice(0, areasOfEngines)) await one(area);
  }),
);
await time(later);

const profiles = [];
for (const [what, times, run] of [
  ["a main bonding jumper", 100_000, calls["main-bonding-jumper, three sets"]],
  [
    "an electrode conductor of 2011",
    50_000,
    calls["grounding-electrode-conductor of 2011, two kinds of electrodes"],
  ],
  ["`scheduleOf`", 500, schedules["`scheduleOf`"]],
  ...streams.map(({ what, stream }) => [`a stream of ${what}`, 5, stream.run] as const),
] as const) {
  if (run === undefined) throw new Error(`${what} is not among the calls`);
  profiles.push({ what, shares: await profiled(times, run) });
}
profiles.push({ what: "a process that imports `bondmil`", shares: profiledImport() });
// Last, for what the bundlers leave behind in the process would be in the profiles.
const bundles = [];
for (const one of imported) {
  const { what, goal } = one;
  const [esbuild, rollup] = [kilobytes(await byEsbuild(one)), kilobytes(await byRollup(one))];
  bundles.push({ what, goal, esbuild, rollup, rooms: await kilobytesByRoom(one) });
}

const page = pageOf({
  ...{
    loops,
    roles,
    engines: later,
    calls: whole,
    schedules: documents,
    bundles,
    profiles,
    streams,
    imports,
  },
  ...{ areas: areas.length, areasOfEngines },
});
const [baseline] = loops;
if (process.argv.includes("--write") && baseline !== undefined) {
  const bars = [
    ...loops.map((one) => ({ name: one.name, ratio: ratioOf(one, areas.length, baseline, areas.length) })),
    ...later.map((one) => ({ name: one.name, ratio: ratioOf(one, areasOfEngines, baseline, areas.length) })),
  ];
  const root = new URL("../../", import.meta.url);
  const files = { ...filesOf([timesOfALookUp(bars)]), "docs/benchmarks.md": page };
  for (const [path, text] of Object.entries(files)) writeFileSync(new URL(path, root), text);
}
console.log(page);

function loop(name: string, one: Contender, asked: readonly number[]): Timed {
  return timed(name, 400, () => do_not_optimize(asked.reduce((sum, area) => sum + one(area), 0)));
}

/** What a role is asked: areas, or as many ratings of a device. */
function askedOf(id: string): readonly number[] {
  const isByRating = everyRole.some((one) => one.id === id && one.by === "rating");
  return isByRating ? areas.map((_, at) => 1 + ((at * 37) % 4000)) : areas;
}
