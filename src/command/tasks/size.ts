import { plainly } from "../../asking/plainly.js";
import { size } from "../../asking/size.js";
import type { Material } from "../../conductor/material.js";
import type { EditionYear } from "../../edition/edition-year.js";
import type { Role } from "../../edition/tables/roles.generated.js";
import { InputError } from "../../input/input-error.js";
import { resultDocument } from "../../report/result-document.js";
import type { AnyRole } from "../../roles/definition.js";
import { roles } from "../../roles/register.generated.js";
import type { SizingResult } from "../../rules/result.js";
import type { RunTask } from "../answer.js";
import type { Options, Task } from "../arguments.js";
import { failed, type Outcome } from "../failure.js";
import { numberOf, sizeOf, supplyOf } from "../given.js";
import { hintFor } from "../hints.js";
import { refusal } from "../refusal.js";
import { readJson } from "../source.js";
import { formatOf, refusePage, styleOf } from "../style.js";
import type { Surroundings } from "../surroundings.js";
import { writeDocument } from "../write-document.js";

/** Sizes one conductor. */
export const sizeTask: RunTask = async (task, around) => {
  const format = formatOf(task, "text");
  const page = refusePage(task, format, around);
  if (page !== null) return page;
  // A role is given: the command line was checked.
  const role: AnyRole = roles[task.role as Role];
  const input = await inputOf(role, task, around);
  if (input.failure !== undefined) return input;
  const style = styleOf(task, format, around);
  const result = sized(role, input.value, task);
  if (result.failure !== undefined) return result;
  const text =
    format === "json"
      ? JSON.stringify(result.value, null, 2)
      : writeDocument(resultDocument(result.value as never, style.options), style);
  return { value: { text, isForReading: format === "text", ending: "done" } };
};

function sized(role: AnyRole, input: object, { path }: Task): Outcome<SizingResult> {
  try {
    return { value: size<object, SizingResult>(role as never, input) };
  } catch (error) {
    // What is wrong in a file is told with its name.
    if (!(error instanceof InputError) || path !== undefined) throw error;
    return failed("refused", refusal(error.issues, `the question of the ${role.id}`));
  }
}

const ofTheQuestion = ["edition", "supply", "amperes", "conductor", "material"] as const;

async function inputOf(
  role: AnyRole,
  { path, options }: Task,
  around: Surroundings,
): Promise<Outcome<object>> {
  const given = ofTheQuestion.filter((name) => options[name] !== undefined);
  if (path !== undefined) {
    return given.length === 0
      ? ((await readJson(path, around, hintFor("size"))) as Outcome<object>)
      : wrong(`--${given[0]} asks the plainest question; leave it out beside a file, or leave the file out`);
  }
  return question(role, options);
}

/** What each kind of role goes by, as an option. */
const goesBy = {
  supply: "supply",
  rating: "amperes",
  current: "amperes",
  conductor: "conductor",
  "named-size": undefined,
} as const;

function question(role: AnyRole, options: Options): Outcome<object> {
  const by = goesBy[role.by];
  const required = ["edition", ...(by === undefined ? [] : [by, "material"])];
  const missing = required.filter((name) => options[name] === undefined);
  if (missing.length > 0) {
    return wrong(
      `${role.id} requires ${required.map((name) => `--${name}`).join(", ")}, or a file with its input; missing: ${missing.map((name) => `--${name}`).join(", ")}`,
    );
  }
  const idle = ofTheQuestion.find((name) => options[name] !== undefined && !required.includes(name));
  if (idle !== undefined) return wrong(`${role.id} does not go by --${idle}; leave it out`);
  const what = whatDecides(by, options[by ?? ""] ?? "");
  if (what.failure !== undefined) return what;
  const code = { year: options["edition"] as EditionYear };
  // The choices were checked with the command line; a role without a material looks at none.
  const material = options["material"] as Material;
  return { value: plainly<object>(role, { code, material, ...what.value }) };
}

function whatDecides(
  by: (typeof goesBy)[keyof typeof goesBy],
  text: string,
): Outcome<Partial<Parameters<typeof plainly>[1]>> {
  switch (by) {
    case "supply":
      return supplyOf(text);
    case "amperes":
      return numberOf("--amperes", text, "amperes");
    case "conductor":
      return sizeOf("--conductor", text);
    case undefined:
      return { value: {} };
  }
}

function wrong(what: string): Outcome<never> {
  return failed("usage", `${what}. See bondmil size --help.`);
}
