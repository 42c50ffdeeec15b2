import { type EditionYear, editionYears, type Role } from "../../../src/index.js";
import file from "../../wrong-programs/account.json" with { type: "json" };
import type { Entry } from "../runner/model.js";
import { hasEffect } from "./effect.js";
import type { NamedMistake } from "./mistakes.js";
import { checksFor, type Notices, noticesOf } from "./notice.js";

/** Editions by role and mistake. */
export type Editions = Readonly<Partial<Record<Role, Readonly<Record<string, readonly EditionYear[]>>>>>;

/** What no check notices: because none does, though the program decides otherwise, or because it decides nothing otherwise. */
export interface Account {
  readonly unnoticed: Editions;
  readonly withoutEffect: Editions;
}

/** The account as it was last settled. */
export const settledAccount = { unnoticed: file.unnoticed, withoutEffect: file.withoutEffect } as Account;

/** One wrong program of one role. */
export interface Judged {
  readonly role: Role;
  readonly mistake: NamedMistake;
  readonly notices: Notices;
}

/** Puts the checks to every wrong program of every role that its mistake can be made of. */
export function judgeAll(entries: readonly Entry[], mistakes: readonly NamedMistake[]): readonly Judged[] {
  const roles = [...new Set(mistakes.flatMap((mistake) => mistake.roles))];
  const checks = new Map(roles.map((role) => [role, checksFor(entries, role)]));
  return mistakes.flatMap((mistake) =>
    mistake.roles.map((role) => ({
      role,
      mistake,
      notices: noticesOf(mistake, role, checks.get(role) ?? []),
    })),
  );
}

/** What became of a wrong program in an edition. */
export type Fate = "published" | "arithmetic" | "unnoticed" | "without-effect";

/** The fate of a wrong program in an edition, what is not noticed being looked up in the account. */
export function fateOf({ role, mistake, notices }: Judged, year: EditionYear, account: Account): Fate {
  const notice = notices.get(year);
  if (notice !== undefined) return notice.by;
  return has(account.withoutEffect, role, mistake.id, year) ? "without-effect" : "unnoticed";
}

/** Whether an account names an edition of a mistake. */
export function has(editions: Editions, role: Role, id: string, year: EditionYear): boolean {
  return editions[role]?.[id]?.includes(year) ?? false;
}

/** The account made anew: whatever no check notices is tried on the grid of its role. Takes about a minute. */
export function accountOf(all: readonly Judged[]): Account {
  const open = all.map((judged) => {
    const years = editionYears.filter((year) => !judged.notices.has(year));
    const acting = years.filter((year) => hasEffect(judged.mistake, judged.role, year));
    return { judged, acting, idle: years.filter((year) => !acting.includes(year)) };
  });
  const collect = (pick: (one: (typeof open)[number]) => readonly EditionYear[]): Editions => {
    const found: Partial<Record<Role, Record<string, readonly EditionYear[]>>> = {};
    for (const one of open) {
      const { role, mistake } = one.judged;
      const years = pick(one);
      if (years.length > 0) found[role] = { ...found[role], [mistake.id]: years };
    }
    return found;
  };
  return { unnoticed: collect(({ acting }) => acting), withoutEffect: collect(({ idle }) => idle) };
}

/** One line for each edition of a program in which the checks and the settled account do not agree. Nothing else than checks is run. */
export function disagreements(all: readonly Judged[], account: Account): readonly string[] {
  return all.flatMap(({ role, mistake, notices }) =>
    editionYears.flatMap((year) => {
      const isListed = [account.unnoticed, account.withoutEffect].some((list) =>
        has(list, role, mistake.id, year),
      );
      const what = `${mistake.id} of the ${role} in ${year}`;
      if (notices.has(year))
        return isListed ? [`${what} is noticed now: settle the account, it may only shrink`] : [];
      return isListed ? [] : [`${what} is noticed by no check any more`];
    }),
  );
}

/** What an account made anew has that the settled one has not: programs that are unnoticed and were not. An empty account grows in nothing. */
export function growthOf(made: Account, settled: Account): readonly string[] {
  const isEmpty = Object.keys(settled.unnoticed).length === 0;
  if (isEmpty) return [];
  return Object.entries(made.unnoticed).flatMap(([role, mistakes]) =>
    Object.entries(mistakes ?? {}).flatMap(([id, years]) =>
      years
        .filter((year) => !has(settled.unnoticed, role as Role, id, year))
        .map((year) => `${id} of the ${role} in ${year}`),
    ),
  );
}
