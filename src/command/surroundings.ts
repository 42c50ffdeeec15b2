/** A place to write to: standard output or standard error. */
export interface Outlet {
  /** Done when all of the text is written; fails with the error of the system. */
  readonly write: (text: string) => Promise<void>;
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
  /** The bytes of a file, read no further than they are taken. */
  readonly open: (path: string) => AsyncIterable<Uint8Array>;
  /** Writes a file that is not there yet; fails with the error of the system, `EEXIST` where it is. */
  readonly create: (path: string, text: string) => Promise<void>;
  /** The folder of this package, as it is reached from where the command runs; with slashes. */
  readonly home: string;
  /** The address of the schema of an installation, as a file at a path is to name it. */
  readonly schemaFor: (path: string | undefined) => string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Milliseconds of a clock. */
  readonly now: () => number;
}
