import { chosenReading, citeAmendment, overruledReadings } from "../../edition/index.js";
import {
  derivedElectrodeConnection,
  derivedGroundedConductor,
  derivedLoadSide,
  derivedSupplySideJumper,
  outdoorSource,
  systemJumperBothEnds,
  systemJumperPlace,
  systemJumperSeveralEnclosures,
} from "../../edition/tables/sections.generated.js";
import { derivedCautions } from "../derived-cautions.js";
import { type DerivedInCode, type DrawnDerivedSystem, isBoundOutdoors } from "../derived-system.js";
import { derivedViolations } from "../derived-violations.js";
import type { PlacedCaution } from "../schedule.js";
import { replacesSupplySideJumper, systemJumpers } from "../schedule-derived.js";
import {
  type Arrangement,
  type ArrangementComparison,
  type ArrangementStatus,
  arrangementOf,
  type Connection,
  compareArrangements,
} from "./arrangement.js";
import { bareInstallation, freeName, wantedIn } from "./model.js";
import type { SystemJumpersInput } from "./shape.generated.js";

/**
 * The arrangements of the system bonding jumpers of a separately derived system: one in the enclosure of each first disconnect, by the
 * feeder to it; one at the source, by the largest sum of corresponding conductors of all feeders (250.28(D)(3)); and, for a single
 * enclosure, jumpers at both ends where the exception allows it. Those that are not permitted are there too, with what they violate. Each says
 * where the grounded conductor and the electrode conductor are then connected, and which second connection is a fault.
 */
export function arrangeSystemJumpers(input: SystemJumpersInput): ArrangementComparison {
  const arrangements = [inEachEnclosure(systemOf(input, "disconnects")), atSource(systemOf(input, "source"))];
  if (input.enclosures.length === 1) arrangements.push(atBothEnds(systemOf(input, "both-ends")));
  return compareArrangements(input.code.year, arrangements);
}

/** The derived system of a question, as an installation would have it; each run is called like the place where it ends. */
function systemOf(input: SystemJumpersInput, jumperAt: DrawnDerivedSystem["jumperAt"]): DerivedInCode {
  const { code, source, enclosures, conductor } = input;
  const ids = enclosures.map(({ id }) => id);
  const system: DrawnDerivedSystem = {
    id: freeName("system", [source.id, ...ids]),
    source: { ...source, kind: "transformer" },
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    runs: enclosures.map(({ id, supply }) => ({
      id,
      from: source.id,
      to: id,
      supply,
      raceways: { count: 1, kind: "nonmetallic" },
    })),
    disconnects: ids.map((id) => ({ id, amperes: 1 })),
    jumperAt,
  };
  return { ...bareInstallation(code, conductor.material, wantedIn(input)), system };
}

function inEachEnclosure(at: DerivedInCode): Arrangement {
  const { code, system } = at;
  const { year } = code;
  const ids = idsOf(at);
  const several = ids.length > 1;
  return arranged(
    at,
    "jumper-in-each-enclosure",
    isBoundOutdoors(at) ? outdoorSource[year] : placeCitation(at),
    [
      {
        kind: "grounded-conductor",
        status: "required",
        at: ids,
        note: "table-minimum-applies",
        citation: derivedGroundedConductor[year],
      },
      {
        kind: "grounding-electrode-conductor",
        status: "required",
        at: ids,
        note: several ? chosenReading(code, "electrode-connection-with-several-jumpers") : "at-the-jumper",
        citation: derivedElectrodeConnection[year],
      },
      supplySideJumper(at),
      {
        kind: "second-connection-at-source",
        status: "fault",
        at: [system.source.id],
        note: "only-one-point-per-system",
        citation: systemJumperPlace[year],
      },
    ],
    several ? overruledCautions(at) : [],
  );
}

function atSource(at: DerivedInCode): Arrangement {
  const { year } = at.code;
  const { source } = at.system;
  const ids = idsOf(at);
  return arranged(at, "jumper-at-source", placeCitation(at), [
    {
      kind: "grounded-conductor",
      status: "permitted",
      at: ids,
      note: "sized-for-its-load-only",
      citation: derivedGroundedConductor[year],
    },
    {
      kind: "grounding-electrode-conductor",
      status: "required",
      at: [source.id],
      note: "at-the-source",
      citation: source.outdoors ? outdoorSource[year] : derivedElectrodeConnection[year],
    },
    supplySideJumper(at),
    {
      kind: "second-connection-at-disconnect",
      status: "fault",
      at: ids,
      note: "only-one-point-per-system",
      citation: systemJumperPlace[year],
    },
  ]);
}

function atBothEnds(at: DerivedInCode): Arrangement {
  const { year } = at.code;
  const { source } = at.system;
  const ids = idsOf(at);
  return arranged(at, "jumpers-at-source-and-disconnect", systemJumperBothEnds[year], [
    {
      kind: "grounded-conductor",
      status: "required",
      at: ids,
      note: "at-least-the-jumper",
      citation: systemJumperBothEnds[year],
    },
    {
      kind: "grounding-electrode-conductor",
      status: "required",
      at: source.outdoors ? [source.id] : [source.id, ...ids],
      note: source.outdoors ? "at-the-source" : "at-one-jumper",
      citation: source.outdoors ? outdoorSource[year] : derivedElectrodeConnection[year],
    },
    replacesSupplySideJumper(at)
      ? {
          kind: "supply-side-bonding-jumper",
          status: "permitted",
          at: [],
          note: "not-required-with-both-jumpers",
          citation: derivedSupplySideJumper[year],
        }
      : supplySideJumper(at),
  ]);
}

function arranged(
  at: DerivedInCode,
  id: Arrangement["id"],
  citation: Arrangement["citation"],
  connections: readonly Connection[],
  more: readonly PlacedCaution[] = [],
): Arrangement {
  const violations = derivedViolations(at);
  const cautions = derivedCautions(at);
  return arrangementOf({
    id,
    status: statusOf({ violations, cautions }),
    citation,
    conductors: systemJumpers(at),
    connections: [...connections, loadSide(at)],
    violations,
    cautions: [...cautions, ...more],
  });
}

function statusOf({ violations, cautions }: Pick<Arrangement, "violations" | "cautions">): ArrangementStatus {
  if (violations.some(({ code }) => code === "jumper-not-permitted-here")) return "not-permitted";
  const isConditional = cautions.some(({ code }) => code === "only-without-parallel-path");
  return isConditional ? "permitted-without-parallel-path" : "permitted";
}

function placeCitation(at: DerivedInCode): Arrangement["citation"] {
  const { year } = at.code;
  return idsOf(at).length > 1 ? systemJumperSeveralEnclosures[year] : systemJumperPlace[year];
}

function supplySideJumper(at: DerivedInCode): Connection {
  return {
    kind: "supply-side-bonding-jumper",
    status: "required",
    at: [at.system.source.id, ...idsOf(at)],
    note: "from-source-to-each-enclosure",
    citation: derivedSupplySideJumper[at.code.year],
  };
}

function loadSide({ code }: DerivedInCode): Connection {
  return {
    kind: "second-connection-load-side",
    status: "fault",
    at: [],
    note: "none-beyond-the-disconnect",
    citation: derivedLoadSide[code.year],
  };
}

/** Where the electrode conductor lands is a reading that a jurisdiction may enforce against what the code chooses. */
function overruledCautions({ code, system }: DerivedInCode): readonly PlacedCaution[] {
  return overruledReadings(code)
    .filter(({ id }) => id === "electrode-connection-with-several-jumpers")
    .map(({ by }) => ({
      code: "enforced-reading-overrules-chosen",
      section: citeAmendment(by),
      at: system.source.id,
    }));
}

function idsOf({ system }: DerivedInCode): readonly string[] {
  return system.disconnects.map(({ id }) => id);
}
