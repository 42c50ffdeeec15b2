import type { EditionYear, Role } from "../../../src/index.js";
import { judge } from "../runner/judge.js";
import type { Entry } from "../runner/model.js";
import { answerOf } from "./answer-of.js";
import { type NamedMistake, programOf } from "./mistakes.js";
import { anyInput } from "./program.js";

/** A wrong program of one role, as the checks of an edition see it. */
export interface Notice {
  /** By a published answer, or only by one that follows from a rule. */
  readonly by: "published" | "arithmetic";
  /** Whether the source of a published answer states the edition itself. */
  readonly stated: boolean;
  /** The check that noticed it first. */
  readonly check: string;
}

/** The editions in which a wrong program of a role is noticed. */
export type Notices = ReadonlyMap<EditionYear, Notice>;

/** The checks of a role that can notice anything, those first that count most. What comes from memory counts nothing. */
export function checksFor(entries: readonly Entry[], role: Role): readonly Entry[] {
  const own = entries.filter((entry) => entry.role === role && entry.check.standing !== "memory");
  return [...own.filter(isPublished), ...own.filter((entry) => !isPublished(entry))];
}

/** What a source prints and the text does not contradict. A disputed answer is expected by the text, and so follows from a rule. */
function isPublished({ check }: Entry): boolean {
  return check.standing === "cited";
}

/** Puts the checks of a role to a wrong program. */
export function noticesOf(mistake: NamedMistake, role: Role, checks: readonly Entry[]): Notices {
  const wrong = programOf(mistake);
  const found = new Map<EditionYear, Notice>();
  for (const { check } of checks) {
    const published = check.standing === "cited";
    for (const year of check.holds) {
      const so = found.get(year);
      const states = published && check.stated === year;
      if (so !== undefined && (so.stated || !states)) continue;
      const given = answerOf(wrong, { role, year, input: anyInput(check.input) });
      if (judge(check, given).verdict === "met") continue;
      const by = published ? "published" : "arithmetic";
      found.set(year, so === undefined ? { by, stated: states, check: check.id } : { ...so, stated: true });
    }
  }
  return found;
}
