import type { InstallationInCode, PlacedCaution, ScheduledConductor } from "../schedule.js";
import type { Violation } from "../violation.js";
import { electrodeViolations } from "./electrodes.js";
import { loadSideViolations } from "./load-side.js";
import { routeCautions, routeViolations } from "./routes.js";
import { unconnectedViolations } from "./unconnected.js";

/** What is forbidden, or missing, in the installation as a whole rather than in one system of it. */
export function installationViolations(
  at: InstallationInCode,
  conductors: readonly ScheduledConductor[],
): readonly Violation[] {
  return [
    ...loadSideViolations(at),
    ...electrodeViolations(at.installation),
    ...unconnectedViolations(at.installation),
    ...routeViolations(at.installation, conductors),
  ];
}

/** What could not be judged, since the installation does not tell. */
export function installationCautions(
  { installation }: InstallationInCode,
  conductors: readonly ScheduledConductor[],
): readonly PlacedCaution[] {
  return routeCautions(installation, conductors);
}
