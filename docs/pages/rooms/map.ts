import { readFileSync } from "node:fs";
import { importsOf, readTree, roomOf } from "./imports.js";
import { type Room, rooms } from "./rooms.js";
import { type ToolRoom, toolRooms } from "./tool-rooms.js";

const begin = "<!-- The map of the rooms is generated: npm run pages -- rooms -->\n";
const end = "<!-- The map ends here. -->";

const tree = readTree();

/** The contributor guide with the map of the rooms as they are. */
export function guideWithRooms(): string {
  const text = readFileSync(new URL("../../../DEVELOPERS.md", import.meta.url), "utf8");
  const [before, rest] = text.split(begin);
  const after = rest?.split(end)[1];
  if (before === undefined || after === undefined)
    throw new Error(`DEVELOPERS.md has lost "${begin.trim()}" or "${end}"`);
  const lines = [
    "| room | what | imports |",
    "| --- | --- | --- |",
    ...rooms.map(line),
    "",
    "So do the tools beside the data, which are no part of the library:",
    "",
    "| tools | what | may import of src |",
    "| --- | --- | --- |",
    ...toolRooms.map(toolLine),
  ];
  return `${before}${begin}\n${lines.join("\n")}\n\n${end}${after}`;
}

function line({ name, what }: Room): string {
  return `| \`${name}\` | ${what} | ${roomsAndPackagesOf(name).join(", ") || "nothing"} |`;
}

function toolLine({ name, what, src }: ToolRoom): string {
  const paths = src.map((path) => (path === "" ? "all" : `\`${path}\``));
  return `| \`${name}\` | ${what} | ${paths.join(", ")} |`;
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
