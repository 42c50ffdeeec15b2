const rounds = 5;

/** Milliseconds of the processor: the middle of several, each thing in turn, so that what else the machine does counts little and meets all. */
export function medians(asked: readonly (() => unknown)[]): readonly number[] {
  const times = asked.map((): number[] => []);
  for (let round = 0; round <= rounds; round += 1) {
    for (const [i, ask] of asked.entries()) {
      const start = process.cpuUsage();
      ask();
      const { user, system } = process.cpuUsage(start);
      // The first round is for the compiler.
      if (round > 0) times[i]?.push((user + system) / 1000);
    }
  }
  return times.map((of) => of.sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? Number.NaN);
}
