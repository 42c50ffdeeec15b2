import type { EditionYear } from "../../../src/edition/edition-year.js";
import type { Policies, Policy } from "../../../tables/tools/generator/by-edition.js";
import { isLimit } from "../../../tables/tools/generator/limit.js";
import type { Cited } from "../../../tables/tools/generator/model.js";
import { basisPartOf } from "../../../tables/tools/generator/policy-basis.js";
import { type Change, changeOf } from "./parts.js";

/** Fields of policies that differ between two editions. */
export function changedPolicies(
  policies: Policies,
  before: EditionYear,
  after: EditionYear,
): readonly Change[] {
  return Object.entries(policies).flatMap(([set, { [before]: old, [after]: now }]) =>
    Object.keys({ ...old.fields, ...now.fields }).flatMap((field) =>
      changeOf(`${set}: ${field}`, say(old.fields[field]), say(now.fields[field]), [
        behind(old, field)?.[1],
        behind(now, field)?.[1],
      ]),
    ),
  );
}

/** Parts of policies that stand elsewhere in the later edition. */
export function movedRules(policies: Policies, before: EditionYear, after: EditionYear): readonly Change[] {
  return Object.entries(policies).flatMap(([set, { [before]: old, [after]: now }]) =>
    Object.keys({ ...old.basis, ...now.basis }).flatMap((part) =>
      changeOf(`${set}: ${part}`, old.basis[part]?.[0] ?? "none", now.basis[part]?.[0] ?? "none", [
        old.basis[part]?.[1],
        now.basis[part]?.[1],
      ]),
    ),
  );
}

function behind({ basis, limits }: Policy, field: string): Cited | undefined {
  return limits[field] ?? basis[basisPartOf(field)];
}

function say(value: unknown): string {
  if (isLimit(value)) return `${value.copper} copper, ${value.aluminum} aluminum`;
  return value == null ? "none" : String(value);
}
