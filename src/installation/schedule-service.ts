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
import type { SizingResult } from "../rules/result.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import type { Supply } from "../supply/index.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { electrodePart, type PlaceSupply, servedBy } from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import {
  groundedConductorsOf,
  parallelCautions,
  type RunsOfSystem,
  racewayCautions,
  racewayJumpersOf,
} from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { hasGroundedConductor, joined, supplyFrom, supplyTo } from "./supplies.js";

/** A service of a drawing. */
type DrawnService = NonNullable<Drawing["services"]>[number];
type DrawnDisconnect = DrawnService["disconnects"][number];

interface ServiceInCode extends DrawingInCode {
  readonly service: DrawnService;
}

/** Every conductor of a service: jumpers, grounded conductors, boxes, raceways, electrode conductors. */
export function servicePart(at: ServiceInCode): ScheduledPart {
  const { drawing, code, service } = at;
  const { id, utility, impedance, runs, grounding } = service;
  const system: RunsOfSystem = { drawing, code, kind: "service", grounding };
  const supply = supplyFrom(runs, utility.id, code.year);
  const electrodes = electrodePart({
    drawing,
    code,
    of: "service",
    electrodes: service.electrodes ?? [],
    supply,
    supplyAt: (place) => electrodeStart(at, place),
    ungrounded: grounding === "ungrounded",
  });
  return {
    conductors: [
      ...mainJumpers(at),
      ...impedanceConductors({ drawing, code, id, source: utility.id, impedance, supply }),
      ...boxJumpers(at),
      ...disconnectJumpers(at),
      ...runs.flatMap((run) => racewayJumpersOf(system, run)),
      ...runs.flatMap((run) => groundedConductorsOf(system, run)),
      ...electrodes.conductors,
      ...electrodeTaps(at),
    ],
    cautions: [
      ...serviceCautions(at),
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

/** The ungrounded conductors that end at a place. */
function supplyAt({ service, code }: ServiceInCode, place: string): Supply {
  return supplyTo(service.runs, place, code.year);
}

function mainJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  const { service, drawing, code } = at;
  if (!isAssembly(service)) return service.disconnects.map((one) => mainJumperOf(at, one));
  const result = sizeMainBondingJumper({
    code,
    supply: supplyOfAssembly(at),
    jumper: { material: drawing.materials.bondingJumpers },
  });
  const [id, place] = [`main-bonding-jumper ${service.id}`, `assembly of ${service.id}`];
  return [
    scheduled(id, "grounded conductor", place, result),
    ...service.disconnects.filter((one) => !isServiceDisconnect(one)).map((one) => mainJumperOf(at, one)),
  ];
}

/** Several disconnects in one listed assembly, which has one main bonding jumper. */
function isAssembly(service: DrawnService): boolean {
  const { housing, disconnects } = service;
  const several = disconnects.filter(isServiceDisconnect).length > 1;
  return housing === "listed-assembly" && several && hasGroundedConductor(service);
}

function isServiceDisconnect({ designation }: DrawnDisconnect): boolean {
  return designation === "service-disconnect";
}

/** The conductors that supply an assembly: those to the one box ahead of it, if all its disconnects hang on that. */
function supplyOfAssembly(at: ServiceInCode): Supply {
  const { service } = at;
  const own = service.disconnects.filter(isServiceDisconnect).map(({ id }) => id);
  const starts = new Set(service.runs.flatMap(({ from, to }) => (own.includes(to) ? [from] : [])));
  const [ahead, ...more] = starts;
  const isBox = more.length === 0 && service.boxes?.some(({ id }) => id === ahead);
  const servesOthers = service.runs.some(({ from, to }) => from === ahead && !own.includes(to));
  return isBox && ahead !== undefined && !servesOthers
    ? supplyAt(at, ahead)
    : joined(own.map((id) => supplyAt(at, id)));
}

function mainJumperOf(at: ServiceInCode, disconnect: DrawnDisconnect): ScheduledConductor {
  const { id } = disconnect;
  return scheduled(`main-bonding-jumper ${id}`, "grounded conductor", id, mainJumperResult(at, disconnect));
}

function mainJumperResult(at: ServiceInCode, { id, designation }: DrawnDisconnect): SizingResult {
  const { code, service, drawing } = at;
  const { year } = code;
  const material = drawing.materials.bondingJumpers;
  const none = (
    why: Parameters<typeof notRequired>[3],
    citation: Parameters<typeof notRequired>[4],
  ): SizingResult => notRequired("main-bonding-jumper", code, material, why, citation);
  if (service.grounding === "ungrounded") return none("ungrounded-system", serviceUngroundedElectrode[year]);
  if (service.grounding === "impedance") return none("impedance-grounded", mainJumperImpedance[year]);
  switch (designation) {
    case "meter-disconnect":
    case "emergency-disconnect":
      return none("not-service-equipment", meterAndEmergencyDisconnects[year]);
    case "supply-side-source":
      if (!supplySideSourceIsServiceLike[year])
        return none("supply-side-source-before-its-rule", supplySideSourceBonding[year]);
      break;
    case "service-disconnect":
      break;
  }
  return sizeMainBondingJumper({ code, supply: supplyAt(at, id), jumper: { material } });
}

function boxJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  return (at.service.boxes ?? []).map(({ id, bondedBy }) => metalJumper(at, id, bondedBy));
}

/** Enclosures on the supply side that have no main bonding jumper are bonded as boxes are. */
function disconnectJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  return at.service.disconnects
    .filter((one) => !isLikeService(at, one))
    .map(({ id, bondedBy = "jumper" }) => metalJumper(at, id, bondedBy));
}

function isLikeService({ code }: ServiceInCode, { designation }: DrawnDisconnect): boolean {
  if (designation === "supply-side-source") return supplySideSourceIsServiceLike[code.year];
  return designation === "service-disconnect";
}

function metalJumper(
  at: ServiceInCode,
  id: string,
  bondedBy: "jumper" | "grounded-conductor",
): ScheduledConductor {
  const { service, code, drawing } = at;
  const result = sizeSupplySideBondingJumper({
    code,
    supply: supplyAt(at, id),
    jumper: { material: drawing.materials.bondingJumpers },
    ...(bondedBy === "grounded-conductor" && { instead: bondedBy }),
  });
  const from = hasGroundedConductor(service) ? "grounded conductor" : "grounding electrode conductor";
  return scheduled(`supply-side-bonding-jumper ${id}`, from, id, result);
}

/** A disconnect, a box or the common conductor from which an electrode conductor starts. */
function electrodeStart(at: ServiceInCode, place: string): PlaceSupply | undefined {
  const { service } = at;
  if (place === service.commonElectrodeConductor?.id) {
    return { supply: supplyOfTapped(at), part: "common", fromDrop: isFromDrop(at) };
  }
  const places = [...(service.boxes ?? []), ...service.disconnects].map(({ id }) => id);
  return places.includes(place) ? { supply: supplyAt(at, place) } : undefined;
}

function supplyOfTapped(at: ServiceInCode): Supply {
  return joined(tapped(at).map(({ id }) => supplyAt(at, id)));
}

/** Whether the conductors to all enclosures come directly from the drop or lateral, not from a box. */
function isFromDrop(at: ServiceInCode): boolean {
  const { runs, utility } = at.service;
  const ids = tapped(at).map(({ id }) => id);
  return runs.every(({ from, to }) => !ids.includes(to) || from === utility.id);
}

/** The enclosures that tap a common electrode conductor. */
function tapped(at: ServiceInCode): readonly DrawnDisconnect[] {
  return at.service.disconnects.filter((one) => isLikeService(at, one));
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
  const sized = (supply: Supply, part: "common" | "tap"): SizingResult =>
    sizeGroundingElectrodeConductor({
      code,
      of: "service",
      supply,
      conductor: { material: drawing.materials.electrodeConductors },
      electrodes: served.length > 0 ? served : [{ kind: "other" }],
      part,
      ...(part === "common" && isFromDrop(at) && { fromDrop: true }),
    });
  const itself = scheduled(
    `grounding-electrode-conductor ${common.id}`,
    common.id,
    "electrodes",
    sized(supplyOfTapped(at), "common"),
  );
  return [
    ...(served.length > 0 ? [] : [itself]),
    ...tapped(at).map(({ id }) =>
      scheduled(`grounding-electrode-tap ${id}`, id, common.id, sized(supplyAt(at, id), "tap")),
    ),
  ];
}

function serviceCautions({ service, code: { year } }: ServiceInCode): readonly PlacedCaution[] {
  const { id, grounding, utility, boxes = [], disconnects } = service;
  const assembled = isAssembly(service);
  const found: readonly (readonly [boolean, PlacedCaution])[] = [
    [
      disconnects.filter(isServiceDisconnect).length > 6,
      { code: "more-than-six-disconnects", section: numberOfDisconnects[year].section, at: id },
    ],
    [assembled, { code: "assembly-size-inferred", section: listedAssembly[year].section, at: id }],
    [
      assembled && assemblyDivided[year],
      { code: "assembly-narrowed", section: numberOfDisconnects[year].section, at: id },
    ],
    [
      utility.outdoorTransformer && hasGroundedConductor({ grounding }),
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
