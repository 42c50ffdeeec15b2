/** A place to write to: standard output or standard error. */
export interface Outlet {
  readonly write: (text: string) => void;
  readonly isTerminal: boolean;
  /** Letters in a line, of a terminal. */
  readonly columns: number | undefined;
}

/** All that the command touches of the world outside. */
export interface Surroundings {
  readonly input: AsyncIterable<Uint8Array>;
  readonly inputIsTerminal: boolean;
  readonly output: Outlet;
  readonly errors: Outlet;
  /** Writes pieces to standard output as fast as their reader takes them. */
  readonly pour: (pieces: AsyncIterable<string>) => Promise<void>;
  readonly readFile: (path: string) => Promise<Uint8Array>;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Milliseconds of a clock. */
  readonly now: () => number;
}
