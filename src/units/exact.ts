/**
 * Product of two whole numbers, refused rather than rounded where doubles stop being exact.
 * @throws RangeError if the product is not a safe integer
 */
export function mulExact(a: number, b: number): number {
  const product = a * b;
  if (!Number.isSafeInteger(product)) throw new RangeError(`${a} x ${b} is beyond exact whole numbers`);
  return product;
}

/** a x b / c rounded up, exact for every safe product; the ratio is never taken first. */
export function mulDivUp(a: number, b: number, c: number): number {
  const product = mulExact(a, b);
  const rest = product % c;
  return (product - rest) / c + (rest === 0 ? 0 : 1);
}

/** 12.5 percent of a total, rounded up: the smallest whole area with 8 x area >= total. */
export function eighthUp(total: number): number {
  return mulDivUp(total, 1, 8);
}
