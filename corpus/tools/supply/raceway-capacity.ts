import { type EditionYear, InputError, type RacewayFillQuestion, racewayFill } from "../../../src/index.js";

/** How many conductors of one size and type the raceways of one kind take, as Annex C lists them. */
export interface CapacityQuestion extends Pick<RacewayFillQuestion, "raceway" | "nipple"> {
  readonly tradeSizes: readonly NonNullable<RacewayFillQuestion["tradeSize"]>[];
  /** One of them, without its count. */
  readonly conductor: object;
}

/** For each trade size the largest count that fits. */
export function racewayCapacity(
  edition: EditionYear,
  { tradeSizes, conductor, ...raceway }: CapacityQuestion,
): { readonly most: readonly number[] } {
  const fits = (tradeSize: CapacityQuestion["tradeSizes"][number], count: number): boolean => {
    const conductors = countsOf(count).map((some) => ({ ...conductor, count: some })) as unknown;
    try {
      return racewayFill({ ...raceway, edition, tradeSize, conductors } as RacewayFillQuestion).fits;
    } catch (error) {
      // What no trade size takes, this one does not take either.
      if (error instanceof InputError && error.issues.every(({ code }) => code === "out-of-range"))
        return false;
      throw error;
    }
  };
  const most = (tradeSize: CapacityQuestion["tradeSizes"][number]): number => {
    let count = 0;
    while (fits(tradeSize, count + 1)) count += 1;
    return count;
  };
  return { most: tradeSizes.map(most) };
}

/** An entry counts at most a hundred. */
function countsOf(count: number): readonly number[] {
  const mostOfAnEntry = 100;
  return count <= mostOfAnEntry ? [count] : [mostOfAnEntry, ...countsOf(count - mostOfAnEntry)];
}
