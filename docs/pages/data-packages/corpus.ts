import { createHash } from "node:crypto";
import { flatFields } from "../../../corpus/tools/flat/lines.js";
import { type DataPackage, license } from "./package.js";

/** The description of the checks as JSON Lines; `lines` is the text of the file. */
export function packageOfCorpus(lines: string): DataPackage {
  const count = lines.trimEnd().split("\n").length;
  return {
    name: "bondmil-corpus",
    title: "Published answers on sizes of bonding and grounding conductors",
    description:
      "One line for each check under each edition, with every default applied. README.md has the rules for a runner; the files by role and schema/ hold the checks with locators and notes.",
    licenses: [license],
    resources: [
      {
        name: "checks",
        title: `${count} lines`,
        path: "flat/checks.jsonl",
        profile: "data-resource",
        format: "jsonl",
        mediatype: "application/jsonl",
        encoding: "utf-8",
        bytes: Buffer.byteLength(lines),
        hash: `sha256:${createHash("sha256").update(lines).digest("hex")}`,
        schema: {
          fields: flatFields.map(([name, type, description]) => ({ name, type, description })),
          primaryKey: ["id", "edition"],
        },
      },
    ],
  };
}
