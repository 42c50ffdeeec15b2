import { readdirSync, readFileSync } from "node:fs";
import type { Installation } from "bondmil";

/** Names of the installations of which everything is kept. */
export const keptNames = readdirSync(new URL(".", import.meta.url)).filter((name) => /^\d+$/.test(name));

/** The place of a file that is kept of an installation. */
export const fileOf = (name: string, file: string) => new URL(`./${name}/${file}`, import.meta.url);

export function keptInstallation(name: string): Installation {
  return JSON.parse(readFileSync(fileOf(name, "installation.json"), "utf8")) as Installation;
}
