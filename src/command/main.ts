#!/usr/bin/env node
import { createReadStream, ReadStream, writeFileSync } from "node:fs";
import { Socket } from "node:net";
import { dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import type { Readable } from "node:stream";
import { fileURLToPath, pathToFileURL } from "node:url";
import { version } from "../input/version.generated.js";
import { outletTo } from "./outlet.js";
import { run } from "./run.js";
import type { Outlet } from "./surroundings.js";

const home = fileURLToPath(new URL("../../", import.meta.url));

/** Node gives an empty stream for what it does not know, such as a directory; reading that must fail instead. */
function standardInput(stdin: Readable): AsyncIterable<Uint8Array> {
  const isKnown = stdin instanceof Socket || stdin instanceof ReadStream;
  return isKnown ? stdin : createReadStream("", { fd: 0 });
}

/** From one folder to a path below another that holds the first: relative, with slashes; nothing where it is not below. */
function below(folder: string, path: string): string | undefined {
  const way = relative(folder, path);
  const isBelow = way !== "" && !way.startsWith("..") && !isAbsolute(way);
  return isBelow ? way.split(sep).join("/") : undefined;
}

/** The schema of this package: where it is installed in the working folder by a relative path, so that the folder can move. */
function schemaFor(path: string | undefined): string {
  const schema = join(home, "docs/schema/installation.schema.json");
  const way = relative(path === undefined ? process.cwd() : dirname(resolve(path)), schema);
  const isNear = below(process.cwd(), schema) !== undefined && !isAbsolute(way);
  return isNear ? way.split(sep).join("/") : pathToFileURL(schema).href;
}

let errors: Outlet | undefined;

process.exitCode = await run(
  process.argv.slice(2),
  {
    // Node makes its streams when they are first named, and most runs need only one of them.
    get input() {
      return standardInput(process.stdin);
    },
    get inputIsTerminal() {
      return process.stdin.isTTY === true;
    },
    output: outletTo(process.stdout, 1),
    get errors() {
      errors ??= outletTo(process.stderr, 2);
      return errors;
    },
    open: createReadStream,
    create: async (path, text) => writeFileSync(path, text, { flag: "wx" }),
    home: below(process.cwd(), home) ?? home.split(sep).join("/").replace(/\/$/, ""),
    schemaFor,
    environment: process.env,
    now: Date.now,
  },
  version,
);
