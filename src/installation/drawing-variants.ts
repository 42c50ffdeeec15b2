import { type Amendment, type EditionYear, editionYears } from "../edition/index.js";
import { amend } from "../rules/amend.js";
import { buildSchedule } from "./build-schedule.js";
import type { Drawing } from "./document.js";
import { otherArrangements } from "./drawing-arrangements.js";
import type { DrawingComparisonRequest, VariantChange } from "./drawing-comparison.js";
import { errorOf, fault } from "./fault.js";

/** A drawing with one thing changed. */
export interface ChangedDrawing {
  readonly change: VariantChange;
  readonly drawing: Drawing;
}

/** The drawings that a comparison puts side by side; of those that are held against the first, that one first. */
export function changedDrawings(
  drawing: Drawing,
  request: DrawingComparisonRequest,
): readonly ChangedDrawing[] {
  switch (request.by) {
    case "edition":
      return (request.years ?? editionYears).map((year) => inEdition(drawing, year));
    case "amendment":
      return printedAndAmended(drawing, request.amendments ?? drawing.code.amendments);
    case "reading":
      return [{ change: { kind: "as-read" }, drawing }, ...readOtherwise(drawing)];
    case "arrangement":
      return otherArrangements(drawing);
  }
}

function inEdition(drawing: Drawing, year: EditionYear): ChangedDrawing {
  return { change: { kind: "edition", year }, drawing: { ...drawing, code: { ...drawing.code, year } } };
}

function printedAndAmended(
  drawing: Drawing,
  amendments: readonly object[] | undefined,
): readonly ChangedDrawing[] {
  if (amendments === undefined || amendments.length === 0) {
    const advice = "add some to the drawing, or name a list of them beside it";
    throw errorOf([fault("missing", ["code", "amendments"], "at least one amendment", amendments, advice)]);
  }
  const { amendments: _, ...printed } = drawing.code;
  const { year } = printed;
  const checked = amend({ year }, ...(amendments as readonly Amendment[])).amendments;
  const amended = { ...printed, amendments: checked } as unknown as Drawing["code"];
  return [
    { change: { kind: "as-printed" }, drawing: { ...drawing, code: printed } },
    { change: { kind: "as-amended" }, drawing: { ...drawing, code: amended } },
  ];
}

/** Each other alternative of each open reading, once, in the order in which the schedule meets them. */
function readOtherwise(drawing: Drawing): readonly ChangedDrawing[] {
  const found = new Map<string, ChangedDrawing>();
  const used = buildSchedule(drawing).conductors.flatMap(({ result }) => result.readings);
  for (const { id: reading, chosen, otherwise } of used) {
    for (const { alternative } of otherwise) {
      const readings = { ...drawing.code.readings, [reading]: alternative };
      found.set(`${reading} ${alternative}`, {
        change: { kind: "reading", reading, chosen, alternative },
        drawing: { ...drawing, code: { ...drawing.code, readings } },
      });
    }
  }
  return [...found.values()];
}
