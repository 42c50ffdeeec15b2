/** Writes the map of the rooms into the contributor guide: npm run rooms */
import { readFileSync } from "node:fs";
import { importsOf, readTree, roomOf } from "./rooms/imports.js";
import { type Room, rooms } from "./rooms/rooms.js";
import { writePage } from "./write-page.js";

const guide = "../DEVELOPERS.md";
const begin = "<!-- The map of the rooms is generated: npm run rooms -->\n";
const end = "<!-- The map ends here. -->";

const tree = readTree();
const text = readFileSync(new URL(guide, import.meta.url), "utf8");
const [before, rest] = text.split(begin);
const after = rest?.split(end)[1];
if (before === undefined || after === undefined)
  throw new Error(`DEVELOPERS.md has lost "${begin.trim()}" or "${end}"`);

const lines = ["| room | what | imports |", "| --- | --- | --- |", ...rooms.map(line)];
writePage(guide, `${before}${begin}\n${lines.join("\n")}\n\n${end}${after}`, "rooms");

function line({ name, what }: Room): string {
  return `| \`${name}\` | ${what} | ${roomsAndPackagesOf(name).join(", ") || "nothing"} |`;
}

function roomsAndPackagesOf(room: string): readonly string[] {
  const targets = [...tree]
    .filter(([file]) => roomOf(file) === room)
    .flatMap(([file, source]) => importsOf(file, source))
    .map((target) => (tree.has(target) ? roomOf(target) : `package ${target}`));
  const found = new Set(targets);
  const above = rooms.map(({ name }) => name).filter((name) => name !== room && found.has(name));
  return [...above, ...[...found].filter((target) => target.startsWith("package ")).sort()];
}
