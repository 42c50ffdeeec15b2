import { InputError } from "bondmil";

/**
 * Runs what may refuse an input. The entries of the package are bundled apart, so that the error inside of one is not that of `bondmil`;
 * whoever catches that one is to catch this one too.
 */
export function withOneError<T>(use: () => T): T {
  try {
    return use();
  } catch (error) {
    if (error instanceof Error && "issues" in error && Array.isArray(error.issues)) {
      throw new InputError(error.issues, { cause: error });
    }
    throw error;
  }
}
