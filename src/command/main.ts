#!/usr/bin/env node
import { createReadStream, ReadStream } from "node:fs";
import { createRequire } from "node:module";
import { Socket } from "node:net";
import type { Readable } from "node:stream";
import { outletTo } from "./outlet.js";
import { run } from "./run.js";

const { version } = createRequire(import.meta.url)("bondmil/package.json") as { readonly version: string };

/** Node gives an empty stream for what it does not know, such as a directory; reading that must fail instead. */
function standardInput(stdin: Readable): AsyncIterable<Uint8Array> {
  const isKnown = stdin instanceof Socket || stdin instanceof ReadStream;
  return isKnown ? stdin : createReadStream("", { fd: 0 });
}

process.exitCode = await run(
  process.argv.slice(2),
  {
    input: standardInput(process.stdin),
    inputIsTerminal: process.stdin.isTTY === true,
    output: outletTo(process.stdout, 1),
    errors: outletTo(process.stderr, 2),
    open: createReadStream,
    environment: process.env,
    now: Date.now,
  },
  version,
);
