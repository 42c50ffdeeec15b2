import { failed, type Outcome } from "./failure.js";
import type { Surroundings } from "./surroundings.js";

/** More bytes than the longest installation that is taken can have, with room for what the letters take. */
export const mostBytes = 20_000_000;

/** A file or standard input that could not be read. */
export class Unreadable extends Error {
  constructor(name: string, { code, message }: NodeJS.ErrnoException) {
    super(`${name} cannot be read: ${code === undefined ? message : (reasons[code] ?? message)}`);
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  ENOTDIR: "there is no such file",
  EISDIR: "it is a directory",
  EACCES: "permission is denied",
};

/** Reads all of a file, or of standard input where there is no path. */
export async function readSource(path: string | undefined, from: Surroundings): Promise<Outcome<string>> {
  if (path === undefined && from.inputIsTerminal) {
    return failed(
      "usage",
      "no installation is given; name its path, or send it to standard input. See bondmil --help.",
    );
  }
  const name = path ?? standardInput;
  try {
    const bytes = await allOf(bytesOf(path === undefined ? from.input : from.open(path), name));
    if (bytes === null) {
      const message = `${name} is refused: more than ${mostBytes} bytes are no installation; several go through bondmil stream.`;
      return failed("refused", message);
    }
    const text = decoded(bytes);
    return text === null
      ? failed("refused", `${name} is not UTF-8 text; save it as UTF-8.`)
      : { value: text };
  } catch (error) {
    if (error instanceof Unreadable) return failed("file", error.message);
    throw error;
  }
}

/** How standard input is called. */
export const standardInput = "standard input";

/** Bytes as they come; what hinders them is told with the name of their source. */
export async function* bytesOf(input: AsyncIterable<Uint8Array>, name: string): AsyncGenerator<Uint8Array> {
  try {
    yield* input;
  } catch (error) {
    throw new Unreadable(name, error as NodeJS.ErrnoException);
  }
}

/** The text of UTF-8 bytes without a byte order mark; `null` if they are something else. */
export function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** All bytes; `null` if they are too many, of which no more than the first are read. */
async function allOf(input: AsyncIterable<Uint8Array>): Promise<Uint8Array | null> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of input) {
    size += chunk.length;
    if (size > mostBytes) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
