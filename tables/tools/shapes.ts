/**
 * Writes from the definitions of shapes, the files named shape.ts below src, their types, the shapes that inputs are checked against, and
 * their JSON Schemas. With `--check` it writes nothing and fails if one is stale.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { formatted } from "./generator/format.js";
import { beyond } from "./shapes/beyond.js";
import { loadDefinitions } from "./shapes/definitions.js";
import { emitModule } from "./shapes/emit.js";
import { documentSchema, inputsSchema, type JsonSchema, withoutCode } from "./shapes/json-schema.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const check = process.argv.includes("--check");
const definitions = await loadDefinitions();
const roles = Object.keys((JSON.parse(readFileSync(join(root, "tables/roles.json"), "utf8")) as Roles).roles);
const inputs = inputsSchema(
  definitions,
  Object.fromEntries(roles.map((role) => [role, `${pascal(role)}Input`])),
  {
    $id: "inputs.schema.json",
    title: "Inputs of the roles",
    description:
      "The input of each role, under its id. A shape; what it cannot say is checked by the library.",
  },
);
const schemas: Readonly<Record<string, JsonSchema>> = {
  "docs/schema/installation.schema.json": documentSchema(definitions, "Installation", {
    $id: "installation.schema.json",
    title: "Installation, its bonding and grounding",
    description: `Services, separately derived systems and what follows them, as one document. Validation also refuses: ${beyond.join("; ")}.`,
  }),
  "docs/schema/inputs.schema.json": inputs,
  "corpus/schema/inputs.schema.json": { ...withoutCode(inputs), ...checkedByRole() },
};
const texts = [
  ...definitions.modules.map(
    (module) => [`src/${module.module}.ts`, emitModule(module, definitions)] as const,
  ),
  ...Object.entries(schemas).map(([path, schema]) => [path, `${JSON.stringify(schema, null, 2)}\n`] as const),
];
const files = texts.map(([path, text]) => [path, formatted(join(root, path), text)] as const);
const stale = files.filter(([path, text]) => readIfThere(path) !== text);
if (check && stale.length > 0) {
  console.error(`stale, run "npm run generate":\n${stale.map(([path]) => path).join("\n")}`);
  process.exitCode = 1;
} else {
  for (const [path, text] of stale) writeFileSync(join(root, path), text);
  console.log(`${files.length} shapes and schemas ${check ? "are fresh" : "written"}`);
}

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(join(root, path), "utf8");
  } catch {
    return undefined;
  }
}

interface Roles {
  readonly roles: object;
}

function pascal(role: string): string {
  return role.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/** Of a file of checks: its role, and for each role what the input of its checks is. */
function checkedByRole(): JsonSchema {
  const inputOf = (role: string) => ({
    properties: {
      groups: {
        items: { properties: { checks: { items: { properties: { input: { $ref: `#/$defs/${role}` } } } } } },
      },
    },
  });
  return {
    title: "Inputs of the checks",
    description:
      "What the checks of each role give an implementation: what the library takes, less the code, which is the edition of the question.",
    properties: { role: { enum: roles } },
    allOf: roles.map((role) => ({
      if: { properties: { role: { const: role } }, required: ["role"] },
      // biome-ignore lint/suspicious/noThenProperty: a word of JSON Schema
      then: inputOf(role),
    })),
  };
}
