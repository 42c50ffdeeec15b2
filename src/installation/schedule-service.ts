import { serviceElectrodeConnection } from "../edition/tables/sections.generated.js";
import type { Electrode } from "../rules/electrode.js";
import { landingAtService } from "./electrode-landing.js";
import { electrodesOf } from "./electrodes-of.js";
import { inMaterialsOf } from "./materials-of.js";
import { racewayJumpersOfRuns } from "./raceway-jumpers.js";
import { ratingCautions } from "./rating-cautions.js";
import type { RunsOfSystem } from "./runs-of-system.js";
import type { ScheduledConductor, ScheduledPart } from "./schedule.js";
import {
  conductorServing,
  type ElectrodeStart,
  type ElectrodesOf,
  electrodePart,
  servedBy,
} from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import { groundedConductorsOf } from "./schedule-runs.js";
import { ofSystem, scheduled } from "./scheduled.js";
import {
  enclosuresOf,
  isServiceDisconnect,
  type ServiceInCode,
  servingsOfAll,
  servingsOfEnclosure,
  servingsOfService,
} from "./service.js";
import { serviceCautions } from "./service-cautions.js";
import {
  boxesWithoutSupply,
  boxJumpers,
  disconnectJumpers,
  mainJumpers,
  noMainJumpersInBoxes,
} from "./service-jumpers.js";
import { serviceViolations } from "./service-violations.js";
import { servingsAt } from "./serving.js";
import { astrayFromImpedance, groundingCautions, noGroundedConductors } from "./special-groundings.js";
import { parallelCautions } from "./violations/parallel.js";

/** Every conductor of a service: jumpers, grounded conductors, boxes, raceways, electrode conductors. */
export function servicePart(drawn: ServiceInCode): ScheduledPart {
  const at = inMaterialsOf(drawn, drawn.service);
  const { installation, code, service } = at;
  const { id, utility, impedance, runs, grounding } = service;
  const boxes = (service.boxes ?? []).map((one) => one.id);
  const { sharedRaceways } = service;
  const source = utility.id;
  const system: RunsOfSystem = {
    installation,
    code,
    kind: "service",
    grounding,
    source,
    boxes,
    sharedRaceways,
  };
  const servings = servingsOfService(at);
  const electrodes = electrodePart(serviceElectrodes(at));
  return {
    conductors: ofSystem(id, [
      ...mainJumpers(at),
      ...noMainJumpersInBoxes(at),
      ...impedanceConductors({
        ...{ installation, code, id, source: utility.id, impedance, servings },
        disconnects: service.disconnects.filter(isServiceDisconnect).map((one) => one.id),
      }),
      ...boxJumpers(at),
      ...boxesWithoutSupply(at),
      ...disconnectJumpers(at),
      ...racewayJumpersOfRuns(system, runs),
      ...runs.flatMap((run) => groundedConductorsOf(system, run)),
      ...noGroundedConductors({ installation, code, system: service, source: utility.id }),
      ...electrodes.conductors,
      ...electrodeTaps(at),
    ]),
    violations: [...serviceViolations(at), ...astrayFromImpedance(service, [], code)],
    cautions: [
      ...serviceCautions(at),
      ...groundingCautions(service, code),
      ...ratingCautions(
        service.disconnects.filter(({ bus }) => bus === undefined),
        runs,
        code.year,
      ),
      ...parallelCautions(runs, code.year, service.boxes),
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
  const { code, service } = at;
  const { installation } = inMaterialsOf(at, service);
  return {
    installation,
    code,
    system: "service",
    electrodes: electrodesOf(installation, service),
    servings: servingsOfService(at),
    startsOf: ({ from }) => electrodeStarts(at, from),
    landingOf: (from) => landingAtService(service, from),
    ungrounded: service.grounding === "ungrounded",
    impedance: service.grounding === "impedance",
  };
}

/** A disconnect, a box, a run or the common conductor from which an electrode conductor starts; on a run as where it ends. */
export function electrodeStarts(at: ServiceInCode, from: string): readonly ElectrodeStart[] {
  const { service, code } = at;
  if (from === service.commonElectrodeConductor?.id) {
    const own = service.commonElectrodeConductor;
    return [{ from, servings: servingsOfAll(at), part: "common", fromDrop: isFromDrop(at), own }];
  }
  if (from === service.impedance?.id) return [{ from, servings: servingsOfService(at) }];
  const enclosure = enclosuresOf(at).find(
    ({ id, disconnects, isBus }) => disconnects.includes(from) || (isBus && id === from),
  );
  const own = [...service.disconnects, ...(service.buses ?? [])].find(({ id }) => id === from);
  if (enclosure !== undefined) return [{ from, servings: servingsOfEnclosure(at, enclosure), own }];
  const others = [...(service.boxes ?? []), ...service.disconnects].map(({ id }) => id);
  if (others.includes(from)) return [{ from, servings: servingsAt(service.runs, from, code.year), own }];
  const along = service.runs.find(({ id }) => id === from);
  return along === undefined ? [] : electrodeStarts(at, along.to).map((start) => ({ ...start, from }));
}

/** Whether the conductors to all enclosures come directly from the drop or lateral, not from a box. */
function isFromDrop(at: ServiceInCode): boolean {
  const { runs, utility } = at.service;
  const ids = enclosuresOf(at).flatMap(({ id, disconnects }) => [id, ...disconnects]);
  return runs.every(({ from, to }) => !ids.includes(to) || from === utility.id);
}

/** The taps of a common electrode conductor; and itself, where the installation shows no electrode on it. */
function electrodeTaps(at: ServiceInCode): readonly ScheduledConductor[] {
  const { commonElectrodeConductor: common } = at.service;
  if (common === undefined) return [];
  const served = electrodesOf(at.installation, at.service)
    .filter(({ from }) => from === common.id)
    .flatMap((electrode) => servedBy(at.installation, electrode));
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
      const { by, result } = conductorServing(inMaterialsOf(of, start.own), served, start);
      return scheduled({ subject: common }, common, { kind: "electrodes" }, result, { by });
    }),
    ...enclosuresOf(at).map((enclosure) => {
      const servings = servingsOfEnclosure(at, enclosure);
      const from = enclosure.isBus ? enclosure.id : (enclosure.disconnects[0] ?? enclosure.id);
      const own = [...service.disconnects, ...(service.buses ?? [])].find(({ id }) => id === from);
      const { by, result } = conductorServing(inMaterialsOf(of, own), served, { servings, part: "tap" });
      const start = landingAtService(service, from);
      return scheduled({ part: "tap", subject: enclosure.id }, start, common, result, { by });
    }),
  ];
}
