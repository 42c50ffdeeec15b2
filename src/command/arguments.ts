import { parseArgs } from "node:util";
import { nearest } from "../input/nearest.js";
import { failed, type Outcome } from "./failure.js";
import { type OptionFact, type SubcommandFact, type SubcommandName, subcommands } from "./subcommands.js";

/** A command line that was understood. */
export type Asked =
  | { readonly kind: "help"; readonly about: SubcommandFact | undefined }
  | { readonly kind: "version" }
  | {
      readonly kind: "task";
      readonly subcommand: SubcommandName;
      /** Path of the installation; standard input where there is none. */
      readonly installation: string | undefined;
      readonly options: Options;
    };

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
  const more = `bondmil ${subcommand.name} --help`;
  const options: Record<string, string> = {};
  const paths: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") paths.push(token.value);
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
  const [installation, extra] = paths;
  if (installation !== undefined && !subcommand.takesInstallation) {
    return failed("usage", `${subcommand.name} takes no path: "${installation}". See ${more}.`);
  }
  if (extra !== undefined)
    return failed("usage", `one installation at a time, "${extra}" is one too many. See ${more}.`);
  return {
    value: {
      kind: "task",
      subcommand: subcommand.name,
      installation: installation === "-" ? undefined : installation,
      options,
    },
  };
}

/** The parts of a value that may be several. */
export function parts({ several }: Pick<OptionFact, "several">, value: string): readonly string[] {
  return several === true ? value.split(",") : [value];
}

/** The value of an option, in words. */
function expected({ choices, several, value }: OptionFact): string {
  if (choices === undefined) return `a ${value}`;
  return `${several === true ? "some of" : "one of"} ${choices.join(", ")}`;
}

function unknown(what: string, word: string, known: readonly string[], more: string): string {
  const meant = nearest(word, known);
  const advice = meant === undefined ? `there are ${known.join(", ")}` : `did you mean ${meant}?`;
  return `there is no ${what} "${word}"; ${advice}${advice.endsWith("?") ? "" : "."} See ${more}.`;
}
