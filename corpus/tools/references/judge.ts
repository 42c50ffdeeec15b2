import { pairsOf } from "./formulas.js";
import type { FormulaGroup, PrintedGroup, PrintedValue, ReferenceFile } from "./model.js";
import { answerTo } from "./quantities.js";

/** `changed-side`: a value that is called disputed and agrees after all. */
type Verdict = "met" | "disputed" | "missed" | "changed-side";

/** A value of the library held against a reference. */
export interface Judged {
  readonly what: string;
  readonly library: number;
  readonly reference: number;
  /** Largest difference that is let pass: half of the rounding, and what the group allows beyond it. */
  readonly tolerance: number;
  readonly verdict: Verdict;
  /** Why the library is right to differ. */
  readonly reason: string | null;
}

/** Every value of a group, held against the library. */
export function judgeGroup(group: PrintedGroup | FormulaGroup): readonly Judged[] {
  return "formula" in group ? judgeFormula(group) : judgePrinted(group);
}

/** Where the library and a reference differ unexplained, or agree although a dispute is recorded. */
export function missesOf(files: readonly ReferenceFile[]): readonly string[] {
  return files.flatMap(({ id, groups }) =>
    groups.flatMap((group) =>
      judgeGroup(group)
        .filter(({ verdict }) => verdict === "missed" || verdict === "changed-side")
        .map(
          ({ what, library, reference, verdict }) =>
            `${id}, ${group.id}, ${what}: ${verdict}, ${library} ${group.unit} for ${reference}`,
        ),
    ),
  );
}

function judgePrinted(group: PrintedGroup): readonly Judged[] {
  const { quantity, constants = {}, values, within = 0, cutsOff = false } = group;
  return values.map(({ ask, printed, step = lastPlace(printed), disputed }) =>
    judged(
      {
        what: inWords(ask),
        library: answerTo(quantity, ask, constants),
        reference: Number(printed),
        rounding: cutsOff ? step : step / 2,
      },
      within,
      disputed,
    ),
  );
}

function judgeFormula(group: FormulaGroup): readonly Judged[] {
  const { formula, constants, editions = [], disputed = {}, within = 0 } = group;
  const pairs = pairsOf(formula, constants, editions);
  const idle = Object.keys(disputed).filter((what) => !pairs.some((pair) => pair.what === what));
  if (idle.length > 0) throw new Error(`${group.id}: nothing is compared for ${idle.join(", ")}`);
  return pairs.map((pair) => judged(pair, within, disputed[pair.what]));
}

function judged(
  pair: Omit<Judged, "tolerance" | "verdict" | "reason"> & { readonly rounding: number },
  within: number,
  reason: string | undefined,
): Judged {
  const { what, library, reference, rounding } = pair;
  const tolerance = rounding + within * Math.abs(reference);
  // A difference of exactly half a step must not hang on the last bit.
  const agrees = Math.abs(library - reference) <= tolerance * (1 + 1e-9);
  const verdict = reason === undefined ? (agrees ? "met" : "missed") : agrees ? "changed-side" : "disputed";
  return { what, library, reference, tolerance, verdict, reason: reason ?? null };
}

/** The question, in one line: "cycles 1, copper, initial 75, final 250". */
function inWords(ask: PrintedValue["ask"]): string {
  return Object.entries(ask)
    .map(([name, value]) => (typeof value === "string" ? value : `${name} ${value}`))
    .join(", ");
}

/** The unit of the last place of a printed number: 0.01 for "3.94", 1 for "4107". */
function lastPlace(printed: string): number {
  const [digits = "", exponent = "0"] = printed.split("e");
  const decimals = digits.split(".")[1]?.length ?? 0;
  return 10 ** (Number(exponent) - decimals);
}
