import type { Citation } from "../../edition/index.js";
import { commonConductorOfDerivedSystems } from "../../edition/tables/named-sizes.generated.js";
import {
  derivedElectrodeConnection,
  serviceElectrodeCommon,
  serviceElectrodeIndividual,
  serviceElectrodeOnePlace,
} from "../../edition/tables/sections.generated.js";
import { type DerivedInCode, wholeServing } from "../derived-system.js";
import { landingAtDerived, landingAtService } from "../electrode-landing.js";
import type { InstallationInCode, ScheduledConductor } from "../schedule.js";
import { commonOfSystems, tapOf } from "../schedule-common.js";
import { conductorServing } from "../schedule-electrodes.js";
import { commonConductorWithTaps, electrodeStarts } from "../schedule-service.js";
import { scheduled } from "../scheduled.js";
import { parallelViolations } from "../violations/parallel.js";
import {
  type Arrangement,
  type ArrangementComparison,
  arrangementOf,
  type Connection,
  type ConnectionNote,
  compareArrangements,
} from "./arrangement.js";
import { bareInstallation, freeName, joinedSupply, serviceOf } from "./model.js";
import type {
  DerivedElectrodesInput,
  ElectrodeConductorsInput,
  EnclosureElectrodesInput,
  SuppliedPlace,
} from "./shape.generated.js";

/**
 * The ways to connect several places to the electrodes. For several enclosures of a service, or of a building on a feeder, there are three
 * (250.64(D)): a common conductor with a tap into each enclosure, by each set's largest conductor added; an individual conductor from each; one
 * conductor from an accessible place on the supply side, by the conductors there. For several separately derived systems there are two
 * (250.30(A)(5), (6)): a common conductor of a fixed size with a tap from each system, or an individual conductor from each. One place
 * alone has one way. Total metal counts every conductor once, whatever its length.
 */
export function arrangeElectrodeConductors(input: ElectrodeConductorsInput): ArrangementComparison {
  const arrangements = input.system === "separately-derived" ? waysOfSystems(input) : waysOfEnclosures(input);
  return compareArrangements(input.code.year, arrangements);
}

function waysOfEnclosures(input: EnclosureElectrodesInput): readonly Arrangement[] {
  const { code, system, enclosures, wireway, electrodes, fromDrop = false } = input;
  const { year } = code;
  const bare = bareInstallation(code, input.conductor.material);
  const ids = idsOf(enclosures);
  const box = wireway ?? { id: freeName("supply side", ids), supply: joinedSupply(enclosures) };
  const at = serviceOf(bare, { enclosures, box, isFromBox: !fromDrop, common: "common" });
  const from = (place: string): readonly ScheduledConductor[] =>
    electrodeStarts(at, place).map((start) => {
      const { by, result } = conductorServing({ ...bare, system }, electrodes, start);
      const landing = landingAtService(at.service, place);
      return scheduled({ subject: place }, landing, { kind: "electrodes" }, result, { by });
    });
  const individual = arranged(
    input,
    "individual-electrode-conductors",
    serviceElectrodeIndividual[year],
    ids.flatMap(from),
    [connected(ids, "from-each-enclosure", serviceElectrodeIndividual[year])],
  );
  if (enclosures.length === 1) return [individual];
  return [
    arranged(
      input,
      "common-electrode-conductor",
      serviceElectrodeCommon[year],
      commonConductorWithTaps(at, electrodes, system),
      [connected(ids, "tap-into-each-enclosure", serviceElectrodeCommon[year])],
    ),
    individual,
    arranged(input, "electrode-conductor-at-one-place", serviceElectrodeOnePlace[year], from(box.id), [
      connected(
        wireway === undefined ? [] : [wireway.id],
        "at-one-place-ahead",
        serviceElectrodeOnePlace[year],
      ),
    ]),
  ];
}

function waysOfSystems(input: DerivedElectrodesInput): readonly Arrangement[] {
  const { code, system, systems, electrodes } = input;
  const bare = bareInstallation(code, input.conductor.material);
  const ids = idsOf(systems);
  const { citation } = commonConductorOfDerivedSystems[code.year];
  const individual = arranged(
    input,
    "individual-electrode-conductors",
    derivedElectrodeConnection[code.year],
    systems.map((one) => {
      const of = systemOf(bare, one);
      const servings = [wholeServing(of)];
      const { by, result } = conductorServing({ ...bare, system }, electrodes, { servings });
      const landing = landingAtDerived(of.system, one.id);
      return scheduled({ subject: one.id }, landing, { kind: "electrodes" }, result, { by });
    }),
    [connected(ids, "at-the-jumper", derivedElectrodeConnection[code.year])],
  );
  if (systems.length === 1) return [individual];
  const common = freeName("common", ids);
  return [
    arranged(
      input,
      "common-electrode-conductor",
      citation,
      [
        scheduled({ subject: common }, common, { kind: "electrodes" }, commonOfSystems(bare, electrodes)),
        ...systems.map((one) => {
          const at = systemOf(bare, one);
          const { by, result } = tapOf(at, electrodes, wholeServing(at));
          const landing = landingAtDerived(at.system, one.id);
          return scheduled({ part: "tap", subject: one.id }, landing, common, result, { by });
        }),
      ],
      [
        connected(ids, "at-the-jumper", citation),
        { ...connected([], "frame-may-serve-as-common", citation), status: "permitted" },
      ],
    ),
    individual,
  ];
}

/** A derived system as an installation would have it; its run is called like the system. */
function systemOf(bare: InstallationInCode, { id, supply }: SuppliedPlace): DerivedInCode {
  const to = freeName("disconnect", [id]);
  return {
    ...bare,
    system: {
      id,
      source: { id, kind: "transformer", outdoors: false },
      grounding: "solidly-grounded",
      connection: "three-phase-wye",
      runs: [{ id, from: id, to, supply }],
      disconnects: [{ id: to, amperes: 1 }],
      jumperAt: "source",
    },
  };
}

function arranged(
  input: ElectrodeConductorsInput,
  id: Arrangement["id"],
  citation: Citation,
  conductors: readonly ScheduledConductor[],
  connections: readonly Connection[],
): Arrangement {
  const places = input.system === "separately-derived" ? input.systems : input.enclosures;
  return arrangementOf({
    id,
    status: "permitted",
    citation,
    conductors,
    connections,
    violations: parallelViolations(places, input.code.year),
    cautions: [],
  });
}

function connected(at: readonly string[], note: ConnectionNote, citation: Citation): Connection {
  return { kind: "grounding-electrode-conductor", status: "required", at, note, citation };
}

function idsOf(places: readonly SuppliedPlace[]): readonly string[] {
  return places.map(({ id }) => id);
}
