import { failed, type Outcome } from "./failure.js";
import type { Surroundings } from "./surroundings.js";

/** More bytes than the longest drawing that is read can have, with room for what the letters take. */
export const mostBytes = 20_000_000;

/** Reads all of a file, or of standard input where there is no path. */
export async function readSource(path: string | undefined, from: Surroundings): Promise<Outcome<string>> {
  if (path === undefined && from.inputIsTerminal) {
    return failed(
      "usage",
      "no drawing is given; name its path, or send it to standard input. See bondmil --help.",
    );
  }
  try {
    const bytes = path === undefined ? await all(from.input) : await from.readFile(path);
    const text = decoded(bytes);
    return text === null
      ? failed("refused", `${path ?? "standard input"} is not UTF-8 text; save it as UTF-8.`)
      : { value: text };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return failed("file", `${path ?? "standard input"} cannot be read: ${why}`);
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

async function all(input: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of input) {
    chunks.push(chunk);
    size += chunk.length;
    if (size > mostBytes)
      throw new Error(`more than ${mostBytes} bytes are no drawing; several go through bondmil stream`);
  }
  return Buffer.concat(chunks);
}
