import { ask, type Given, type Implementation, type Question } from "../runner/answer.js";

/**
 * The answer to one line of questions, as a line. A line that is no question gets an error of its own, so that every line has one answer and
 * none gets that of another.
 */
export function answerLine(line: string, implementation: Implementation): string {
  return JSON.stringify(answerTo(line, implementation));
}

function answerTo(line: string, implementation: Implementation): Given {
  let question: unknown;
  try {
    question = JSON.parse(line);
  } catch (error) {
    return { thrown: `no JSON: ${error instanceof Error ? error.message : error}` };
  }
  return ask(implementation, question as Question);
}
