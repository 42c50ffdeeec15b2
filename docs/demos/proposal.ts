/**
 * Shows every conductor that a proposal or a local amendment would change, over the grid and in the installations of this folder:
 * `npm run proposal -- --edition 2023 --amendments <file.json>`, the file being a list of amendments as the function amend takes them.
 */

import { readdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { effects, formatArea, InputError, readInstallation } from "bondmil";

const { values } = parseArgs({ options: { edition: { type: "string" }, amendments: { type: "string" } } });
if (values.edition === undefined || values.amendments === undefined) {
  console.error("usage: npm run proposal -- --edition <year> --amendments <file.json>");
  process.exit(2);
}

const installations = new URL("../installations/", import.meta.url);
const signed = (area: number): string => `${area < 0 ? "-" : "+"}${formatArea(Math.abs(area))}`;

type ChangedConductor = ReturnType<typeof effects>["installations"][number]["changed"][number];

function describeChange({ id, before, after, metal, cautions }: ChangedConductor): string {
  const size =
    before === after
      ? `${formatArea(after)} as before`
      : `${formatArea(before)} to ${formatArea(after)}, metal ${signed(metal)}`;
  return [`${id}: ${size}`, ...cautions].join(", ");
}

try {
  const found = effects({
    code: {
      year: values.edition as never,
      amendments: JSON.parse(readFileSync(values.amendments, "utf8")) as never,
    },
    installations: readdirSync(installations)
      .filter((name) => name.endsWith(".json"))
      .map((name) => readInstallation(readFileSync(new URL(name, installations), "utf8"))),
  });
  console.log(`Over the grid, NFPA 70-${found.edition}`);
  for (const { role, configurations, larger, smaller, cautioned, metal, example } of found.grid) {
    console.log(
      `  ${role}: of ${configurations}: ${larger} larger, ${smaller} smaller, ${cautioned} with a caution, metal ${signed(metal)}`,
    );
    if (example) console.log(`    for example ${describeChange(example)}`);
  }
  for (const { title, changed } of found.installations) {
    console.log(
      `\n${title}: ${changed.length === 0 ? "nothing changes" : `${changed.length} conductors are concerned`}`,
    );
    for (const one of changed) console.log(`  ${describeChange(one)}`);
  }
} catch (error) {
  if (!(error instanceof InputError)) throw error;
  console.error(error.message);
  process.exit(1);
}
