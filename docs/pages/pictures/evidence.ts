import { cell, text } from "@observablehq/plot";
import { type EditionYear, type Evidence, editionYears, evidenceLevels, roleIds } from "bondmil";
import { inWords } from "../in-words.js";
import { weakestOf } from "../role-coverage/basis.js";
import { drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

interface Field {
  readonly role: string;
  readonly edition: EditionYear;
  readonly evidence: Evidence;
}

/** A letter and a shade for each level, the surest darkest; white or black is read on it. */
const look: Readonly<
  Record<Evidence, { readonly letter: string; readonly shade: string; readonly ink: string }>
> = {
  memory: { letter: "M", shade: "#ffffff", ink: "black" },
  carried: { letter: "C", shade: "#d6e6f2", ink: "black" },
  bracketed: { letter: "B", shade: "#9cc5e0", ink: "black" },
  single: { letter: "S", shade: "#2f7fb8", ink: "white" },
  confirmed: { letter: "F", shade: "#0b3c5d", ink: "white" },
};

const key = evidenceLevels.map((level) => `${look[level].letter} ${level}`).join(", ");

/** Weakest evidence of each role in each edition. */
export function evidenceMap(): Picture {
  const fields = roleIds.flatMap((role) =>
    editionYears.map((edition): Field => {
      return { role: inWords(role), edition, evidence: weakestOf(role, edition) };
    }),
  );
  const title = "Weakest evidence behind each conductor, by edition";
  const found = evidenceLevels.filter((level) => fields.some(({ evidence }) => evidence === level));
  const description = `A grid of ${roleIds.length} conductors and ${editionYears.length} editions. Each field has a letter: ${found.map((level) => `${look[level].letter} ${level}, in ${fields.filter(({ evidence }) => evidence === level).length} fields`).join("; ")}. The darker, the surer.`;
  return {
    name: "evidence-by-edition",
    title,
    description,
    columns: ["role", "edition", "evidence"],
    rows: fields.map((one) => [one.role, one.edition, one.evidence]),
    svg: drawn(title, description, {
      height: 470,
      marginLeft: 230,
      marginTop: 50,
      padding: 0.04,
      x: { axis: "top", label: key, labelAnchor: "right", labelOffset: 38, domain: editionYears },
      y: { label: null, domain: roleIds.map(inWords) },
      color: {
        type: "ordinal",
        domain: [...evidenceLevels],
        range: evidenceLevels.map((level) => look[level].shade),
      },
      marks: [
        cell(fields, { x: "edition", y: "role", fill: "evidence", stroke: "#999" }),
        text(fields, {
          x: "edition",
          y: "role",
          text: ({ evidence }: Field) => look[evidence].letter,
          fill: ({ evidence }: Field) => look[evidence].ink,
          fontWeight: "bold",
        }),
      ],
    }),
  };
}
