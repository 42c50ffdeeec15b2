import { sweep } from "../../comparison/sweep.js";
import type { RatingSweepRow } from "../../comparison/sweep-rating.js";
import type { SupplySweepRow } from "../../comparison/sweep-supply.js";
import type { Material } from "../../conductor/material.js";
import type { ConductorSize } from "../../conductor/size.js";
import type { EditionYear } from "../../edition/edition-year.js";
import type { Role } from "../../edition/tables/roles.generated.js";
import { InputError } from "../../input/input-error.js";
import { rowsDocument } from "../../report/rows-document.js";
import type { AnyRole, RoleByRating, RoleBySupply } from "../../roles/definition.js";
import { roles } from "../../roles/register.generated.js";
import type { RunTask } from "../answer.js";
import type { Options } from "../arguments.js";
import { failed, type Outcome } from "../failure.js";
import { numberOf, sizeOf } from "../given.js";
import { refusal } from "../refusal.js";
import { formatOf } from "../style.js";
import { writeDocument } from "../write-document.js";

/** Sizes a role for many supplies or devices. */
export const sweepTask: RunTask = async (task) => {
  // A role is given: the command line was checked.
  const role: AnyRole = roles[task.role as Role];
  const rows = rowsOf(role, task.options);
  if (rows.failure !== undefined) return rows;
  const text =
    formatOf(task, "csv") === "csv"
      ? writeDocument(rowsDocument(rows.value), { format: "csv", width: undefined })
      : rows.value.map((row) => JSON.stringify(row)).join("\n");
  return { value: { text, isForReading: false, ending: "done" } };
};

type Rows = readonly (SupplySweepRow | RatingSweepRow)[];

function rowsOf(role: AnyRole, options: Options): Outcome<Rows> {
  try {
    if (role.by === "supply") return supplyRows(role, options);
    if (role.by === "rating") return ratingRows(role, options);
  } catch (error) {
    if (error instanceof InputError) return failed("refused", refusal(error.issues, "the sweep"));
    throw error;
  }
  return wrong(
    `${role.id} goes by neither a supply nor a device; size it with bondmil size or bondmil stream`,
  );
}

function supplyRows(role: RoleBySupply, options: Options): Outcome<Rows> {
  const unfit = unfitting(role, options, ["supply-material", "material"], ["amperes"]);
  if (unfit !== null) return unfit;
  const sizes = listOf(options["sizes"], (text) => sizeOf("--sizes", text), "size");
  if (sizes.failure !== undefined) return sizes;
  const counts = listOf(options["sets"], (text) => numberOf("--sets", text, "count"), "count");
  if (counts.failure !== undefined) return counts;
  const materials = some<Material>(options["material"]);
  return {
    value: some<Material>(options["supply-material"]).flatMap((supplyMaterial) =>
      materials.flatMap((material) =>
        sweep(role, {
          ...editionsIn(options),
          supplyMaterial,
          material,
          ...(sizes.value && { sizes: sizes.value as ConductorSize[] }),
          ...(counts.value && { counts: counts.value }),
        }),
      ),
    ),
  };
}

function ratingRows(role: RoleByRating, options: Options): Outcome<Rows> {
  const unfit = unfitting(role, options, ["material"], ["supply-material", "sizes", "sets"]);
  if (unfit !== null) return unfit;
  const ratings = listOf(options["amperes"], (text) => numberOf("--amperes", text, "amperes"), "amperes");
  if (ratings.failure !== undefined) return ratings;
  return {
    value: some<Material>(options["material"]).flatMap((material) =>
      sweep(role, { ...editionsIn(options), material, ...(ratings.value && { ratings: ratings.value }) }),
    ),
  };
}

function editionsIn({ editions }: Options): { readonly editions?: readonly EditionYear[] } {
  return editions === undefined ? {} : { editions: some<EditionYear>(editions) };
}

/** Parts whose choices were checked with the command line. */
function some<Choice extends string>(text = ""): readonly Choice[] {
  return text.split(",") as Choice[];
}

/** The parts of an option, each read; nothing where it is not given. */
function listOf<Name extends string, Item>(
  text: string | undefined,
  read: (part: string) => Outcome<{ readonly [_ in Name]: Item }>,
  name: Name,
): Outcome<readonly Item[] | undefined> {
  if (text === undefined) return { value: undefined };
  const items: Item[] = [];
  for (const part of text.split(",")) {
    const one = read(part.trim());
    if (one.failure !== undefined) return one;
    items.push(one.value[name]);
  }
  return { value: items };
}

/** Options that are missing for a role, or that it has no use for. */
function unfitting(
  { id, by }: AnyRole,
  options: Options,
  required: readonly string[],
  idle: readonly string[],
): Outcome<never> | null {
  const what = by === "supply" ? "its supply" : "its overcurrent device";
  const missing = required.filter((name) => options[name] === undefined).map((name) => `--${name}`);
  if (missing.length > 0) return wrong(`${id} goes by ${what}: ${missing.join(" and ")} must be given`);
  const extra = idle.find((name) => options[name] !== undefined);
  return extra === undefined ? null : wrong(`${id} goes by ${what}: leave out --${extra}`);
}

function wrong(what: string): Outcome<never> {
  return failed("usage", `${what}. See bondmil sweep --help.`);
}
