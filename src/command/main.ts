#!/usr/bin/env node
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { exitCodes } from "./exit-codes.js";
import { run } from "./run.js";
import type { Outlet } from "./surroundings.js";

/** Whoever read the output has seen enough: that is no error. */
function endQuietly(error: NodeJS.ErrnoException): never {
  if (error.code === "EPIPE") process.exit(exitCodes.done.code);
  throw error;
}

function outlet(stream: NodeJS.WriteStream): Outlet {
  stream.on("error", endQuietly);
  return {
    write: (text) => {
      stream.write(text);
    },
    isTerminal: stream.isTTY === true,
    columns: stream.columns,
  };
}

const { version } = createRequire(import.meta.url)("bondmil/package.json") as { readonly version: string };

process.exitCode = await run(
  process.argv.slice(2),
  {
    input: process.stdin,
    inputIsTerminal: process.stdin.isTTY === true,
    output: outlet(process.stdout),
    errors: outlet(process.stderr),
    pour: (pieces) => pipeline(Readable.from(pieces, { highWaterMark: 1 }), process.stdout, { end: false }),
    readFile,
    environment: process.env,
    now: Date.now,
  },
  version,
);
