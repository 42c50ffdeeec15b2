import { parseArgs } from "node:util";
import { editionYears, roleIds } from "../../../src/index.js";
import { type Corpus, standings, voices } from "./model.js";
import { assumedKinds, type Filter } from "./select.js";

const text = { type: "string" } as const;
const options = {
  role: text,
  source: text,
  flag: text,
  edition: text,
  standing: text,
  voice: text,
  assumed: text,
} as const;

/** How the command is called. */
export const usage =
  "usage: npm run corpus -- [--role ROLE] [--source ID] [--flag FLAG] [--edition YEAR] [--standing STANDING] [--voice VOICE] [--assumed none|some]";

/**
 * The filter that a command line gives.
 *
 * @throws Error that names the option, and what may stand there, where a value is not one of the corpus
 */
export function readFilter(args: readonly string[], { files, sources }: Corpus): Filter {
  const { values } = parseArgs({ args: [...args], options });
  const { role, source, flag, edition, standing, voice, assumed } = values;
  const flags = files.flatMap((file) => Object.keys(file.flags));
  return {
    role: oneOf("role", role, roleIds),
    edition: oneOf("edition", edition, editionYears),
    standing: oneOf("standing", standing, standings),
    voice: oneOf("voice", voice, voices),
    assumed: oneOf("assumed", assumed, assumedKinds),
    source: known("source", source, Object.keys(sources), "an id of tables/sources.json"),
    flag: known("flag", flag, flags, "a flag of one of the files"),
  };
}

function oneOf<T extends string>(
  option: string,
  given: string | undefined,
  members: readonly T[],
): T | undefined {
  const member = members.find((one) => one === given);
  if (given !== undefined && member === undefined) refuse(option, given, `one of ${members.join(", ")}`);
  return member;
}

function known(
  option: string,
  given: string | undefined,
  members: readonly string[],
  expected: string,
): string | undefined {
  if (given !== undefined && !members.includes(given)) refuse(option, given, expected);
  return given;
}

function refuse(option: string, given: string, expected: string): never {
  throw new Error(`--${option} ${given}: expected ${expected}`);
}
