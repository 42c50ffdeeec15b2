import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { roles } from "../../src/edition/role.js";
import { formatted } from "../generator/format.js";
import { filesOfRole, roleEntry, sizingFunctionOf } from "./role-stubs.js";
import type { Said } from "./scaffold.js";

const list = "src/edition/role.ts";
const facts = "tables/roles.json";
const face = "src/index.ts";

/** Writes the stubs of a new role and its name into the list of roles; all of it or nothing. */
export function scaffoldRole(root: string, role: string): Said {
  const at = (path: string): string => join(root, path);
  if (!/^[a-z]+(?:-[a-z]+)+$/.test(role)) {
    return refused('name the role in lower case with hyphens, for example "roof-bonding-jumper"');
  }
  const stubs = filesOfRole(role);
  const there = stubs.map(({ path }) => path).filter((path) => existsSync(at(path)));
  const known = (roles as readonly string[]).includes(role) ? [list] : [];
  if (known.length + there.length > 0) {
    return refused(`${role} is already in these files, and nothing was written:`, ...known, ...there);
  }

  const changed = [
    { path: list, text: withMember(readFileSync(at(list), "utf8"), role) },
    { path: facts, text: withEntry(readFileSync(at(facts), "utf8"), role) },
    {
      path: face,
      text: `${readFileSync(at(face), "utf8")}\nexport { ${sizingFunctionOf(role)} } from "./rules/${role}.js";\n`,
    },
  ];
  const all = [...changed, ...stubs].map(({ path, text }) => ({ path, text: formatted(path, text) }));
  for (const { path, text } of all) writeFileSync(at(path), text);
  return {
    ok: true,
    lines: [
      ...all.map(({ path }) => `written: ${path}`),
      `next: fill ${facts} and "npm run generate"; "npm run types" then names what else has to answer for ${role}`,
      "then: its input in corpus/schema/checks.schema.json, its laws in tests/laws, a line in README.md",
    ],
  };
}

function withMember(text: string, role: string): string {
  const longer = text.replace(/\n\] as const;/, `\n  "${role}",\n] as const;`);
  if (longer === text) throw new Error(`${list} has no list of roles that ends with "] as const;"`);
  return longer;
}

function withEntry(text: string, role: string): string {
  const file = JSON.parse(text) as { readonly roles: Readonly<Record<string, unknown>> };
  return JSON.stringify({ ...file, roles: { ...file.roles, [role]: roleEntry(role) } });
}

function refused(...lines: readonly string[]): Said {
  return { lines, ok: false };
}
