import type { Outlet } from "./surroundings.js";

const everyMilliseconds = 250;

/** A line on a terminal that tells how far a stream is. */
export interface Progress {
  readonly step: (lines: number, refused: number) => void;
  readonly end: () => void;
}

/** Tells the progress on a terminal a few times in a second; elsewhere nothing is told. */
export function progressOn(outlet: Outlet | null, now: () => number): Progress {
  if (!outlet?.isTerminal) return { step: () => {}, end: () => {} };
  const { write } = outlet;
  const started = now();
  let told = started;
  return {
    step: (lines, refused) => {
      const time = now();
      if (time - told < everyMilliseconds) return;
      told = time;
      const perSecond = Math.round(lines / ((time - started) / 1000));
      write(`\r\u001b[K${count(lines)} lines, ${count(refused)} refused, ${count(perSecond)} in a second`);
    },
    end: () => {
      if (told !== started) write("\r\u001b[K");
    },
  };
}

function count(number: number): string {
  return number.toLocaleString("en-US");
}
