import { writeSync } from "node:fs";
import { Socket } from "node:net";
import type { Outlet } from "./surroundings.js";

/** A way out of this process, by its stream and its number. */
export function outletTo(stream: NodeJS.WriteStream, descriptor: number): Outlet {
  // Each write tells of its own failure; without a listener the stream would end the process as well.
  stream.on("error", () => {});
  return {
    write: stream instanceof Socket ? (text) => sent(stream, text) : (text) => stored(descriptor, text),
    isTerminal: stream.isTTY === true,
    columns: stream.columns,
  };
}

/** To a terminal or a pipe; done when the system has taken all of it. */
function sent(stream: Socket, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    stream.write(text, (error) => (error ? reject(error) : resolve()));
  });
}

/** To a file. Node's own stream takes a write that a full disk cut short for a whole one, so the rest is written until that fails. */
async function stored(descriptor: number, text: string): Promise<void> {
  let rest: Uint8Array = Buffer.from(text);
  while (rest.length > 0) rest = rest.subarray(writeSync(descriptor, rest));
}
