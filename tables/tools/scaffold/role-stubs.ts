import { editionYears } from "../../../src/edition/edition-year.js";
import { unfilled } from "../generator/answers.js";

/** A file that a new role needs, with a text that no check passes before it is written. */
export interface StubFile {
  readonly path: string;
  readonly text: string;
}

/** The value, the shape and the reading of its input, the rule, the test, the checks and the page, under the one name of the role. */
export function filesOfRole(role: string): readonly StubFile[] {
  return [
    { path: `src/roles/${role}/index.ts`, text: valueStub(role) },
    { path: `src/roles/${role}/shape.ts`, text: shapeStub(role) },
    { path: `src/roles/${role}/input.ts`, text: inputStub(role) },
    { path: `src/roles/${role}/rule.ts`, text: ruleStub(role) },
    { path: `tests/roles/${role}.test.ts`, text: testStub(role) },
    { path: `corpus/${role}.json`, text: corpusStub(role) },
    { path: `docs/roles/${role}.md`, text: pageStub(role) },
  ];
}

/** What `tables/roles.json` has to know of a role. */
export function roleEntry(role: string): object {
  const name = { [unfilled]: role.replaceAll("-", " ") };
  return { purpose: { [unfilled]: "fault-path" }, names: [{ from: editionYears[0], name }] };
}

function pascal(role: string): string {
  return role
    .split("-")
    .map((word) => `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`)
    .join("");
}

/** The name of the value of a role. */
function camel(role: string): string {
  const name = pascal(role);
  return `${name.slice(0, 1).toLowerCase()}${name.slice(1)}`;
}

function inputOf(role: string): string {
  return `${pascal(role)}Input`;
}

/** An example that is tested, and fails. */
function example(role: string): string {
  return `import { ${camel(role)}, size } from "bondmil";
size(${camel(role)}, { code: { year: "${editionYears.at(-1)}" } }).outcome; // => "to be written"`;
}

function valueStub(role: string): string {
  return `import { ${camel(role)}Facts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleByOther } from "../definition.js";
import { type ${inputOf(role)}, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * To be written: what the conductor connects, and the section that requires it. Areas are in circular mils.
 *
 * @example
 * \`\`\`ts
${example(role).replace(/^/gm, " * ")}
 * \`\`\`
 */
export const ${camel(role)}: RoleByOther<"${role}", ${inputOf(role)}, SizedResult<"${role}">> = {
  id: "${role}",
  facts: ${camel(role)}Facts,
  // To be answered: what decides its size. By a supply or a rating it also names its policies.
  by: "named-size",
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code }) => ({ code }),
};
`;
}

function shapeStub(role: string): string {
  const name = camel(inputOf(role));
  return `import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { says } from "../../input/define.js";

export const ${name} = v.pipe(v.strictObject({ code }), says("To be written: what decides the size."));
`;
}

function inputStub(role: string): string {
  const shape = `${camel(inputOf(role))}Shape`;
  return `import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { type ${inputOf(role)}, ${shape} } from "./shape.generated.js";

export type { ${inputOf(role)} };

/** Checks the input. */
export function readInput(at: Reader): ${inputOf(role)} | undefined {
  return readShape<${inputOf(role)}>(at, ${shape});
}
`;
}

function ruleStub(role: string): string {
  return `import type { SizedResult } from "../../rules/result.js";
import type { ${inputOf(role)} } from "./input.js";

/** To be written: picks the policy and asks the kernel. */
export function decide(_input: ${inputOf(role)}): SizedResult<"${role}"> {
  throw new Error("the rule of ${role} is not written yet");
}
`;
}

function testStub(role: string): string {
  return `import { describe, expect, it } from "vitest";

describe("${camel(role)}", () => {
  it("has tests", () => expect.fail("the tests of ${role} are not written yet"));
});
`;
}

function corpusStub(role: string): string {
  const checks = {
    $schema: "./schema/checks.schema.json",
    version: 1,
    role,
    count: 0,
    flags: {},
    groups: [],
  };
  return JSON.stringify(checks);
}

function pageStub(role: string): string {
  const title = role.replaceAll("-", " ");
  return `# ${title.slice(0, 1).toUpperCase()}${title.slice(1)}

To be written: where it goes, what it is for, what decides its size in each edition, and the usual mistakes.

\`\`\`ts
${example(role)}
\`\`\`
`;
}
