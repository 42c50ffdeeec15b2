import { editionYears } from "../../src/edition/edition-year.js";
import { unfilled } from "../generator/answers.js";

/** A file that a new role needs, with a text that no check passes before it is written. */
export interface StubFile {
  readonly path: string;
  readonly text: string;
}

/** The rule, its test, its checks and its page, under the one name of the role. */
export function filesOfRole(role: string): readonly StubFile[] {
  const size = sizingFunctionOf(role);
  return [
    { path: `src/rules/${role}.ts`, text: ruleStub(role, size) },
    { path: `tests/rules/${role}.test.ts`, text: testStub(role, size) },
    { path: `corpus/${role}.json`, text: corpusStub(role) },
    { path: `docs/rules/${role}.md`, text: pageStub(role, size) },
  ];
}

/** What `tables/roles.json` has to know of a role. */
export function roleEntry(role: string): object {
  const names = editionYears.map((year) => [year, { [unfilled]: role.replaceAll("-", " ") }]);
  return { purpose: { [unfilled]: "fault-path" }, name: Object.fromEntries(names) };
}

/** The name of the function that sizes a role. */
export function sizingFunctionOf(role: string): string {
  return `size${pascalCase(role)}`;
}

function pascalCase(role: string): string {
  return role
    .split("-")
    .map((word) => `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`)
    .join("");
}

function ruleStub(role: string, size: string): string {
  const input = `${pascalCase(role)}Input`;
  return `import type { Code } from "../edition/index.js";
import type { SizingResult } from "./result.js";

/** To be written: what decides the size. */
export interface ${input} {
  readonly code: Code;
}

/**
 * To be written: what the conductor connects, and the section that sizes it.
 *
 * @param input - to be written, with units
 * @returns the size with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * \`\`\`ts
 * import { ${size} } from "bondmil";
 * ${size}({ code: { year: "${editionYears.at(-1)}" } }).outcome; // => "to be written"
 * \`\`\`
 */
export function ${size}(_input: ${input}): SizingResult {
  throw new Error("${size} is not written yet");
}
`;
}

function testStub(role: string, size: string): string {
  return `import { describe, expect, it } from "vitest";

describe("${size}", () => {
  it("has tests", () => expect.fail("the tests of ${role} are not written yet"));
});
`;
}

function corpusStub(role: string): string {
  const checks = { $schema: "./schema/checks.schema.json", version: 1, role, flags: {}, groups: [] };
  return JSON.stringify(checks);
}

function pageStub(role: string, size: string): string {
  const title = role.replaceAll("-", " ");
  return `# ${title.slice(0, 1).toUpperCase()}${title.slice(1)}

To be written: where it goes, what it is for, what decides its size in each edition, and the usual mistakes.

\`\`\`ts
import { ${size} } from "bondmil";

${size}({ code: { year: "${editionYears.at(-1)}" } }).outcome; // => "to be written"
\`\`\`
`;
}
