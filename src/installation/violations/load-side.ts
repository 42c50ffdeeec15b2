import { areaOf } from "../../conductor/index.js";
import type { Citation } from "../../edition/index.js";
import {
  derivedLoadSide,
  frameByGroundedConductor,
  loadSideGrounding,
  meterEnclosureByGroundedConductor,
  serviceLoadSide,
} from "../../edition/tables/sections.generated.js";
import { equipmentGroundingConductor } from "../../roles/equipment-grounding-conductor/index.js";
import { buildingKeeping } from "../building-supply.js";
import type { Installation } from "../document.js";
import type { InstallationInCode } from "../schedule.js";
import type { UnmetCondition, Violation } from "../violation.js";

type Connection = NonNullable<Installation["loadSideConnections"]>[number];
type Exception = NonNullable<Connection["exception"]>;
type Circuit = NonNullable<Installation["circuits"]>[number];

/**
 * Connections of the grounded conductor to ground on the load side, save those whose exception has its conditions met, and those at a building
 * that says itself whether it may keep its own.
 */
export function loadSideViolations(at: InstallationInCode): readonly Violation[] {
  const { loadSideConnections = [], code } = at.installation;
  return loadSideConnections.flatMap(({ at: place, exception }): readonly Violation[] => {
    if (buildingKeeping(at.installation, place) !== undefined) return [];
    const unmet = exception === undefined ? [] : unmetOf(at, exception, circuitTo(at.installation, place));
    if (exception !== undefined && unmet.length === 0) return [];
    const citation =
      exception === undefined ? sectionAt(at, place) : exceptionSections[exception.kind][code.year];
    return [
      {
        code: "grounded-conductor-bonded-on-load-side",
        ...citation,
        at: [place],
        ...(unmet.length > 0 && { found: { unmet } }),
        remedies: [
          { code: "remove-connection" },
          ...(unmet.length > 0 ? [{ code: "meet-exception" } as const] : []),
        ],
      },
    ];
  });
}

/** The section of the exception under which a drawn connection is permitted; `null` where none is named for it. */
export function exceptionAt(
  { loadSideConnections = [], code }: Installation,
  place: string,
): Citation | null {
  const exception = loadSideConnections.find(({ at }) => at === place)?.exception;
  return exception === undefined ? null : exceptionSections[exception.kind][code.year];
}

const exceptionSections = {
  "range-or-dryer": frameByGroundedConductor,
  "meter-enclosure": meterEnclosureByGroundedConductor,
} as const;

/** The circuit to a place. */
function circuitTo({ circuits = [], buildings = [] }: Installation, place: string): Circuit | undefined {
  const feeder = buildings.find(({ id }) => id === place)?.circuit;
  return circuits.find(({ id, to }) => id === feeder || to === place);
}

/** The section that forbids the connection: that of the system behind whose jumper it is, or the general one where the system is not drawn. */
function sectionAt({ installation, code }: InstallationInCode, place: string): Citation {
  const { services = [], derivedSystems = [], circuits = [] } = installation;
  const seen = new Set<string>();
  let from = place;
  for (let next = circuitTo(installation, from); next !== undefined && !seen.has(next.id); ) {
    seen.add(next.id);
    from = next.from;
    const before = from;
    next = circuits.find(({ id }) => id === before) ?? circuitTo(installation, before);
  }
  const isAt = ({ disconnects }: { readonly disconnects: readonly { readonly id: string }[] }): boolean =>
    disconnects.some(({ id }) => id === from);
  if (services.some(isAt)) return serviceLoadSide[code.year];
  return derivedSystems.some(isAt) ? derivedLoadSide[code.year] : loadSideGrounding[code.year];
}

function unmetOf(
  at: InstallationInCode,
  exception: Exception,
  circuit: Circuit | undefined,
): readonly UnmetCondition[] {
  return conditionsOf(at, exception, circuit).flatMap(([holds, unmet]) => (holds ? [] : [unmet]));
}

function conditionsOf(
  at: InstallationInCode,
  exception: Exception,
  circuit: Circuit | undefined,
): readonly (readonly [boolean, UnmetCondition])[] {
  const { size, material } = exception.groundedConductor;
  switch (exception.kind) {
    case "range-or-dryer":
      return [
        [exception.existingBranchCircuit, "branch-circuit-not-existing"],
        [exception.insulatedOrServiceCable, "conductor-not-insulated"],
        [areaOf(size) >= areaOf(material === "copper" ? "10 AWG" : "8 AWG"), "conductor-too-small"],
      ];
    case "meter-enclosure":
      return [
        [exception.besideServiceDisconnect, "not-beside-service-disconnect"],
        [!exception.groundFaultProtection, "ground-fault-protection"],
        [isAsLargeAsGrounding(at, exception, circuit), "conductor-too-small"],
      ];
  }
}

/** At least the equipment grounding conductor of the circuit (250.142(B) Exception No. 2); its load may require more. */
function isAsLargeAsGrounding(
  { code }: InstallationInCode,
  { groundedConductor: { size, material } }: Exception,
  circuit: Circuit | undefined,
): boolean {
  if (circuit === undefined) return false;
  const { device, conductors } = circuit;
  const { requiredArea } = equipmentGroundingConductor.decide({
    code,
    circuits: [{ device, ...(conductors && { conductors }) }],
    conductor: { material },
  });
  return areaOf(size) >= requiredArea;
}
