import { checkFiles } from "./data.js";
import { checkFilter, checkImplementation } from "./read-arguments.js";
import type { Implementation } from "./runner/answer.js";
import { type Entry, entriesOf } from "./runner/model.js";
import { type Case, casesIn, type Row, runChecks } from "./runner/run-checks.js";
import { type Filter, select } from "./runner/select.js";

/**
 * Puts the corpus to an implementation: every check under every edition in which it holds. The implementation gets the role, the edition and
 * the input, and answers in the words of the corpus; `null` says that it does not size such a conductor. What it throws becomes a missed row.
 *
 * @param implementation - a pure function from a question to an answer; areas in circular mils, sizes as `4 AWG`, `1/0 AWG`, `250 kcmil`
 * @param filter - what to leave of the checks; all of them by default
 * @returns one row for each check and edition, in the order of the files: the check with its source, the verdict, what is expected (of a
 * disputed check what the text requires) and what was given
 * @throws `InputError` of `bondmil` for anything but a function and a filter
 *
 * @example
 * A program that knows equipment grounding conductors of copper up to 300 A and nothing else:
 *
 * ```ts
 * import { runCorpus } from "bondmil/corpus";
 *
 * const copper: [number, string][] = [[15, "14 AWG"], [20, "12 AWG"], [60, "10 AWG"], [100, "8 AWG"], [200, "6 AWG"], [300, "4 AWG"]];
 * const rows = runCorpus(
 *   (question) => {
 *     if (question.role !== "equipment-grounding-conductor") return null;
 *     const { circuits: [circuit], conductor } = question.input;
 *     if (circuit === undefined || !("amperes" in circuit.device) || conductor.material !== "copper") return null;
 *     const { amperes } = circuit.device;
 *     const size = copper.find(([through]) => amperes <= through)?.[1];
 *     return size === undefined ? { errors: ["above-the-table"] } : { size };
 *   },
 *   { role: "equipment-grounding-conductor", edition: "2020" },
 * );
 * const quiz = rows.find(({ check }) => check.id === "quiz-1000-amperes");
 * [quiz?.verdict, quiz?.expected, quiz?.given]; // => ["missed", { size: "2/0 AWG" }, { errors: ["above-the-table"] }]
 * ```
 */
export function runCorpus(implementation: Implementation, filter: Filter = {}): readonly Row[] {
  checkImplementation(implementation);
  return runChecks(entries(filter), implementation);
}

/**
 * The questions of the corpus one by one, for an implementation that cannot be called at once, such as a service or a program in another
 * language: ask each `question`, and give the answer to {@link judgeCase}.
 *
 * @param filter - what to leave of the checks; all of them by default
 * @returns one case for each check and edition, in the order of the files
 * @throws `InputError` of `bondmil` for anything but a filter
 *
 * @example
 * ```ts
 * import { corpusCases, judgeCase } from "bondmil/corpus";
 *
 * const cases = corpusCases({ role: "intersystem-bonding-conductor", standing: "cited", edition: "2023" });
 * const rows = await Promise.all(cases.map(async (one) => judgeCase(one, { size: "6 AWG" })));
 * rows.every(({ verdict }) => verdict === "met"); // => true
 * ```
 */
export function corpusCases(filter: Filter = {}): readonly Case[] {
  return casesIn(entries(filter));
}

function entries(filter: Filter): readonly Entry[] {
  checkFilter(filter);
  return select(entriesOf({ files: Object.values(checkFiles) }), filter);
}
