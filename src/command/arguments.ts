import { parseArgs } from "node:util";
import { type Role, roleIds } from "../edition/tables/roles.generated.js";
import { nearest } from "../input/nearest.js";
import type { OptionFact, SubcommandFact, SubcommandName } from "./facts/fact.js";
import { failed, type Outcome } from "./failure.js";
import { subcommands } from "./subcommands.js";

/** A command line that was understood. */
export type Asked =
  | { readonly kind: "help"; readonly about: SubcommandFact | undefined }
  | { readonly kind: "version" }
  | ({ readonly kind: "task" } & Task);

/** A subcommand with what it was given. */
export interface Task {
  readonly subcommand: SubcommandName;
  /** Of a subcommand that takes one. */
  readonly role: Role | undefined;
  /** Path of a file, `-` for standard input. */
  readonly path: string | undefined;
  readonly options: Options;
}

/** Options as they were given, by name. */
export type Options = Readonly<Record<string, string>>;

/** Understands a command line, without the name of the program. */
export function readArguments(words: readonly string[]): Outcome<Asked> {
  const [first, ...rest] = words;
  if (first === undefined || first === "--help" || first === "-h") return help(undefined);
  if (first === "--version") return { value: { kind: "version" } };
  if (first === "help" && rest[0] === undefined) return help(undefined);
  const name = first === "help" ? rest[0] : first;
  const subcommand = subcommands.find((one) => one.name === name);
  if (subcommand === undefined)
    return failed("usage", unknown("subcommand", name ?? "", names, "bondmil --help"));
  return first === "help" ? help(subcommand) : readTask(subcommand, rest);
}

const names = subcommands.map(({ name }) => name);

function help(about: SubcommandFact | undefined): Outcome<Asked> {
  return { value: { kind: "help", about } };
}

function readTask(subcommand: SubcommandFact, words: readonly string[]): Outcome<Asked> {
  const known = subcommand.options.map(
    ({ name, value }) => [name, { type: value === undefined ? "boolean" : "string" }] as const,
  );
  const { tokens } = parseArgs({
    args: [...words],
    options: { ...Object.fromEntries(known), help: { type: "boolean", short: "h" } },
    strict: false,
    tokens: true,
  });
  if (tokens.some((token) => token.kind === "option" && token.name === "help")) return help(subcommand);
  const more = moreOf(subcommand);
  const options: Record<string, string> = {};
  const operands: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") operands.push(token.value);
    if (token.kind !== "option") continue;
    const fact = subcommand.options.find(({ name }) => name === token.name);
    const written = token.rawName;
    if (fact === undefined) {
      const all = subcommand.options.map(({ name }) => `--${name}`);
      return failed("usage", unknown("option", written, all, more));
    }
    if (fact.value === undefined) {
      if (token.value !== undefined) return failed("usage", `${written} takes no value. See ${more}.`);
      options[fact.name] = "yes";
      continue;
    }
    if (token.value === undefined || (!token.inlineValue && token.value.startsWith("--"))) {
      return failed("usage", `${written} requires a value: ${expected(fact)}. See ${more}.`);
    }
    if (Object.hasOwn(options, fact.name)) return failed("usage", `${written} is given twice. See ${more}.`);
    const wrong = parts(fact, token.value).find((part) => fact.choices?.includes(part) === false);
    if (wrong !== undefined) {
      return failed("usage", `${written} does not know "${wrong}": ${expected(fact)}. See ${more}.`);
    }
    options[fact.name] = token.value;
  }
  const given = readOperands(subcommand, operands);
  if (given.failure !== undefined) return given;
  return { value: { kind: "task", subcommand: subcommand.name, ...given.value, options } };
}

/** What stands beside the options: the id of a role, the path of a file, both, or nothing. */
function readOperands(
  subcommand: SubcommandFact,
  operands: readonly string[],
): Outcome<Pick<Task, "role" | "path">> {
  const { name, takes } = subcommand;
  const more = moreOf(subcommand);
  const takesRole = takes.includes("role");
  const [role, ...paths] = takesRole ? operands : [undefined, ...operands];
  if (takesRole && role === undefined) {
    return failed("usage", `${name} requires a role: one of ${roleIds.join(", ")}. See ${more}.`);
  }
  if (role !== undefined && !isRole(role)) return failed("usage", unknown("role", role, roleIds, more));
  const [path, extra] = paths;
  if (path !== undefined && takes.every((one) => one === "role")) {
    return failed("usage", `${name} takes no path: "${path}". See ${more}.`);
  }
  if (extra !== undefined)
    return failed("usage", `one file at a time, "${extra}" is one too many. See ${more}.`);
  return { value: { role, path } };
}

function isRole(word: string): word is Role {
  return (roleIds as readonly string[]).includes(word);
}

function moreOf({ name }: SubcommandFact): string {
  return `bondmil ${name} --help`;
}

/** The parts of a value that may be several. */
export function parts({ several }: Pick<OptionFact, "several">, value: string): readonly string[] {
  return several === true ? value.split(",") : [value];
}

/** The value of an option, in words. */
function expected({ choices, several, value }: OptionFact): string {
  if (choices === undefined) return several === true ? `${value} with commas between` : `a ${value}`;
  return `${several === true ? "some of" : "one of"} ${choices.join(", ")}`;
}

function unknown(what: string, word: string, known: readonly string[], more: string): string {
  const meant = nearest(word, known);
  const advice = meant === undefined ? `there are ${known.join(", ")}` : `did you mean ${meant}?`;
  return `there is no ${what} "${word}"; ${advice}${advice.endsWith("?") ? "" : "."} See ${more}.`;
}
