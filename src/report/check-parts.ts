import type { Check } from "../installation/check.js";
import { formatArea } from "../units/area.js";
import type { Part } from "./parts.js";
import { checkCounts, verdictWords } from "./schedule-words.js";
import { violationSentence } from "./violation-words.js";
import { standingCautions } from "./words.js";

/** A check as the parts of a page: one row for each verdict, then how many there are of each. */
export function partsOfCheck(check: Check): readonly Part[] {
  const { schedule, conductors } = check;
  const rows = conductors.map(({ id, alternative, verdict, installed, requiredArea, reserve, citation }) => [
    verdictWords[verdict],
    alternative === undefined || id.endsWith(`(${alternative})`) ? id : `${id} (${alternative})`,
    installed === null ? "" : `${installed.quantity ?? 1} x ${installed.size} ${installed.material}`,
    installed?.at ?? "",
    requiredArea === 0 ? "" : formatArea(requiredArea),
    reserve === null || requiredArea === 0 ? "" : formatArea(reserve),
    citation?.section ?? "",
  ]);
  const head = ["verdict", "conductor", "installed", "at", "required", "reserve", "section"];
  return [
    { kind: "title", text: `${schedule.title}: check of installed conductors, NFPA 70-${schedule.edition}` },
    ...(schedule.violations.length === 0
      ? []
      : ([
          { kind: "heading", text: "Not permitted" },
          { kind: "list", lines: schedule.violations.map(violationSentence) },
        ] as const)),
    ...(rows.length === 0 ? [] : [{ kind: "table", head, rows } as const]),
    { kind: "text", text: `${checkCounts(check)}.` },
    { kind: "lines", lines: standingCautions },
    {
      kind: "lines",
      lines: [
        `Fingerprint of the schedule: ${schedule.fingerprint}`,
        `Fingerprint of this check: ${check.fingerprint}`,
      ],
    },
  ];
}
