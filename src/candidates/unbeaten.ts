/** What two candidates are compared by; less is better in each. */
export interface Expense {
  readonly copper: number;
  readonly aluminum: number;
  readonly terminations: number;
  readonly raceways: number;
}

/** Places of those that no other one beats: none has as little of each and less of one. Alike ones stand together. */
export function unbeatenOf(expenses: readonly Expense[]): ReadonlySet<number> {
  const order = expenses.map((_, at) => at).sort((a, b) => compare(at(expenses, a), at(expenses, b)));
  const found: number[] = [];
  // Whatever beats another stands before it in this order, so that only the unbeaten so far can.
  for (const place of order) {
    const expense = at(expenses, place);
    if (!found.some((one) => beats(at(expenses, one), expense))) found.push(place);
  }
  return new Set(found);
}

function at(expenses: readonly Expense[], place: number): Expense {
  return expenses[place] as Expense;
}

function compare(one: Expense, other: Expense): number {
  return (
    one.raceways - other.raceways ||
    one.terminations - other.terminations ||
    one.copper - other.copper ||
    one.aluminum - other.aluminum
  );
}

function beats(one: Expense, other: Expense): boolean {
  return (
    one.copper <= other.copper &&
    one.aluminum <= other.aluminum &&
    one.terminations <= other.terminations &&
    one.raceways <= other.raceways &&
    compare(one, other) !== 0
  );
}
