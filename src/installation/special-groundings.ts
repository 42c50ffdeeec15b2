import type { Code } from "../edition/index.js";
import { groundedConductorFacts } from "../edition/tables/roles.generated.js";
import {
  groundedPhaseDevices,
  impedanceConditions,
  impedanceElectrode,
  impedanceNoOtherConnection,
  serviceUngroundedElectrode,
  ungroundedDerived,
} from "../edition/tables/sections.generated.js";
import { notRequired } from "../rules/finish.js";
import type { Installation } from "./document.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { hasGroundedConductor } from "./supplies.js";
import type { Violation } from "./violation.js";

type System =
  | NonNullable<Installation["services"]>[number]
  | NonNullable<Installation["derivedSystems"]>[number];

/** What to know of a system that is grounded at a corner or through an impedance. */
export function groundingCautions({ id, grounding }: System, { year }: Code): readonly PlacedCaution[] {
  switch (grounding) {
    case "grounded-phase":
      return [{ code: "grounded-phase-devices", section: groundedPhaseDevices[year].section, at: id }];
    case "impedance":
      return [{ code: "impedance-conditions", section: impedanceConditions[year].section, at: id }];
    default:
      return [];
  }
}

/** Says of the runs from a source that no grounded conductor runs with them. */
export function noGroundedConductors({
  installation,
  code,
  system,
  source,
}: InstallationInCode & { readonly system: System; readonly source: string }): readonly ScheduledConductor[] {
  if (hasGroundedConductor(system)) return [];
  const ungrounded = "utility" in system ? serviceUngroundedElectrode : ungroundedDerived;
  const result = notRequired(
    groundedConductorFacts,
    code,
    installation.materials.groundedConductors,
    "no-grounded-conductor",
    (system.grounding === "impedance" ? impedanceNoOtherConnection : ungrounded)[code.year],
  );
  return system.runs
    .filter(({ from }) => from === source)
    .map(({ id, from, to }) => scheduled({ subject: id }, from, to, result));
}

/** Electrode conductors of a system with an impedance that start elsewhere than they are said to. */
export function astrayFromImpedance(
  { impedance, disconnects, electrodes = [], ...system }: System,
  besideImpedance: readonly string[],
  { year }: Code,
): readonly Violation[] {
  if (impedance === undefined) return [];
  const ids = disconnects.map(({ id }) => id);
  const boxes = "boxes" in system ? (system.boxes ?? []).map(({ id }) => id) : [];
  const own = impedance.id === undefined ? [] : [impedance.id];
  const isAtImpedance = impedance.electrodeConductorAt === "impedance";
  const wrong = isAtImpedance ? [...ids, ...boxes] : [...own, ...boxes, ...besideImpedance];
  const astray = electrodes.filter(({ from }) => wrong.includes(from));
  if (astray.length === 0) return [];
  const at = astray.map((one) => one.electrode ?? one.id);
  return [
    {
      code: "electrode-conductor-not-at-impedance",
      ...impedanceElectrode[year],
      at,
      remedies: [{ code: "start-where-named" }],
    },
  ];
}
