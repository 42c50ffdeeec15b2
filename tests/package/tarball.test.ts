import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exitCodes } from "../../src/command/exit-codes.js";
import { answers, need } from "../needs.js";
import { danglingIn } from "./dangling.js";
import { follow, partsOf } from "./guide.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  readonly version: string;
};
const folder = mkdtempSync(join(tmpdir(), "bondmil-package-"));

// What `npm test` hands down would point the inner npm back at this repository; its cache is empty, as on a fresh machine.
const env = {
  ...Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(npm_|NODE_OPTIONS$|VITEST)/i.test(name)),
  ),
  npm_config_cache: join(folder, "cache"),
};

function run(cwd: string, command: string, ...args: readonly string[]): string {
  try {
    return execFileSync(command, args, { cwd, env, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (error) {
    const { stdout, stderr } = error as { readonly stdout?: string; readonly stderr?: string };
    throw new Error(`${command} ${args.join(" ")} failed\n${stdout ?? ""}${stderr ?? ""}`);
  }
}

interface Packed {
  readonly filename: string;
  readonly files: readonly { readonly path: string }[];
}

/** Packs a folder. */
function pack(from: string): Packed {
  const options = ["--json", "--ignore-scripts", "--pack-destination", folder];
  const [one] = JSON.parse(run(root, "npm", "pack", ...options, from)) as readonly Packed[];
  if (one === undefined) throw new Error(`nothing was packed from ${from}`);
  return one;
}

const endings = [".js", ".cjs", ".d.ts", ".d.cts"];

function isBuilt(): boolean {
  const entries = ["index", "corpus", "tables"];
  const outputs = [
    "browser.js",
    "command/main.js",
    ...entries.flatMap((name) => endings.map((ending) => `${name}${ending}`)),
  ].map((name) => join(root, "dist", name));
  if (!outputs.every((path) => existsSync(path))) return false;
  const sources = ["src", "corpus", "tables"].flatMap((part) =>
    readdirSync(join(root, part), { recursive: true, encoding: "utf8" }).map((path) =>
      join(root, part, path),
    ),
  );
  const newest = Math.max(...[...sources, join(root, "package.json")].map((path) => statSync(path).mtimeMs));
  return outputs.every((path) => statSync(path).mtimeMs >= newest);
}

const installed = join(folder, "node_modules", "bondmil");
const guides = ["amendments", "comparing-editions", "embedding", "judging-a-program"];
const python = need(
  "python3",
  answers("python3", ["--version"], /^Python 3/),
  "the guides that use it are not followed",
);

const call = `const { outcome } = size(mainBondingJumper, {
  code: { year: "2023" },
  supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
  conductor: { material: "copper" },
});`;
const full = need("/dev/full", existsSync("/dev/full"), "a full disk is not tried");
const expected = { kind: "conductor", size: "250 kcmil", quantity: 1 };
const table = "bondmil/tables/electrode-conductor.json";

/** The packages that a bundler marks with a comment where their code begins. */
function bundledIn(script: string): readonly string[] {
  const marks = script.matchAll(/^ *\/\/ (?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//gm);
  return [...marks].map(([, name = ""]) => name);
}

describe("the packed tarball, as a user gets it", () => {
  let packed: readonly string[] = [];

  beforeAll(() => {
    if (!isBuilt()) run(root, "npm", "run", "build");
    const own = pack(root);
    packed = own.files.map(({ path }) => path);
    writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, type: "module" }));
    run(folder, "npm", "install", "--offline", "--no-audit", "--ignore-scripts", `./${own.filename}`);
  });

  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("holds the build, the tables and the papers, and nothing else", () => {
    const wanted =
      /^(dist\/|tables\/(?:evidence\/|schema\/)?[^/]+\.json$|tables\/csv\/[^/]+\.csv$|tables\/(?:README|unconfirmed)\.md$|docs\/[^/]+\.md$|docs\/atlas\.csv$|docs\/roles\/[^/]+\.md$|docs\/(?:schema|installations)\/[^/]+\.json$|docs\/samples\/(?:roles\/)?[^/]+$|docs\/pictures\/[^/]+\.(?:svg|csv)$|docs\/many-machines\/stream\.py$|corpus\/.+\.json$|corpus\/README\.md$|corpus\/flat\/checks\.jsonl$|corpus\/tools\/runner-in-python\/run\.py$|corpus\/tools\/verifier\/verify\.py$|package\.json$|CITATION\.cff$|[A-Z-]+(\.md)?$)/;
    expect(packed).toContain("LICENSE");
    expect(packed.filter((path) => !wanted.test(path))).toEqual([]);
  });

  it("points at nothing that is not in it", () => expect(danglingIn(installed, packed)).toEqual([]));

  it("names whatever is bundled, with its license", () => {
    const scripts = packed.filter((path) => /^dist\/.*\.c?js$/.test(path));
    const bundled = scripts.flatMap((path) => bundledIn(readFileSync(join(installed, path), "utf8")));
    const listed = readFileSync(join(installed, "THIRD-PARTY.md"), "utf8");
    expect(bundledIn("// node_modules/@scope/name/part.mjs\n  // ../node_modules/other/index.js\n")).toEqual([
      "@scope/name",
      "other",
    ]);
    expect(scripts.length).toBeGreaterThan(6);
    expect(bundled.filter((name) => !listed.includes(`\n## ${name} `))).toEqual([]);
  });

  it("has a build for browsers that imports nothing", () => {
    const imported = ts.preProcessFile(readFileSync(join(root, "dist/browser.js"), "utf8"), true, true);
    expect(imported.importedFiles).toEqual([]);
    const script = `import { formatSize as own } from "bondmil/browser";
console.log(own("4/0 AWG"));`;
    writeFileSync(join(folder, "browser.mjs"), script);
    expect(run(folder, process.execPath, "browser.mjs").trim()).toBe("4/0 AWG");
  });

  it("brings no other package along", () => {
    const installed = readdirSync(join(folder, "node_modules")).filter((name) => !name.startsWith("."));
    expect(installed).toEqual(["bondmil"]);
  });

  it("works through import", () => {
    const script = `import { mainBondingJumper, size } from "bondmil";
${call}
console.log(JSON.stringify(outcome));`;
    writeFileSync(join(folder, "esm.mjs"), script);
    expect(JSON.parse(run(folder, process.execPath, "esm.mjs"))).toEqual(expected);
  });

  it("works through require", () => {
    const script = `const { mainBondingJumper, size } = require("bondmil");
${call}
console.log(JSON.stringify(outcome));`;
    writeFileSync(join(folder, "common.cjs"), script);
    expect(JSON.parse(run(folder, process.execPath, "common.cjs"))).toEqual(expected);
  });

  it("has an entry of sizing alone, in the same copy as the whole", () => {
    const body = `const names = Object.keys(sizing);
console.log(names.length > 50, names.every((name) => sizing[name] === all[name]), names.length < Object.keys(all).length / 1.5);`;
    writeFileSync(
      join(folder, "sizing.mjs"),
      `import * as all from "bondmil";\nimport * as sizing from "bondmil/sizing";\n${body}`,
    );
    writeFileSync(
      join(folder, "sizing.cjs"),
      `const all = require("bondmil");\nconst sizing = require("bondmil/sizing");\n${body}`,
    );
    for (const name of ["sizing.mjs", "sizing.cjs"])
      expect(run(folder, process.execPath, name).trim()).toBe("true true true");
  });

  it("knows its error from either copy", () => {
    const script = `import { createRequire } from "node:module";
import { InputError, parseSize } from "bondmil";
const required = createRequire(import.meta.url)("bondmil");
const thrown = [parseSize, required.parseSize].map((call) => { try { call("4"); } catch (error) { return error; } });
console.log(parseSize === required.parseSize, thrown.every((one) => one instanceof InputError && one instanceof required.InputError));
console.log([new Error("4"), null, {}].some((one) => one instanceof InputError));`;
    writeFileSync(join(folder, "copies.mjs"), script);
    expect(run(folder, process.execPath, "copies.mjs").trim().split("\n")).toEqual(["false true", "false"]);
  });

  it("gives its checks and tables through import and require", () => {
    const body = `const rows = runCorpus(() => ({ size: "6 AWG" }), { role: "intersystem-bonding-conductor", standing: "cited", edition: "2023" });
console.log(rows.length > 0 && rows.every(({ verdict }) => verdict === "met"), electrodeConductor.id);`;
    writeFileSync(
      join(folder, "parts.mjs"),
      `import { runCorpus } from "bondmil/corpus";\nimport { electrodeConductor } from "bondmil/tables";\n${body}`,
    );
    writeFileSync(
      join(folder, "parts.cjs"),
      `const { runCorpus } = require("bondmil/corpus");\nconst { electrodeConductor } = require("bondmil/tables");\n${body}`,
    );
    for (const name of ["parts.mjs", "parts.cjs"])
      expect(run(folder, process.execPath, name).trim()).toBe("true electrode-conductor");
  });

  it("brings a command that answers", () => {
    const installation = join("node_modules", "bondmil", "docs", "installations", "shop.json");
    const answer = run(
      folder,
      join("node_modules", ".bin", "bondmil"),
      "schedule",
      installation,
      "--as",
      "json",
    );
    const { conductors } = JSON.parse(answer) as { readonly conductors: readonly { readonly id: string }[] };
    expect(conductors[0]?.id).toBe("main-bonding-jumper D1");
    expect(run(folder, join("node_modules", ".bin", "bondmil"), "--version").trim()).toBe(version);
  });

  it("brings a command whose help and first installation name only files that it brought", () => {
    const bondmil = join("node_modules", ".bin", "bondmil");
    const help = run(folder, bondmil, "--help");
    const named = [...help.matchAll(/^ +(node_modules\/\S+)$/gm)].map(([, path]) => path ?? "");
    expect(named.length).toBeGreaterThan(2);
    run(folder, bondmil, "begin", "shop.json", "--edition", "2020");
    const { $schema } = JSON.parse(readFileSync(join(folder, "shop.json"), "utf8")) as {
      readonly $schema: string;
    };
    for (const path of [...named, $schema])
      expect([path, existsSync(join(folder, path))]).toEqual([path, true]);
    expect(run(folder, bondmil, "schedule", "shop.json")).toContain("main bonding jumper main panel");
  });

  it.skipIf(full.isMissing)(`brings a command that notices a full disk${full.because}`, () => {
    const script = 'node_modules/.bin/bondmil --help > /dev/full; echo "$?"';
    expect(run(folder, "bash", "-c", script).trim()).toBe(`${exitCodes.output.code}`);
  });

  it("lets its tables be read as JSON", () => {
    const script = `const table = require("${table}"); const { evidence } = require("bondmil/tables/evidence/policies.json");
console.log(table.id, evidence["main-bonding-jumper"]["2017"].cap.level);`;
    writeFileSync(join(folder, "table.cjs"), script);
    expect(run(folder, process.execPath, "table.cjs").trim()).toBe("electrode-conductor single");
  });

  it("lets its tables be found as CSV", () => {
    const script = `const path = require.resolve("bondmil/tables/electrode-conductor.csv");
console.log(require("node:fs").readFileSync(path, "utf8").split("\\r\\n")[1]);`;
    writeFileSync(join(folder, "csv.cjs"), script);
    expect(run(folder, process.execPath, "csv.cjs").trim()).toBe(
      "2008,Table 250.66,1,2 AWG,1/0 AWG,8 AWG,6 AWG",
    );
  });

  it.skipIf(python.isMissing).each(guides)(`does what docs/%s.md does${python.because}`, (name) => {
    const guide = join(root, "docs", `${name}.md`);
    expect(partsOf(readFileSync(guide, "utf8")).some(({ kind }) => kind === "run")).toBe(true);
    expect(follow(guide, folder, env)).toEqual([]);
  });

  it("compiles in a strict TypeScript project", () => {
    const script = `import { type Outcome, mainBondingJumper, size } from "bondmil";
import { size as inBrowsers } from "bondmil/browser";
import { size as alone } from "bondmil/sizing";
import { type Implementation, runCorpus } from "bondmil/corpus";
import { rowsIn, electrodeConductor } from "bondmil/tables";
import table from "${table}" with { type: "json" };
${call}
export const least: string | undefined = outcome.kind === "conductor" ? outcome.size : undefined;
export const id: string = table.id;
export const alike: readonly (typeof size)[] = [inBrowsers, alone];
const answer = (given: Outcome) => (given.kind === "conductor" ? { size: given.size } : { outcome: given.kind });
const implementation: Implementation = ({ role, edition, input }) =>
  role === "main-bonding-jumper" ? answer(size(mainBondingJumper, { code: { year: edition }, ...input }).outcome) : null;
export const met: number = runCorpus(implementation).filter(({ verdict }) => verdict === "met").length;
export const rows: number = rowsIn(electrodeConductor, "2023").length;
// @ts-expect-error there is no such role
runCorpus(implementation, { role: "jumper" });
// @ts-expect-error there is no such edition
size(mainBondingJumper, { code: { year: "1999" }, supply: { sets: [] }, conductor: { material: "copper" } });
`;
    const compilerOptions = {
      strict: true,
      noEmit: true,
      target: "es2022",
      module: "nodenext",
      moduleResolution: "nodenext",
      resolveJsonModule: true,
      types: [],
    };
    writeFileSync(join(folder, "main.ts"), script);
    writeFileSync(join(folder, "common.cts"), script.replace(/ with \{ type: "json" \}/, ""));
    writeFileSync(
      join(folder, "tsconfig.json"),
      JSON.stringify({ compilerOptions, files: ["main.ts", "common.cts"] }),
    );
    expect(run(folder, process.execPath, join(root, "node_modules/typescript/bin/tsc"), "-p", ".")).toBe("");
  });

  it.each([
    ["nodenext", "nodenext", true],
    ["nodenext", "nodenext", false],
    ["esnext", "bundler", true],
    ["esnext", "bundler", false],
  ])(
    "has the types that tests/package/face.ts says: module %s, resolution %s, skipLibCheck %s",
    (module, moduleResolution, skipLibCheck) => {
      writeFileSync(join(folder, "face.ts"), readFileSync(join(root, "tests/package/face.ts"), "utf8"));
      const compilerOptions = {
        strict: true,
        noEmit: true,
        target: "es2022",
        lib: ["es2022"],
        module,
        moduleResolution,
        skipLibCheck,
        types: [],
      };
      writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ compilerOptions, files: ["face.ts"] }));
      expect(run(folder, process.execPath, join(root, "node_modules/typescript/bin/tsc"), "-p", ".")).toBe(
        "",
      );
    },
  );
});
