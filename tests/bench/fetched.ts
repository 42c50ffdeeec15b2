import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { answers, areas, contenders, ends } from "./contenders.js";
import type { Engined } from "./engines.js";

/** An engine that the lockfile cannot hold, because its packages for other machines are not all to be had: it is fetched for the bench alone. */
const zenEngine = { name: "@gorules/zen-engine", version: "0.54.0" };

/** The fetched engines by name, their answers held against those of the baseline; one that cannot be had is said aloud. */
export async function fetchedEngines(): Promise<Readonly<Record<string, Engined>>> {
  const { name, version } = zenEngine;
  const folder = mkdtempSync(join(tmpdir(), "bondmil-bench-"));
  process.on("exit", () => rmSync(folder, { recursive: true }));
  writeFileSync(join(folder, "package.json"), '{ "private": true }');
  const options = ["--silent", "--no-audit", "--no-fund", "--ignore-scripts"];
  const { status } = spawnSync("npm", ["install", ...options, `${name}@${version}`], { cwd: folder });
  if (status !== 0) {
    console.error(`SKIPPED ${name}: it cannot be had`);
    return {};
  }
  const engine = decisionTable(createRequire(join(folder, "package.json"))(name) as ZenModule);
  const baseline = contenders["sorted array, by hand"];
  for (const area of areas) {
    const [given, right] = [await engine(area), baseline?.(area)];
    if (given !== right) throw new Error(`${name} gives ${given} for ${area}, and not ${right}`);
  }
  return { [name]: engine };
}

/** What is used of the package, whose types are not here. */
interface ZenModule {
  readonly ZenEngine: new () => {
    readonly createDecision: (content: object) => {
      readonly evaluate: (given: object) => Promise<{ readonly result: { readonly required: number } }>;
    };
  };
}

/** A decision table with a row for each row, and one for all areas above. */
function decisionTable({ ZenEngine }: ZenModule): Engined {
  const rows = ends.map((end, row) => ({ _id: `${row}`, area: `<= ${end}`, required: `${answers[row]}` }));
  const content = {
    hitPolicy: "first",
    inputs: [{ id: "area", name: "area", field: "area" }],
    outputs: [{ id: "required", name: "required", field: "required" }],
    rules: [...rows, { _id: "above", area: "", required: "ceil(area / 8)" }],
  };
  const nodes = [
    { id: "in", name: "in", type: "inputNode" },
    { id: "table", name: "table", type: "decisionTableNode", content },
    { id: "out", name: "out", type: "outputNode" },
  ];
  const edges = [
    { id: "1", sourceId: "in", targetId: "table", type: "edge" },
    { id: "2", sourceId: "table", targetId: "out", type: "edge" },
  ];
  const decision = new ZenEngine().createDecision({ nodes, edges });
  return async (area) => (await decision.evaluate({ area })).result.required;
}
