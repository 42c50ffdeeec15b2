import { amend } from "../edition/amend.js";
import { type Amendment, type EditionYear, editionYears } from "../edition/index.js";
import { InputError } from "../input/input-error.js";
import type { Installation } from "./document.js";
import { fault } from "./fault.js";
import { otherArrangements } from "./installation-arrangements.js";
import type { VariantChange } from "./installation-comparison.js";
import type { InstallationComparisonRequest } from "./questions/shape.generated.js";
import { plainScheduleOf } from "./schedule-of.js";

/** An installation with one thing changed. */
export interface ChangedInstallation {
  readonly change: VariantChange;
  readonly installation: Installation;
}

/** The installations that a comparison puts side by side; of those that are held against the first, that one first. */
export function changedInstallations(
  installation: Installation,
  request: InstallationComparisonRequest,
): readonly ChangedInstallation[] {
  switch (request.over) {
    case "editions":
      return (request.editions ?? editionYears).map((year) => inEdition(installation, year));
    case "amendments":
      return printedAndAmended(installation, request.amendments ?? installation.code.amendments);
    case "readings":
      return [{ change: { kind: "as-read" }, installation }, ...readOtherwise(installation)];
    case "arrangements":
      return otherArrangements(installation);
  }
}

function inEdition(installation: Installation, year: EditionYear): ChangedInstallation {
  return {
    change: { kind: "edition", year },
    installation: { ...installation, code: { ...installation.code, year } },
  };
}

function printedAndAmended(
  installation: Installation,
  amendments: readonly Amendment[] | undefined,
): readonly ChangedInstallation[] {
  if (amendments === undefined || amendments.length === 0) {
    const advice = "add some to the installation, or name a list of them beside it";
    throw new InputError([
      fault("missing", ["code", "amendments"], "at least one amendment", amendments, advice),
    ]);
  }
  const { amendments: _, ...printed } = installation.code;
  const { year } = printed;
  const checked = amend({ year }, ...amendments).amendments;
  const amended = { ...printed, amendments: checked } as unknown as Installation["code"];
  return [
    { change: { kind: "as-printed" }, installation: { ...installation, code: printed } },
    { change: { kind: "as-amended" }, installation: { ...installation, code: amended } },
  ];
}

/** Each other alternative of each open reading, once, in the order in which the schedule meets them. */
function readOtherwise(installation: Installation): readonly ChangedInstallation[] {
  const found = new Map<string, ChangedInstallation>();
  const used = plainScheduleOf(installation).conductors.flatMap(({ result }) => result.readings);
  for (const { id: reading, chosen, otherwise } of used) {
    for (const { alternative } of otherwise) {
      const readings = { ...installation.code.readings, [reading]: alternative };
      found.set(`${reading} ${alternative}`, {
        change: { kind: "reading", reading, chosen, alternative },
        installation: { ...installation, code: { ...installation.code, readings } },
      });
    }
  }
  return [...found.values()];
}
