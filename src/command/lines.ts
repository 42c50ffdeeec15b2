/** A line of a stream; `null` if it is longer than is read. */
export type Line = Uint8Array | null;

const newline = 0x0a;

/**
 * The lines of a stream of bytes in order, those together that end in one piece of it. Of a line that is too long nothing is kept, so that
 * no stream can take more memory than one line and one piece. What follows the last line break is a line if there is anything.
 */
export async function* linesOf(
  input: AsyncIterable<Uint8Array>,
  most: number,
): AsyncGenerator<readonly Line[]> {
  let parts: Uint8Array[] = [];
  let size = 0;
  const keep = (part: Uint8Array): void => {
    size += part.length;
    if (size > most) parts = [];
    else parts.push(part);
  };
  const taken = (): Line => {
    const line = size > most ? null : Buffer.concat(parts);
    parts = [];
    size = 0;
    return line;
  };
  for await (const chunk of input) {
    const lines: Line[] = [];
    let start = 0;
    for (let end = chunk.indexOf(newline); end >= 0; end = chunk.indexOf(newline, start)) {
      keep(chunk.subarray(start, end));
      start = end + 1;
      lines.push(taken());
    }
    keep(chunk.subarray(start));
    if (lines.length > 0) yield lines;
  }
  if (size > 0) yield [taken()];
}
