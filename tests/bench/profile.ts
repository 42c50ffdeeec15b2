import { readFileSync } from "node:fs";
import { type Profiler, Session } from "node:inspector/promises";
import { repeat } from "./timed.js";

/** Hundredths by room of the library, most first. */
export type Shares = readonly (readonly [room: string, share: number])[];

/** Where the processor was while something ran, whoever called. */
export async function profiled(times: number, run: () => unknown): Promise<Shares> {
  await repeat(times / 4, run);
  const session = new Session();
  session.connect();
  await session.post("Profiler.enable");
  await session.post("Profiler.setSamplingInterval", { interval: 200 });
  await session.post("Profiler.start");
  await repeat(times, run);
  const { profile } = await session.post("Profiler.stop");
  session.disconnect();
  return byRoom(profile);
}

/** Where the processor was in a profile. */
export function byRoom({ nodes, samples = [], timeDeltas = [] }: Profiler.Profile): Shares {
  const roomOf = new Map(nodes.map(({ id, callFrame }) => [id, room(callFrame)]));
  const spent = new Map<string, number>();
  samples.forEach((id, i) => {
    const at = roomOf.get(id) ?? "other";
    spent.set(at, (spent.get(at) ?? 0) + (timeDeltas[i] ?? 0));
  });
  const all = [...spent.values()].reduce((sum, one) => sum + one, 0);
  return [...spent]
    .map(([at, one]) => [at, (100 * one) / all] as const)
    .filter(([, share]) => share >= 1)
    .sort(([, a], [, b]) => b - a);
}

/** The room of a place in the built library. */
function room({ url, functionName, lineNumber }: Profiler.Profile["nodes"][number]["callFrame"]): string {
  if (functionName === "(garbage collector)") return "the collector of what is thrown away";
  if (functionName === "compileSourceTextModule") return "reading the code";
  const rooms = roomsOf(url);
  // A module as a whole has no name and begins where its file does.
  if (rooms.length > 0 && functionName === "" && lineNumber === 0) return "first run of the modules";
  return rooms[lineNumber] || "Node and the language";
}

const known = new Map<string, readonly string[]>();

/** The room of each line of a built module, in which the name of a source stands before what came of it. */
function roomsOf(url: string): readonly string[] {
  if (!/\/(?:dist|bondmil-bench-[^/]+)\/[^/]+\.m?js$/.test(url)) return [];
  let rooms = known.get(url);
  if (rooms === undefined) {
    let own = "";
    rooms = readFileSync(new URL(url), "utf8")
      .split("\n")
      .map((line) => {
        const source = /^\/\/ src\/([a-z-]+)\/(?:[a-z-]+\/)*([a-z-]+)/.exec(line);
        if (source !== null)
          own = source[2] === "fingerprint" ? "`installation`, its fingerprints" : `\`${source[1]}\``;
        return own;
      });
    known.set(url, rooms);
  }
  return rooms;
}
