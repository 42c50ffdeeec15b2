import { gridOf } from "../../../src/asking/grid.js";
import { type AnyRole, type Code, type EditionYear, type Role, roles } from "../../../src/index.js";
import type { AnyInput } from "./program.js";
import { variantsOf } from "./variants.js";

/** Numbers of sets of the grid of a role that are walked here: one, and several in parallel. */
const counts = new Set([1, 5]);

const plain = { code: { year: "2023" }, material: "copper", amperes: 100, size: "4 AWG" } as const;
const oneSet = { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] } as const;

/**
 * Inputs of a role that show whether a mistake can change anything: what is particular about it, every standard size and rating of its own grid,
 * and nothing at random.
 */
export function gridFor(role: Role, year: EditionYear): readonly AnyInput[] {
  const kept = grids.get(`${role} ${year}`);
  if (kept !== undefined) return kept;
  const grid = [...variantsOf(role), ...ownGrid(role, year)];
  grids.set(`${role} ${year}`, grid);
  return grid;
}

const grids = new Map<string, readonly AnyInput[]>();

function ownGrid(role: Role, year: EditionYear): readonly AnyInput[] {
  const asked: AnyRole = roles[role];
  const code: Code = { year };
  return gridOf(asked, code)
    .filter(({ question: { supply } }) => counts.has(supply?.sets[0]?.count ?? 1))
    .map(({ question }) => {
      const { code: _, ...input } = asked.plainest({ supply: oneSet, ...plain, ...question });
      return input;
    });
}
