import { type Profiler, Session } from "node:inspector/promises";

/** Where the processor was while something ran, in hundredths, by room of the library; whoever called. */
export async function profiled(
  times: number,
  run: () => unknown,
): Promise<readonly (readonly [string, number])[]> {
  for (let i = 0; i < times / 4; i += 1) run();
  const session = new Session();
  session.connect();
  await session.post("Profiler.enable");
  await session.post("Profiler.setSamplingInterval", { interval: 200 });
  await session.post("Profiler.start");
  for (let i = 0; i < times; i += 1) run();
  const { profile } = await session.post("Profiler.stop");
  session.disconnect();
  return byRoom(profile);
}

function byRoom({
  nodes,
  samples = [],
  timeDeltas = [],
}: Profiler.Profile): readonly (readonly [string, number])[] {
  const roomOf = new Map(
    nodes.map(({ id, callFrame: { url, functionName } }) => [id, room(url, functionName)]),
  );
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

function room(url: string, functionName: string): string {
  if (functionName === "(garbage collector)") return "the collector of what is thrown away";
  const own = /\/src\/([a-z-]+)\/(?:[a-z-]+\/)*([a-z-]+)(?:\.generated)?\.ts/.exec(url);
  if (own === null) return "Node and the language";
  return own[2] === "fingerprint" ? "`installation`, its fingerprints" : `\`${own[1]}\``;
}
