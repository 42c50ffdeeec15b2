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

/** How standard input is called. */
const standardInput = "standard input";

/** How a source is called: a file by its path, standard input where there is none. */
export function nameOf(path: string | undefined): string {
  return path === undefined || path === "-" ? standardInput : path;
}

/** Reads all of a file, or of standard input where there is no path. Where nothing comes, the hint says how to begin. */
export async function readSource(
  path: string | undefined,
  from: Surroundings,
  hint: string,
): Promise<Outcome<string>> {
  const isStandard = path === undefined || path === "-";
  if (isStandard && from.inputIsTerminal) return failed("usage", hint);
  const name = nameOf(path);
  try {
    const bytes = await allOf(bytesOf(isStandard ? from.input : from.open(path), name));
    if (bytes === null) {
      const message = `${name} is refused: more than ${mostBytes} bytes are no installation; several go through bondmil stream.`;
      return failed("refused", message);
    }
    const text = decoded(bytes);
    if (text === null) return failed("refused", `${name} is not UTF-8 text; save it as UTF-8.`);
    if (path === undefined && text.trim() === "") return failed("usage", hint);
    return { value: text };
  } catch (error) {
    if (error instanceof Unreadable) return failed("file", error.message);
    throw error;
  }
}

/** Reads a source as JSON. */
export async function readJson(
  path: string | undefined,
  from: Surroundings,
  hint: string,
): Promise<Outcome<unknown>> {
  const source = await readSource(path, from, hint);
  if (source.failure !== undefined) return source;
  try {
    return { value: JSON.parse(source.value) as unknown };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return failed("refused", `${nameOf(path)} is not JSON: ${why}`);
  }
}

/** Bytes as they come; what hinders them is told with the name of their source. */
export async function* bytesOf(input: AsyncIterable<Uint8Array>, name: string): AsyncGenerator<Uint8Array> {
  try {
    yield* input;
  } catch (error) {
    throw new Unreadable(name, error as NodeJS.ErrnoException);
  }
}

const decoder = new TextDecoder("utf-8", { fatal: true });

/** The text of UTF-8 bytes without a byte order mark; `null` if they are something else. */
export function decoded(bytes: Uint8Array): string | null {
  try {
    return decoder.decode(bytes);
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
