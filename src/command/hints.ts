import type { SubcommandName } from "./facts/fact.js";

/** What is said where nothing is given that could be answered: how to begin. */
export function hintFor(subcommand: SubcommandName): string {
  const { missing, lines } = hints[subcommand] ?? ofInstallation(`bondmil ${subcommand} shop.json`);
  return [missing, ...lines.map((line) => `  ${line}`), `See bondmil ${subcommand} --help.`].join("\n");
}

interface Hint {
  readonly missing: string;
  readonly lines: readonly string[];
}

function ofInstallation(line: string): Hint {
  return {
    missing: "no installation is given; name its path, or send it to standard input. To begin:",
    lines: ["bondmil begin shop.json --edition 2020", line],
  };
}

/** What is said where the amendments are to come from a terminal. */
export const hintForAmendments =
  "no amendments are given; name the path of their file, or send them to standard input. See bondmil compare --help.";

const hints: { readonly [Name in SubcommandName]?: Hint } = {
  report: ofInstallation("bondmil report shop.json > shop.html"),
  supplies: {
    missing: "no question is given; name the path of its file, or send it to standard input. To begin:",
    lines: ["bondmil begin feeder.json --edition 2020 --holds load", "bondmil supplies feeder.json"],
  },
  size: {
    missing: "no question is given; name the path of its file, send it to standard input, or ask by options:",
    lines: ["bondmil size main-bonding-jumper --edition 2023 --supply '3 x 600 kcmil Cu' --material copper"],
  },
  stream: {
    missing:
      "stream reads standard input, an installation or the question of a conductor on each line. To begin:",
    lines: [
      `echo '{"role":"intersystem-bonding-conductor","input":{"code":{"year":"2020"},"termination":"apart"}}' > lines.ndjson`,
      "bondmil stream < lines.ndjson",
    ],
  },
};
