import * as bondmil from "bondmil";
import { corpusCases } from "bondmil/corpus";

/** Results of the inputs of the published checks, so that they bring along whatever is asked in practice. */
export const corpusResults: readonly bondmil.SizingResult[] = Object.values(bondmil.roles).flatMap((role) =>
  corpusCases({ role: role.id }).flatMap(({ edition, question }) => {
    try {
      const input = { ...question.input, code: { year: edition } };
      const result = bondmil.size(role as bondmil.AnyRole, input as never) as bondmil.SizingResult;
      return "steps" in result ? [result] : [];
    } catch (error) {
      if (error instanceof bondmil.InputError) return [];
      throw error;
    }
  }),
);
