import { checkRole } from "../asking/check-role.js";
import { type Sizing, size } from "../asking/size.js";
import { readShape } from "../input/read-shape.js";
import { member, readAll } from "../input/reader.js";
import type {
  AmendmentComparison,
  CodedInput,
  ComparedResult,
  EditionComparison,
  ReadingComparison,
} from "./comparison.js";
import { type OverAmendments, overAmendments } from "./over-amendments.js";
import { checkOpenInput, type OverEditions, overEditions } from "./over-editions.js";
import { type OverReadings, overReadings } from "./over-readings.js";
import { type CompareRequest as Compared, compareRequestShape } from "./shape.generated.js";

/** Under what one input of a role is compared. */
export type CompareRequest<Input extends CodedInput> =
  | OverEditions<Input>
  | OverReadings<Input>
  | OverAmendments<Input>;

/**
 * Compares one input of a role: under every edition, under the alternatives of the open readings, or without and with its amendments.
 * Each result stands whole, and beside it what changed and why: numbers that changed are told apart from rules that changed, from texts
 * that are open and read otherwise, from the same rule in another place, and from what is merely known better or worse.
 *
 * @param role - the value of a role, or {@link cableTrayAsEquipmentGroundingConductor}
 * @param request - `over` what, and the input; over editions the input without an edition
 * @returns over editions one entry each, or why it refuses the input; over readings the result under the code as given and one for each
 *   other alternative; over amendments the result as printed, under each amendment alone, and under all. Plain JSON, areas in circular mils
 * @throws {@link InputError} if the request is wrong; what an edition or one amendment alone refuses stands in its entry
 *
 * @example
 * ```ts
 * import { compare, mainBondingJumper, waterPipingBondingJumper } from "bondmil";
 * const conductor = { material: "copper" } as const;
 * const editions = compare(waterPipingBondingJumper, {
 *   over: "editions",
 *   input: {
 *     system: "service",
 *     supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
 *     conductor,
 *   },
 *   editions: ["2014", "2017", "2020"],
 * });
 * editions.map(({ edition, result, effect }) => [edition, result?.requiredArea, effect]);
 * // => [["2014", 167800, "first"], ["2017", 375000, "larger"], ["2020", 167800, "smaller"]]
 * const rules = editions[2]?.changes.filter(({ kind }) => kind === "policy");
 * rules?.map(({ what, of, before, after }) => [what, of, before, after]);
 * // => [["governs", null, "one-eighth", "cap"], ["cap", "largest-size", null, 167800]]
 *
 * const supply = { sets: [{ count: 1, size: "10 AWG", material: "copper" }] } as const;
 * const input = { code: { year: "2020" }, supply, conductor } as const;
 * const { result, otherwise } = compare(mainBondingJumper, { over: "readings", input });
 * result.requiredArea; // => 10380
 * otherwise.map((one) => [one.reading, one.alternative, one.result.requiredArea, one.effect]);
 * // => [["cap-on-small-supplies", "large-supplies-only", 16510, "larger"]]
 * ```
 */
export function compare<Input extends CodedInput, Result extends ComparedResult>(
  role: Sizing<Input, Result>,
  request: NoInfer<OverEditions<Input>>,
): EditionComparison<Result>;
export function compare<Input extends CodedInput, Result extends ComparedResult>(
  role: Sizing<Input, Result>,
  request: NoInfer<OverReadings<Input>>,
): ReadingComparison<Result>;
export function compare<Input extends CodedInput, Result extends ComparedResult>(
  role: Sizing<Input, Result>,
  request: NoInfer<OverAmendments<Input>>,
): AmendmentComparison<Result>;
export function compare<Input extends CodedInput, Result extends ComparedResult>(
  role: Sizing<Input, Result>,
  request: CompareRequest<Input>,
): EditionComparison<Result> | ReadingComparison<Result> | AmendmentComparison<Result> {
  checkRole(role);
  checkRequest(request);
  const ask = (input: Input): Result => size(role, input);
  switch (request.over) {
    case "editions":
      return overEditions(ask, request);
    case "readings":
      return overReadings(ask, request);
    case "amendments":
      return overAmendments(ask, request);
  }
}

/** Checks what is compared; the role itself checks its input. */
function checkRequest(request: unknown): void {
  readAll(request, (at) =>
    readShape<Compared>(at, compareRequestShape, (_, { over, input }) => {
      if (over === "editions" && input !== undefined) checkOpenInput(member(at, "input"));
    }),
  );
}
