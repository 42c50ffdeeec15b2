import type { Citation } from "../../edition/index.js";
import {
  listedAssembly,
  mainJumperPlace,
  mainJumperSeveralEnclosures,
  serviceBoxes,
  serviceElectrodeConnection,
  serviceElectrodeSeveralEnclosures,
  serviceGroundedConductor,
  serviceLoadSide,
  supplySideConnections,
} from "../../edition/tables/sections.generated.js";
import type { ServiceInCode } from "../service.js";
import { serviceCautions } from "../service-cautions.js";
import { boxJumpers, mainJumpers } from "../service-jumpers.js";
import { serviceViolations } from "../service-violations.js";
import { parallelCautions } from "../violations/parallel.js";
import {
  type Arrangement,
  type ArrangementComparison,
  arrangementOf,
  type Connection,
  compareArrangements,
} from "./arrangement.js";
import { bareInstallation, serviceOf, wantedIn } from "./model.js";
import type { MainJumpersInput } from "./shape.generated.js";

/**
 * The arrangements of the main bonding jumpers of a service: one in the enclosure of each disconnect, by the conductors to it (250.28(D)(2));
 * or one in an assembly that is listed as service equipment, by all conductors that supply it. A wireway ahead has a supply-side bonding
 * jumper in both. Each says where the grounded conductor and the electrode conductor are then connected, and which further connections
 * are normal and which are a fault.
 */
export function arrangeMainJumpers(input: MainJumpersInput): ArrangementComparison {
  const { code, enclosures, wireway, conductor } = input;
  const bare = bareInstallation(code, conductor.material, wantedIn(input));
  const drawn = { enclosures, box: wireway, isFromBox: true };
  const arrangements = [inEachEnclosure(serviceOf(bare, drawn))];
  if (enclosures.length > 1) arrangements.push(inListedAssembly(serviceOf(bare, drawn, "listed-assembly")));
  return compareArrangements(code.year, arrangements);
}

function inEachEnclosure(at: ServiceInCode): Arrangement {
  const { year } = at.code;
  const ids = at.service.disconnects.map(({ id }) => id);
  const citation = ids.length > 1 ? mainJumperSeveralEnclosures[year] : mainJumperPlace[year];
  const places = {
    at: ids,
    note: "bonded-in-each-enclosure",
    citation: serviceGroundedConductor[year],
  } as const;
  return arranged(at, "jumper-in-each-enclosure", citation, places);
}

function inListedAssembly(at: ServiceInCode): Arrangement {
  const citation = listedAssembly[at.code.year];
  const places = { at: [at.service.id], note: "bonded-at-assembly-terminal", citation } as const;
  return arranged(at, "one-jumper-in-listed-assembly", citation, places);
}

function arranged(
  at: ServiceInCode,
  id: Arrangement["id"],
  citation: Citation,
  grounded: Pick<Connection, "at" | "note" | "citation">,
): Arrangement {
  const { year } = at.code;
  const { runs, boxes = [] } = at.service;
  const violations = serviceViolations(at);
  const isForbidden = violations.some(({ code }) => code === "more-than-six-disconnects");
  return arrangementOf({
    id,
    status: isForbidden ? "not-permitted" : "permitted",
    citation,
    conductors: [...mainJumpers(at), ...boxJumpers(at)],
    connections: [
      { kind: "grounded-conductor", status: "required", ...grounded },
      electrodeConnection(at, grounded.at),
      ...boxes.map(
        (box): Connection => ({
          kind: "supply-side-bonding-jumper",
          status: "required",
          at: [box.id],
          note: "by-jumper-or-grounded-conductor",
          citation: serviceBoxes[year],
        }),
      ),
      ...furtherConnections(at),
    ],
    violations,
    cautions: [...serviceCautions(at), ...parallelCautions(runs, year, boxes)],
  });
}

function electrodeConnection({ code }: ServiceInCode, at: readonly string[]): Connection {
  const several = at.length > 1;
  return {
    kind: "grounding-electrode-conductor",
    status: "required",
    at: several ? [] : at,
    note: several ? "common-individual-or-one-place" : "anywhere-on-supply-side",
    citation: several ? serviceElectrodeSeveralEnclosures[code.year] : serviceElectrodeConnection[code.year],
  };
}

function furtherConnections({ code }: ServiceInCode): readonly Connection[] {
  return [
    {
      kind: "second-connection-supply-side",
      status: "permitted",
      at: [],
      note: "several-on-supply-side-are-normal",
      citation: supplySideConnections[code.year],
    },
    {
      kind: "second-connection-load-side",
      status: "fault",
      at: [],
      note: "none-beyond-the-disconnect",
      citation: serviceLoadSide[code.year],
    },
  ];
}
