import type { Surroundings } from "./surroundings.js";

/** An output that could not be written. */
export class Unwritten extends Error {
  /** Whether its reader went away, who has seen enough. */
  readonly isUnread: boolean;

  constructor(where: string, cause: NodeJS.ErrnoException) {
    super(`${where} cannot be written, what is there is not all: ${cause.message}`, { cause });
    this.isUnread = isUnread(cause);
  }
}

/** Writes a part of the output. Whatever hinders it ends the command. */
export async function answer(text: string, { output }: Pick<Surroundings, "output">): Promise<void> {
  try {
    await output.write(text);
  } catch (error) {
    throw new Unwritten("standard output", error as NodeJS.ErrnoException);
  }
}

/** Writes a message beside the output, which goes on where nobody listens. */
export async function tell(text: string, { errors }: Pick<Surroundings, "errors">): Promise<void> {
  try {
    await errors.write(text);
  } catch (error) {
    const cause = error as NodeJS.ErrnoException;
    if (!isUnread(cause)) throw new Unwritten("standard error", cause);
  }
}

function isUnread({ code }: NodeJS.ErrnoException): boolean {
  return code === "EPIPE";
}
