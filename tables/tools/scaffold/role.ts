import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { formatted } from "../generator/format.js";
import type { RolesFile } from "../generator/model.js";
import { filesOfRole, roleEntry } from "./role-stubs.js";
import type { Said } from "./scaffold.js";

const list = "tables/roles.json";

/** Writes the stubs of a new role and its entry in the list of roles; all of it or nothing. */
export function scaffoldRole(root: string, role: string): Said {
  const at = (path: string): string => join(root, path);
  if (!/^[a-z]+(?:-[a-z]+)+$/.test(role)) {
    return refused('name the role in lower case with hyphens, for example "roof-bonding-jumper"');
  }
  const stubs = filesOfRole(role);
  const there = stubs.map(({ path }) => path).filter((path) => existsSync(at(path)));
  const file = JSON.parse(readFileSync(at(list), "utf8")) as RolesFile;
  const known = Object.hasOwn(file.roles, role) ? [list] : [];
  if (known.length + there.length > 0) {
    return refused(`${role} is already in these files, and nothing was written:`, ...known, ...there);
  }

  const longer = { ...file, roles: { ...file.roles, [role]: roleEntry(role) } };
  const entry = { path: list, text: JSON.stringify(longer) };
  const all = [entry, ...stubs].map(({ path, text }) => ({ path, text: formatted(path, text) }));
  for (const { path, text } of all) {
    mkdirSync(dirname(at(path)), { recursive: true });
    writeFileSync(at(path), text);
  }
  return {
    ok: true,
    lines: [
      ...all.map(({ path }) => `written: ${path}`),
      `next: fill ${list} and "npm run generate", which registers ${role}; "npm run types" then names what else is missing`,
      "then: its laws in tests/laws, a line in README.md",
    ],
  };
}

function refused(...lines: readonly string[]): Said {
  return { lines, ok: false };
}
