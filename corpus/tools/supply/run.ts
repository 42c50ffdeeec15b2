import type { EditionYear } from "../../../src/index.js";
import type { Filter } from "../runner/select.js";
import { judgeAnswer, type SupplyJudgement } from "./judge.js";
import type { SupplyEntry } from "./model.js";
import { answerTo } from "./questions.js";

/** A check under one edition, judged. */
export interface SupplyRow extends SupplyEntry, SupplyJudgement {
  readonly edition: EditionYear;
}

/** The checks that a filter leaves; one of a role or a flag leaves none, for they have neither. */
export function selectSupplies(
  entries: readonly SupplyEntry[],
  { role, flag, source, standing, edition }: Filter,
): readonly SupplyEntry[] {
  if (role !== undefined || flag !== undefined) return [];
  return entries
    .filter((entry) => source === undefined || entry.source === source)
    .filter(({ check }) => standing === undefined || check.standing === standing)
    .map((entry) => {
      const holds = entry.check.holds.filter((year) => edition === undefined || year === edition);
      return { ...entry, check: { ...entry.check, holds } };
    });
}

/** Asks the question of every check under every edition in which it holds, and judges the answer. */
export function runSupplies(entries: readonly SupplyEntry[]): readonly SupplyRow[] {
  return entries.flatMap((entry) =>
    entry.check.holds.map((edition) => {
      const answer = answerTo(entry.question, edition, entry.check.input);
      return { ...entry, edition, ...judgeAnswer(entry.check, answer) };
    }),
  );
}
