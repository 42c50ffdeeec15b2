import type { InstallationInCode, ScheduledConductor } from "../schedule.js";
import { electrodeViolations } from "./electrodes.js";
import { loadSideViolations } from "./load-side.js";
import { type Findings, routeFindings } from "./routes.js";
import { unconnectedViolations } from "./unconnected.js";

/**
 * What is forbidden, or missing, in the installation as a whole rather than in one system of it; and what could not be judged, since the
 * installation does not tell.
 */
export function installationFindings(
  { installation, code }: InstallationInCode,
  conductors: readonly ScheduledConductor[],
): Findings {
  const routes = routeFindings(installation, conductors);
  return {
    violations: [
      ...loadSideViolations({ installation, code }),
      ...electrodeViolations(installation),
      ...unconnectedViolations(installation),
      ...routes.violations,
    ],
    cautions: routes.cautions,
  };
}
