import type { Citation } from "../edition/index.js";
import { assemblyDivided, supplySideSourceIsServiceLike } from "../edition/tables/placements.generated.js";
import {
  listedAssembly,
  mainJumperImpedance,
  mainJumperPlace,
  meterAndEmergencyDisconnects,
  numberOfDisconnects,
  outdoorTransformerElectrode,
  serviceElectrodeConnection,
  serviceUngroundedElectrode,
  supplySideSourceBonding,
} from "../edition/tables/sections.generated.js";
import { notRequired } from "../rules/finish.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import { sizeMainBondingJumper } from "../rules/main-bonding-jumper.js";
import type { NotRequiredReason } from "../rules/result.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import { ratingCautions } from "./rating-cautions.js";
import type { PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { type ElectrodeStart, type ElectrodesOf, electrodePart, servedBy } from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import {
  groundedConductorsOf,
  parallelCautions,
  type RunsOfSystem,
  racewayCautions,
  racewayJumpersOf,
} from "./schedule-runs.js";
import { ofSystem, scheduled } from "./scheduled.js";
import {
  type DrawnDisconnect,
  type Enclosure,
  enclosuresOf,
  isAssembly,
  isLikeService,
  type ServiceInCode,
  servingsOfAll,
  servingsOfEnclosure,
  servingsOfService,
  servingToPlace,
} from "./service.js";
import { serviceViolations } from "./service-violations.js";
import { largestServed, type ServedResult, type Serving, servingsAt } from "./serving.js";
import { hasGroundedConductor } from "./supplies.js";

/** Every conductor of a service: jumpers, grounded conductors, boxes, raceways, electrode conductors. */
export function servicePart(at: ServiceInCode): ScheduledPart {
  const { drawing, code, service } = at;
  const { id, utility, impedance, runs, grounding } = service;
  const system: RunsOfSystem = { drawing, code, kind: "service", grounding };
  const servings = servingsOfService(at);
  const electrodes = electrodePart(serviceElectrodes(at));
  return {
    conductors: ofSystem(id, [
      ...mainJumpers(at),
      ...impedanceConductors({ drawing, code, id, source: utility.id, impedance, servings }),
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
      ...racewayCautions(runs, at),
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
  const { drawing, code, service } = at;
  return {
    drawing,
    code,
    of: "service",
    electrodes: service.electrodes ?? [],
    servings: servingsOfService(at),
    startsOf: ({ from }) => electrodeStarts(at, from),
    ungrounded: service.grounding === "ungrounded",
  };
}

function mainJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  const { service } = at;
  const assembly = isAssembly(service) && hasGroundedConductor(service) ? enclosuresOf(at)[0] : undefined;
  const alone = service.disconnects.filter((one) => assembly?.disconnects.includes(one.id) !== true);
  return [
    ...(assembly === undefined ? [] : [mainJumperOfAssembly(at, assembly)]),
    ...alone.map((one) => mainJumperOf(at, one)),
  ];
}

function mainJumperOfAssembly(at: ServiceInCode, assembly: Enclosure): ScheduledConductor {
  const { code, drawing } = at;
  const jumper = { material: drawing.materials.bondingJumpers };
  const { by, result } = largestServed(servingsOfEnclosure(at, assembly), (supply) =>
    sizeMainBondingJumper({ code, supply, jumper }),
  );
  const place = `assembly of ${assembly.id}`;
  return scheduled(`main-bonding-jumper ${assembly.id}`, "grounded conductor", place, result, { by });
}

function mainJumperOf(at: ServiceInCode, { id, designation }: DrawnDisconnect): ScheduledConductor {
  const { code, drawing } = at;
  const material = drawing.materials.bondingJumpers;
  const needless = noMainJumper(at, designation);
  const { by, supply } = servingToPlace(at, id);
  const result =
    needless === null
      ? sizeMainBondingJumper({ code, supply, jumper: { material } })
      : notRequired("main-bonding-jumper", code, material, ...needless);
  return scheduled(`main-bonding-jumper ${id}`, "grounded conductor", id, result, { by });
}

/** Why a disconnect has no main bonding jumper; `null` if it has one. */
function noMainJumper(
  { code: { year }, service: { grounding } }: ServiceInCode,
  designation: DrawnDisconnect["designation"],
): readonly [NotRequiredReason, Citation] | null {
  if (grounding === "ungrounded") return ["ungrounded-system", serviceUngroundedElectrode[year]];
  if (grounding === "impedance") return ["impedance-grounded", mainJumperImpedance[year]];
  switch (designation) {
    case "meter-disconnect":
    case "emergency-disconnect":
      return ["not-service-equipment", meterAndEmergencyDisconnects[year]];
    case "supply-side-source":
      return supplySideSourceIsServiceLike[year]
        ? null
        : ["supply-side-source-before-its-rule", supplySideSourceBonding[year]];
    case "service-disconnect":
      return null;
  }
}

function boxJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  return (at.service.boxes ?? []).map(({ id, bondedBy }) => metalJumper(at, id, bondedBy));
}

/** Enclosures that have no main bonding jumper are bonded as boxes are. */
function disconnectJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  return [
    ...at.service.disconnects
      .filter((one) => !isLikeService(at, one))
      .map(({ id, bondedBy = "jumper" }) => metalJumper(at, id, bondedBy)),
    ...(hasGroundedConductor(at.service) ? [] : enclosureJumpers(at)),
  ];
}

/**
 * Without a grounded conductor the metal of an enclosure is bonded to the electrode conductor (250.80, 250.92): by a jumper, unless the
 * electrode conductor or a tap starts in it.
 */
function enclosureJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  const { code, drawing, service } = at;
  if (service.commonElectrodeConductor !== undefined) return [];
  const starts = new Set((service.electrodes ?? []).map(({ from }) => from));
  const jumper = { material: drawing.materials.bondingJumpers };
  return enclosuresOf(at)
    .filter(({ disconnects }) => !disconnects.some((id) => starts.has(id)))
    .map((enclosure) => {
      const { by, result } = largestServed(servingsOfEnclosure(at, enclosure), (supply) =>
        sizeSupplySideBondingJumper({ code, supply, jumper }),
      );
      const place = enclosure.disconnects[0] ?? enclosure.id;
      const id = `supply-side-bonding-jumper ${place}`;
      return scheduled(id, "grounding electrode conductor", place, result, { by });
    });
}

function metalJumper(
  at: ServiceInCode,
  id: string,
  bondedBy: "jumper" | "grounded-conductor",
): ScheduledConductor {
  const { service, code, drawing } = at;
  const jumper = { material: drawing.materials.bondingJumpers };
  const { by, result } = largestServed(servingsAt(service.runs, id, code.year), (supply) =>
    sizeSupplySideBondingJumper({
      code,
      supply,
      jumper,
      ...(bondedBy === "grounded-conductor" && { instead: bondedBy }),
    }),
  );
  const from = hasGroundedConductor(service) ? "grounded conductor" : "grounding electrode conductor";
  return scheduled(`supply-side-bonding-jumper ${id}`, from, id, result, { by });
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

/** The taps of a common electrode conductor; and itself, where the drawing shows no electrode on it. */
function electrodeTaps(at: ServiceInCode): readonly ScheduledConductor[] {
  const { service, code, drawing } = at;
  const common = service.commonElectrodeConductor;
  if (common === undefined) return [];
  const electrodes = service.electrodes ?? [];
  const served = electrodes
    .filter(({ from }) => from === common.id)
    .flatMap((electrode) => servedBy(electrode, electrodes));
  const sized = (servings: readonly Serving[], part: "common" | "tap"): ServedResult =>
    largestServed(servings, (supply) =>
      sizeGroundingElectrodeConductor({
        code,
        of: "service",
        supply,
        conductor: { material: drawing.materials.electrodeConductors },
        electrodes: served.length > 0 ? served : [{ kind: "other" }],
        part,
        ...(part === "common" && isFromDrop(at) && { fromDrop: true }),
      }),
    );
  const itself = (): ScheduledConductor => {
    const { by, result } = sized(servingsOfAll(at), "common");
    const id = `grounding-electrode-conductor ${common.id}`;
    return scheduled(id, common.id, "electrodes", result, { by });
  };
  return [
    ...(served.length > 0 ? [] : [itself()]),
    ...enclosuresOf(at).map((enclosure) => {
      const { by, result } = sized(servingsOfEnclosure(at, enclosure), "tap");
      const from = enclosure.disconnects[0] ?? enclosure.id;
      return scheduled(`grounding-electrode-tap ${enclosure.id}`, from, common.id, result, { by });
    }),
  ];
}

function serviceCautions({ service, code: { year } }: ServiceInCode): readonly PlacedCaution[] {
  const { id, utility, boxes = [] } = service;
  const assembled = isAssembly(service) && hasGroundedConductor(service);
  const found: readonly (readonly [boolean, PlacedCaution])[] = [
    [assembled, { code: "assembly-size-inferred", section: listedAssembly[year].section, at: id }],
    [
      assembled && assemblyDivided[year],
      { code: "assembly-narrowed", section: numberOfDisconnects[year].section, at: id },
    ],
    [
      utility.outdoorTransformer && hasGroundedConductor(service),
      {
        code: "outdoor-transformer-electrode",
        section: outdoorTransformerElectrode[year].section,
        at: utility.id,
      },
    ],
  ];
  const wireways = boxes.filter(({ kind, bondedBy }) => {
    return bondedBy === "jumper" && (kind === "wireway" || kind === "gutter");
  });
  return [
    ...found.flatMap(([holds, caution]) => (holds ? [caution] : [])),
    ...wireways.map((box): PlacedCaution => {
      return { code: "jumper-in-wireway", section: mainJumperPlace[year].section, at: box.id };
    }),
  ];
}
