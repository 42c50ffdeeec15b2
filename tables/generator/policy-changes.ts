import type { EditionYear } from "../../src/edition/edition-year.js";
import { isLimit } from "./emit.js";
import type { BasisPair, PoliciesFile, PolicyBlock } from "./model.js";
import { type Change, changeOf } from "./page-parts.js";
import { basisPartOf } from "./policy-basis.js";

type Fields = Readonly<Record<string, unknown>>;

/** Fields of policies that differ between two editions. */
export function changedPolicies(
  file: PoliciesFile,
  before: EditionYear,
  after: EditionYear,
): readonly Change[] {
  return inBoth(file, before, after, (set, old, now) =>
    Object.keys({ ...fieldsOf(old), ...fieldsOf(now) }).flatMap((field) =>
      changeOf(`${set}: ${field}`, say(old[field]), say(now[field]), [
        behind(old, field)?.[1],
        behind(now, field)?.[1],
      ]),
    ),
  );
}

/** Parts of policies that stand elsewhere in the later edition. */
export function movedRules(file: PoliciesFile, before: EditionYear, after: EditionYear): readonly Change[] {
  return inBoth(file, before, after, (set, old, now) =>
    Object.keys({ ...old.basis, ...now.basis }).flatMap((part) =>
      changeOf(`${set}: ${part}`, old.basis[part]?.[0] ?? "none", now.basis[part]?.[0] ?? "none", [
        old.basis[part]?.[1],
        now.basis[part]?.[1],
      ]),
    ),
  );
}

function inBoth(
  file: PoliciesFile,
  before: EditionYear,
  after: EditionYear,
  changes: (set: string, old: PolicyBlock, now: PolicyBlock) => readonly Change[],
): readonly Change[] {
  return Object.entries(file.policies).flatMap(([set, blocks]) => {
    const old = blocks.find(({ editions }) => editions.includes(before));
    const now = blocks.find(({ editions }) => editions.includes(after));
    return old === undefined || now === undefined ? [] : changes(set, old, now);
  });
}

function fieldsOf(policy: PolicyBlock): Fields {
  const { editions: _editions, basis: _basis, note: _note, ...fields } = policy;
  return Object.fromEntries(Object.entries(fields).filter(([field]) => field !== "sources"));
}

function behind(policy: PolicyBlock, field: string): BasisPair | undefined {
  const value = policy[field];
  return isLimit(value) ? value.citation : policy.basis[basisPartOf(field)];
}

function say(value: unknown): string {
  if (isLimit(value)) return `${value.copper} copper, ${value.aluminum} aluminum`;
  return value == null ? "none" : String(value);
}
