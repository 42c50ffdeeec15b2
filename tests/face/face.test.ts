import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { exported, undocumentedMembers } from "./exported.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const guides = ["README.md", ...["docs", "docs/roles"].flatMap(guidesIn)]
  .map((path) => readFileSync(root + path, "utf8"))
  .join("\n");

function guidesIn(folder: string): readonly string[] {
  return readdirSync(root + folder)
    .filter((name) => name.endsWith(".md"))
    .map((name) => `${folder}/${name}`);
}

const values = exported.filter(({ declarations }) =>
  declarations.some((one) => !ts.isInterfaceDeclaration(one) && !ts.isTypeAliasDeclaration(one)),
);

/** What a person meets first is to stay small: each name has to earn its place. */
const most = { values: 112, all: 225 } as const;

describe("the public face", () => {
  it("is small", () => {
    const own = exported.filter(({ entry }) => entry === "bondmil");
    const ownValues = values.filter(({ entry }) => entry === "bondmil");
    expect(own.length).toBeLessThanOrEqual(most.all);
    expect(ownValues.length).toBeLessThanOrEqual(most.values);
  });

  it("has a doc comment on every name", () => {
    const silent = exported.filter(
      ({ declarations }) =>
        !declarations.some((one) => {
          const documented = ts.isVariableDeclaration(one) ? one.parent.parent : one;
          return ts.getJSDocCommentsAndTags(documented).length > 0;
        }),
    );
    expect(silent.map(({ entry, name }) => `${entry} ${name}`)).toEqual([]);
  });

  it("has a comment on every member of its types", () => {
    expect(undocumentedMembers()).toEqual([]);
  });

  it("has every value of the library in a guide", () => {
    const unknown = values
      .filter(({ entry, name }) => entry === "bondmil" && !new RegExp(`\\b${name}\\b`).test(guides))
      .map(({ name }) => name);
    expect(unknown).toEqual([]);
  });
});
