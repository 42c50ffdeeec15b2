import { serviceElectrodeConnection } from "../edition/tables/sections.generated.js";
import type { Electrode } from "../rules/electrode.js";
import { ratingCautions } from "./rating-cautions.js";
import type { ScheduledConductor, ScheduledPart } from "./schedule.js";
import {
  conductorServing,
  type ElectrodeStart,
  type ElectrodesOf,
  electrodePart,
  servedBy,
} from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import {
  groundedConductorsOf,
  parallelCautions,
  type RunsOfSystem,
  racewayJumpersOf,
} from "./schedule-runs.js";
import { ofSystem, scheduled } from "./scheduled.js";
import {
  enclosuresOf,
  type ServiceInCode,
  servingsOfAll,
  servingsOfEnclosure,
  servingsOfService,
} from "./service.js";
import { serviceCautions } from "./service-cautions.js";
import { boxJumpers, disconnectJumpers, mainJumpers, noMainJumpersInBoxes } from "./service-jumpers.js";
import { serviceViolations } from "./service-violations.js";
import { servingsAt } from "./serving.js";

/** Every conductor of a service: jumpers, grounded conductors, boxes, raceways, electrode conductors. */
export function servicePart(at: ServiceInCode): ScheduledPart {
  const { installation, code, service } = at;
  const { id, utility, impedance, runs, grounding } = service;
  const boxes = (service.boxes ?? []).map((one) => one.id);
  const system: RunsOfSystem = { installation, code, kind: "service", grounding, source: utility.id, boxes };
  const servings = servingsOfService(at);
  const electrodes = electrodePart(serviceElectrodes(at));
  return {
    conductors: ofSystem(id, [
      ...mainJumpers(at),
      ...noMainJumpersInBoxes(at),
      ...impedanceConductors({ installation, code, id, source: utility.id, impedance, servings }),
      ...boxJumpers(at),
      ...disconnectJumpers(at),
      ...runs.flatMap((run) => racewayJumpersOf(system, run)),
      ...runs.flatMap((run) => groundedConductorsOf(system, run)),
      ...electrodes.conductors,
      ...electrodeTaps(at),
    ]),
    violations: serviceViolations(at),
    cautions: [
      ...serviceCautions(at),
      ...ratingCautions(service.disconnects, runs, code.year),
      ...parallelCautions(runs, at),
      ...(electrodes.cautions ?? []),
    ],
    notSized:
      service.electrodes?.length || service.commonElectrodeConductor
        ? []
        : [
            {
              what: `grounding electrode conductor of ${id}`,
              see: serviceElectrodeConnection[code.year].section,
            },
          ],
  };
}

/** What the electrode conductors of a service go by. */
export function serviceElectrodes(at: ServiceInCode): ElectrodesOf {
  const { installation, code, service } = at;
  return {
    installation,
    code,
    system: "service",
    electrodes: service.electrodes ?? [],
    servings: servingsOfService(at),
    startsOf: ({ from }) => electrodeStarts(at, from),
    ungrounded: service.grounding === "ungrounded",
  };
}

/** A disconnect, a box or the common conductor from which an electrode conductor starts. */
export function electrodeStarts(at: ServiceInCode, from: string): readonly ElectrodeStart[] {
  const { service, code } = at;
  if (from === service.commonElectrodeConductor?.id) {
    return [{ from, servings: servingsOfAll(at), part: "common", fromDrop: isFromDrop(at) }];
  }
  const enclosure = enclosuresOf(at).find(({ disconnects }) => disconnects.includes(from));
  if (enclosure !== undefined) return [{ from, servings: servingsOfEnclosure(at, enclosure) }];
  const others = [...(service.boxes ?? []), ...service.disconnects].map(({ id }) => id);
  return others.includes(from) ? [{ from, servings: servingsAt(service.runs, from, code.year) }] : [];
}

/** Whether the conductors to all enclosures come directly from the drop or lateral, not from a box. */
function isFromDrop(at: ServiceInCode): boolean {
  const { runs, utility } = at.service;
  const ids = enclosuresOf(at).flatMap(({ disconnects }) => disconnects);
  return runs.every(({ from, to }) => !ids.includes(to) || from === utility.id);
}

/** The taps of a common electrode conductor; and itself, where the installation shows no electrode on it. */
function electrodeTaps(at: ServiceInCode): readonly ScheduledConductor[] {
  const { commonElectrodeConductor: common, electrodes = [] } = at.service;
  if (common === undefined) return [];
  const served = electrodes
    .filter(({ from }) => from === common.id)
    .flatMap((electrode) => servedBy(electrode, electrodes));
  const [itself, ...taps] = commonConductorWithTaps(at, served);
  return itself === undefined || served.length > 0 ? taps : [itself, ...taps];
}

/** The common electrode conductor of several enclosures, by all of them, and a tap to each, which serve some electrodes. */
export function commonConductorWithTaps(
  at: ServiceInCode,
  served: readonly Electrode[],
  system: "service" | "building" = "service",
): readonly ScheduledConductor[] {
  const { installation, code, service } = at;
  const common = service.commonElectrodeConductor?.id ?? service.id;
  const of = { installation, code, system };
  return [
    ...electrodeStarts(at, common).map((start) => {
      const { by, result } = conductorServing(of, served, start);
      return scheduled({ subject: common }, common, { kind: "electrodes" }, result, { by });
    }),
    ...enclosuresOf(at).map((enclosure) => {
      const servings = servingsOfEnclosure(at, enclosure);
      const { by, result } = conductorServing(of, served, { servings, part: "tap" });
      const from = enclosure.disconnects[0] ?? enclosure.id;
      return scheduled({ part: "tap", subject: enclosure.id }, from, common, result, { by });
    }),
  ];
}
