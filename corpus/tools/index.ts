/**
 * The published checks of bondmil, their sources, and the runner that puts them to any implementation.
 *
 * @packageDocumentation
 */
export { sources } from "../../tables/tools/register.js";
export type { Source, Sources } from "../../tables/tools/source.js";
export { checkFiles } from "./data.js";
export { corpusCases, runCorpus } from "./run-corpus.js";
export type {
  Answer,
  Given,
  Implementation,
  OutcomeAnswer,
  Question,
  QuestionOf,
  RefusedAnswer,
  ShownFigures,
  SizeAnswer,
} from "./runner/answer.js";
export type { CheckInput, CheckInputs, Uncoded } from "./runner/check-input.js";
export { type Besides, implementationOf, type Library } from "./runner/implementation-of.js";
export type { Judgement, Verdict, WrongFigure } from "./runner/judge.js";
export { writeMisses } from "./runner/misses.js";
export {
  type Check,
  type CheckFile,
  type CheckFiles,
  type CheckGroup,
  type Dispute,
  type Entry,
  type Expectation,
  type Figures,
  type Flag,
  type Mistake,
  mistakes,
  type Standing,
  standings,
  type Voice,
  voices,
} from "./runner/model.js";
export { type Case, judgeCase, type Row } from "./runner/run-checks.js";
export type { Assumed, Filter } from "./runner/select.js";
export { writeSummary } from "./runner/summary.js";
