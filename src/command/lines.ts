/** A line of a stream; `null` if it is longer than is read. */
export type Line = Uint8Array | null;

const newline = 0x0a;

/**
 * The lines of a stream of bytes, one after another. Of a line that is too long nothing is kept, so that no stream can take more memory
 * than one line and one chunk. What follows the last line break is a line if there is anything.
 */
export async function* linesOf(input: AsyncIterable<Uint8Array>, most: number): AsyncGenerator<Line> {
  let parts: Uint8Array[] = [];
  let size = 0;
  const keep = (part: Uint8Array): void => {
    size += part.length;
    if (size > most) parts = [];
    else if (part.length > 0) parts.push(part);
  };
  const taken = (): Line => {
    const line = size > most ? null : Buffer.concat(parts);
    parts = [];
    size = 0;
    return line;
  };
  for await (const chunk of input) {
    let start = 0;
    for (let end = chunk.indexOf(newline); end >= 0; end = chunk.indexOf(newline, start)) {
      keep(chunk.subarray(start, end));
      start = end + 1;
      yield taken();
    }
    keep(chunk.subarray(start));
  }
  if (size > 0) yield taken();
}
