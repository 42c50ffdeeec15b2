import { formatArea, standardSizeFor, standardSizes } from "bondmil";

/** One configuration under the default and under another alternative. */
export interface Case {
  readonly name: string;
  /** Circular mils under the default. */
  readonly before: number;
  /** Circular mils under the other alternative. */
  readonly after: number;
  /** How many configurations of the grid come out so. */
  readonly count: number;
  /** Whether somebody might have it; such a case is preferred as an example. */
  readonly ordinary: boolean;
}

/** What an alternative changes in many configurations. */
export interface Tally {
  readonly total: number;
  readonly smaller: Direction;
  readonly larger: Direction;
}

interface Direction {
  readonly count: number;
  /** Configurations by number of standard sizes. */
  readonly bySteps: Readonly<Record<number, number>>;
  /** The first ordinary one of those that change by the commonest number of sizes; the first of any if none is ordinary. */
  readonly example: string | null;
}

/** Which conductors, in which edition, under which alternative. */
export interface TallyRow {
  readonly of: string;
  readonly edition: string;
  readonly alternative: string;
  readonly tally: Tally;
}

/** Counts cases. An area that leads to the same standard size is no change. */
export function tallyOf(cases: readonly Case[]): Tally {
  return {
    total: cases.reduce((sum, { count }) => sum + count, 0),
    smaller: directionOf(cases, (step) => -step),
    larger: directionOf(cases, (step) => step),
  };
}

function directionOf(cases: readonly Case[], signed: (step: number) => number): Direction {
  const found = cases
    .map((one) => ({ ...one, steps: signed(placeOf(one.after) - placeOf(one.before)) }))
    .filter(({ steps }) => steps > 0);
  const bySteps: Record<number, number> = {};
  for (const { steps, count } of found) bySteps[steps] = (bySteps[steps] ?? 0) + count;
  const ordinary = found.filter((one) => one.ordinary);
  const from = ordinary.length > 0 ? ordinary : found;
  const often = (steps: number): number => from.filter((one) => one.steps === steps).length;
  const [example] = [...from].sort((a, b) => often(b.steps) - often(a.steps));
  return {
    count: found.reduce((sum, { count }) => sum + count, 0),
    bySteps,
    example:
      example === undefined
        ? null
        : `${example.name}: ${named(example.after)} instead of ${named(example.before)}`,
  };
}

/** Place in the list of standard sizes; areas beyond it count as one place more. */
function placeOf(area: number): number {
  const size = standardSizeFor(area);
  return size === null ? standardSizes.length : standardSizes.indexOf(size);
}

function named(area: number): string {
  return standardSizeFor(area) ?? formatArea(area);
}

/** Rows with like figures as one: editions first, then what they are of. */
export function merged(rows: readonly TallyRow[]): readonly TallyRow[] {
  const byEdition = joined(rows, ({ of }) => of, "edition");
  return joined(byEdition, ({ edition }) => edition, "of");
}

function joined(
  rows: readonly TallyRow[],
  same: (row: TallyRow) => string,
  key: "edition" | "of",
): readonly TallyRow[] {
  const groups = new Map<string, TallyRow>();
  for (const row of rows) {
    const id = JSON.stringify([same(row), row.alternative, row.tally]);
    const known = groups.get(id);
    groups.set(id, known === undefined ? row : { ...known, [key]: `${known[key]}, ${row[key]}` });
  }
  return [...groups.values()];
}
