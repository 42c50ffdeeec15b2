import { InputError, type Installation, readInstallation } from "bondmil";

/** The smallest drawing that still breaks, found by leaving out one part after another. */
export function smallest(installation: Installation, breaks: (one: Installation) => boolean): Installation {
  let so = installation;
  let isSmaller = true;
  while (isSmaller) {
    isSmaller = false;
    for (const other of smallerThan(so)) {
      if (!isReadable(other) || !breaks(other as Installation)) continue;
      so = other as Installation;
      isSmaller = true;
      break;
    }
  }
  return so;
}

function isReadable(installation: unknown): boolean {
  try {
    readInstallation(installation);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

/** A value without each of its parts in turn, the largest parts first, then with each part made smaller. */
function* smallerThan(value: unknown): Generator<unknown> {
  if (Array.isArray(value)) {
    for (const i of value.keys()) yield value.filter((_, at) => at !== i);
    for (const [i, one] of value.entries()) {
      for (const less of smallerThan(one)) yield value.map((other, at) => (at === i ? less : other));
    }
  } else if (typeof value === "object" && value !== null) {
    const entries = Object.entries(value);
    for (const [key] of entries) yield Object.fromEntries(entries.filter(([other]) => other !== key));
    for (const [key, one] of entries) for (const less of smallerThan(one)) yield { ...value, [key]: less };
  } else if (typeof value === "number" && value > 1) {
    yield 1;
  }
}
