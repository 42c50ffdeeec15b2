import { tell } from "./output.js";
import type { Outlet } from "./surroundings.js";

const everyMilliseconds = 250;

/** A line on a terminal that tells how far a stream is. */
export interface Progress {
  readonly step: (lines: number, refused: number) => Promise<void>;
  readonly end: () => Promise<void>;
}

/** Tells the progress on a terminal a few times in a second; elsewhere nothing is told. */
export function progressOn(errors: Outlet | null, now: () => number): Progress {
  if (!errors?.isTerminal) return { step: async () => {}, end: async () => {} };
  const started = now();
  let told = started;
  return {
    step: async (lines, refused) => {
      const time = now();
      if (time - told < everyMilliseconds) return;
      told = time;
      const perSecond = Math.round(lines / ((time - started) / 1000));
      const text = `${count(lines)} lines, ${count(refused)} refused, ${count(perSecond)} in a second`;
      await tell(`\r\u001b[K${text}`, { errors });
    },
    end: async () => {
      if (told !== started) await tell("\r\u001b[K", { errors });
    },
  };
}

function count(number: number): string {
  return number.toLocaleString("en-US");
}
