import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { createReadStream, createWriteStream, readFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { type Command, root } from "./command.js";

const python = "/usr/bin/python3";

/** Whether Dask distributed is there, as Debian packs it. */
export function hasDask(): boolean {
  return spawnSync(python, ["-c", "import distributed"]).status === 0;
}

/** The same lines through two workers, one of which is killed when a third of the answers are there. */
export async function throughDask(
  { main }: Command,
  input: string,
  output: string,
  linesOfAPart: number,
): Promise<{ readonly code: number | null; readonly errors: string; readonly killed: boolean }> {
  const address = `tcp://127.0.0.1:${await freePort()}`;
  const port = address.replace(/.*:/, "");
  const started: ChildProcess[] = [];
  const start = (name: string, ...words: readonly string[]): ChildProcess => {
    const child = spawn(name, words, { stdio: "ignore" });
    started.push(child);
    return child;
  };
  try {
    start("dask-scheduler", "--host", "127.0.0.1", "--port", port, "--no-dashboard");
    const worker = [address, "--host", "127.0.0.1", "--nthreads", "1", "--no-nanny", "--no-dashboard"];
    const [first] = [1, 2].map(() => start("dask-worker", ...worker));
    const script = join(root, "docs/many-machines/stream.py");
    const words = [script, address, "--lines", `${linesOfAPart}`, "--ahead", "8"];
    const client = spawn(python, [...words, "--", process.execPath, main, "stream", "--give", "rows"]);
    createReadStream(input).pipe(client.stdin);
    client.stdin.on("error", () => {});
    let killed = false;
    let seen = 0;
    const enough = readFileSync(input).filter((byte) => byte === 0x0a).length / 3;
    client.stdout.on("data", (data: Buffer) => {
      for (const byte of data) if (byte === 0x0a) seen += 1;
      if (!killed && seen > enough) killed = first?.kill("SIGKILL") ?? false;
    });
    client.stdout.pipe(createWriteStream(output));
    const errors: string[] = [];
    client.stderr.on("data", (data: Buffer) => errors.push(data.toString()));
    const [code] = (await once(client, "close")) as [number | null];
    return { code, errors: errors.join(""), killed };
  } finally {
    for (const child of started) child.kill("SIGKILL");
    await wait(100);
  }
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  await once(server, "close");
  return typeof address === "object" && address !== null ? address.port : 0;
}
