/** Freezes what stands under each edition. Answers hold these very objects: whoever changes an answer must not change what the next one says. */
export function frozen<T extends Readonly<Record<string, object>>>(byEdition: T): T {
  for (const value of Object.values(byEdition)) Object.freeze(value);
  return Object.freeze(byEdition);
}
