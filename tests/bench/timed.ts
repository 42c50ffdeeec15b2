/** What is timed, how often it is done in one run, and what it took in each run, in nanoseconds for one. */
export interface Timed {
  readonly name: string;
  readonly times: number;
  readonly run: () => unknown;
  readonly took: number[];
}

/** How often everything is timed, after one run beforehand. */
export const runs = 5;

/** Something to be timed. */
export function timed(name: string, times: number, run: () => unknown): Timed {
  return { name, times, run, took: [] };
}

/** Nanoseconds that the processor worked for this process. */
export function ofTheProcessor(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) * 1000;
}

/** Nanoseconds that went by. */
export function byTheClock(): number {
  return performance.now() * 1_000_000;
}

/** One run for each beforehand, and then all of them in turn: what the machine does beside falls on all alike. */
export async function time(all: readonly Timed[], clock = ofTheProcessor): Promise<void> {
  for (let round = 0; round <= runs; round += 1) {
    for (const { times, run, took } of all) {
      const before = clock();
      await repeat(times, run);
      if (round > 0) took.push((clock() - before) / times);
    }
  }
}

/** Does something so often, and waits only for what answers later. */
export async function repeat(times: number, run: () => unknown): Promise<void> {
  for (let i = 0; i < times; i += 1) {
    const given = run();
    if (given instanceof Promise) await given;
  }
}

function ordered({ took }: Timed): readonly number[] {
  return [...took].sort((a, b) => a - b);
}

/** The least of the runs. */
export function least(one: Timed): number {
  return ordered(one)[0] ?? Number.NaN;
}

/** The middle of the runs. */
export function median(one: Timed): number {
  return ordered(one)[Math.floor(runs / 2)] ?? Number.NaN;
}
