/** What the command ends with, for scripts. Numbers never change their meaning. */
export const exitCodes = {
  done: {
    code: 0,
    means:
      "done, or whoever read the output has seen enough; of a check: everything that is required is installed and large enough",
  },
  found: {
    code: 1,
    means:
      "the check found something that is to be done, or something forbidden in what is drawn, or nothing is listed that it could check; or a published check was missed",
  },
  refused: {
    code: 2,
    means:
      "the installation or the amendments are refused, or with --strict a line of a stream; what is wrong is said, with its path",
  },
  usage: { code: 3, means: "the command line is not understood" },
  file: { code: 4, means: "a file or standard input cannot be read" },
  defect: { code: 5, means: "a defect of bondmil itself; please report it" },
  output: {
    code: 6,
    means:
      "the output cannot be written, as on a full disk; what is there is not all of it. Or the file of bondmil begin is there already, and is left as it is",
  },
} as const;

/** Name of an exit code. */
export type Ending = keyof typeof exitCodes;
