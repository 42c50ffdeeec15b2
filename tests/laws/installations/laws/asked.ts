import {
  type Code,
  type Drawing,
  type Electrode,
  type Material,
  type ScheduledConductor,
  type SizingResult,
  type Supply,
  sizeCommonConductorOfDerivedSystems,
  sizeElectrodeBondingJumper,
  sizeElectrodeRacewayBondingJumper,
  sizeEquipmentGroundingConductor,
  sizeGroundedConductor,
  sizeGroundingElectrodeConductor,
  sizeImpedanceBondingJumper,
  sizeImpedanceGroundingConductor,
  sizeIntersystemBondingConductor,
  sizeMainBondingJumper,
  sizeOtherPipingBondingJumper,
  sizeStructuralMetalBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
  sizeWaterPipingBondingJumper,
} from "bondmil";
import type { Built } from "../built.js";
import { inOneOf } from "../conductors.js";
import type { Circuit, Derived, Electrode as DrawnElectrode, Run, Service } from "../parts.js";
import { isJumperInEach, racewaysOf } from "../parts.js";

/** Asks the sizing function of a conductor's role anew, with everything taken from the drawing but the supply. */
export function asked(
  { drawing, schedule }: Built,
  conductor: ScheduledConductor,
  supply: Supply,
): SizingResult | null {
  const { code, conductors } = schedule;
  const { bondingJumpers, groundedConductors, electrodeConductors } = drawing.materials;
  const jumper = { material: bondingJumpers };
  const subject = conductor.id.slice(conductor.role.length + 1);
  switch (conductor.role) {
    case "main-bonding-jumper":
      return sizeMainBondingJumper({ code, supply, jumper });
    case "system-bonding-jumper":
      return sizeSystemBondingJumper({ code, supply, jumper });
    case "supply-side-bonding-jumper":
      return supplySide(drawing, code, subject, supply);
    case "grounded-conductor":
      return grounded(drawing, code, conductor, supply, groundedConductors);
    case "grounding-electrode-conductor":
      return electrodeConductor(drawing, code, conductor, subject, supply);
    case "electrode-bonding-jumper": {
      const { electrodes } = treeOf(drawing, subject);
      return sizeElectrodeBondingJumper({
        code,
        supply,
        jumper: { material: electrodeConductors },
        to: served(electrodes, subject),
      });
    }
    case "electrode-raceway-bonding-jumper": {
      const inside = conductors.find((one) => conductor.from === `raceway of ${one.id}`);
      if (inside?.result.outcome.kind !== "conductor") return null;
      const enclosed = [{ size: inside.result.outcome.size, material: electrodeConductors }];
      return sizeElectrodeRacewayBondingJumper({ code, ferrous: true, enclosed, jumper });
    }
    case "impedance-grounding-conductor": {
      const impedanceAmperes = impedanceOf(drawing, subject)?.amperes ?? Number.NaN;
      const material = groundedConductors;
      return sizeImpedanceGroundingConductor({ code, impedanceAmperes, conductor: { material } });
    }
    case "impedance-bonding-jumper":
      return impedanceJumper(drawing, conductors, code, subject, supply);
    case "equipment-grounding-conductor":
      return equipmentGrounding(drawing, code, subject);
    case "water-piping-bonding-jumper":
      return waterPiping(drawing, code, subject, supply);
    case "other-piping-bonding-jumper": {
      const pipe = drawing.piping?.find(({ id }) => id === subject);
      if (pipe?.kind !== "other") return null;
      return sizeOtherPipingBondingJumper({ code, deviceAmperes: pipe.deviceAmperes, jumper });
    }
    case "structural-metal-bonding-jumper": {
      const frame = drawing.structuralMetal?.find(({ id }) => id === subject);
      if (frame === undefined) return null;
      const of = kindOf(drawing, frame.of);
      return sizeStructuralMetalBondingJumper({ code, of, supply, jumper });
    }
    case "intersystem-bonding-conductor": {
      const one = drawing.intersystem?.find(({ id }) => id === subject);
      if (one === undefined) return null;
      const { id: _, at: __, ...rest } = one;
      return sizeIntersystemBondingConductor({ code, ...(rest as Omit<typeof rest, never>) } as never);
    }
    default:
      return null;
  }
}

function runOf(drawing: Drawing, id: string): { readonly run: Run; readonly isService: boolean } | null {
  for (const system of [...(drawing.services ?? []), ...(drawing.derivedSystems ?? [])]) {
    const run = system.runs.find((one) => one.id === id);
    if (run !== undefined) return { run, isService: "utility" in system };
  }
  return null;
}

function supplySide(drawing: Drawing, code: Code, subject: string, supply: Supply): SizingResult {
  const jumper = { material: drawing.materials.bondingJumpers };
  const found = runOf(drawing, subject);
  if (found === null) return sizeSupplySideBondingJumper({ code, supply, jumper });
  const { run, isService } = found;
  const { count } = racewaysOf(run);
  const isEach = isJumperInEach(run, isService);
  return sizeSupplySideBondingJumper({
    code,
    supply: isEach ? inOneOf(count, supply) : supply,
    jumper,
    system: isService ? "service" : "separately-derived",
    scope: isEach ? "raceway" : "all",
  });
}

function grounded(
  drawing: Drawing,
  code: Code,
  { id, alternative }: ScheduledConductor,
  supply: Supply,
  material: Material,
): SizingResult | null {
  const subject = id.slice("grounded-conductor ".length).replace(/ \(.*\)$/, "");
  const all = [...(drawing.services ?? []), ...(drawing.derivedSystems ?? [])];
  const system = all.find(({ runs }) => runs.some((run) => run.id === subject));
  const run = system?.runs.find((one) => one.id === subject);
  if (system === undefined || run === undefined) return null;
  const { count } = racewaysOf(run);
  const isDerived = "source" in system;
  const atSource =
    isDerived &&
    (system.jumperAt === "source" || (system.jumperAt === "compare" && alternative !== inEnclosures));
  return sizeGroundedConductor({
    code,
    system: isDerived ? "separately-derived" : "service",
    supply: inOneOf(count, supply),
    scope: count > 1 ? "raceway" : "all",
    conductor: { material },
    ...(system.grounding === "grounded-phase" && { grounded: "phase" as const }),
    ...(isDerived && { jumperAt: atSource ? ("source" as const) : ("enclosure" as const) }),
    ...(run.load && { load: { ...run.load, amperes: run.load.amperes / count } as never }),
  });
}

const inEnclosures = "jumper-in-each-enclosure";

interface Tree {
  readonly of: "service" | "separately-derived" | "building";
  readonly electrodes: readonly DrawnElectrode[];
  readonly system?: Service | Derived;
}

/** What an electrode belongs to, with all that may hang on it; of a common conductor of derived systems, what hangs on that. */
function treeOf(drawing: Drawing, electrode: string): Tree {
  const { services = [], derivedSystems = [], buildings = [] } = drawing;
  const has = ({
    electrodes = [],
  }: {
    readonly electrodes?: readonly DrawnElectrode[] | undefined;
  }): boolean => electrodes.some(({ id }) => id === electrode);
  const service = services.find(has);
  if (service !== undefined) return { of: "service", electrodes: service.electrodes ?? [], system: service };
  const system = derivedSystems.find(has);
  if (system === undefined) return { of: "building", electrodes: buildings.find(has)?.electrodes ?? [] };
  return { of: "separately-derived", electrodes: system.electrodes ?? [], system };
}

/** An electrode with those beyond it. */
function served(electrodes: readonly DrawnElectrode[], start: string): readonly Electrode[] {
  const own = electrodes.filter(({ id }) => id === start).map(plain);
  return [
    ...own,
    ...electrodes.filter(({ from }) => from === start).flatMap(({ id }) => served(electrodes, id)),
  ];
}

function plain({ kind, ringConductor }: DrawnElectrode): Electrode {
  return kind === "ring" ? { kind, conductor: ringConductor ?? "2 AWG" } : { kind };
}

function electrodeConductor(
  drawing: Drawing,
  code: Code,
  { id, from }: ScheduledConductor,
  subject: string,
  supply: Supply,
): SizingResult | null {
  const { services = [], derivedSystems = [] } = drawing;
  const conductor = { material: drawing.materials.electrodeConductors };
  const isTap = id.startsWith("grounding-electrode-tap ");
  const place = isTap ? id.slice("grounding-electrode-tap ".length) : from;
  const service = services.find((one) => {
    const { boxes = [], disconnects, commonElectrodeConductor: common } = one;
    return [one, ...boxes, ...disconnects].some(({ id: own }) => own === place) || common?.id === place;
  });
  const tapped = services.find((one) => one.commonElectrodeConductor?.id === place);
  const onCommon = (own: readonly DrawnElectrode[], common: string | undefined): readonly Electrode[] => {
    const found = own.filter((one) => one.from === common).flatMap((one) => served(own, one.id));
    return found.length > 0 ? found : [{ kind: "other" }];
  };
  if (service !== undefined) {
    const own = service.electrodes ?? [];
    const common = service.commonElectrodeConductor?.id;
    const isNamed = own.some((one) => one.id === subject);
    const part = isTap ? "tap" : tapped ? "common" : "only";
    return sizeGroundingElectrodeConductor({
      code,
      of: "service",
      supply,
      conductor,
      electrodes: isNamed && !isTap ? served(own, subject) : onCommon(own, common),
      part,
      ...(part === "common" && isFromDrop(service, code) && { fromDrop: true }),
      ...(service.grounding === "ungrounded" && !isTap && isNamed && { ungrounded: true }),
    });
  }
  const systems = derivedSystems.filter((one) => one.commonElectrodeConductor !== undefined);
  const all = systems.flatMap(({ electrodes: own = [], commonElectrodeConductor: common }) =>
    own.filter(({ from: start }) => start === common?.id).flatMap((one) => served(own, one.id)),
  );
  if (isTap) {
    const electrodes = all.length > 0 ? all : [{ kind: "other" } as const];
    return sizeGroundingElectrodeConductor({
      code,
      of: "separately-derived",
      supply,
      conductor,
      electrodes,
      part: "tap",
    });
  }
  if (systems.some((one) => one.commonElectrodeConductor?.id === from)) {
    const electrodes = all.length > 0 ? all : [{ kind: "other" } as const];
    return sizeCommonConductorOfDerivedSystems({ code, conductor, electrodes });
  }
  const { of, electrodes, system } = treeOf(drawing, subject);
  if (electrodes.length === 0) return null;
  return sizeGroundingElectrodeConductor({
    code,
    of,
    supply,
    conductor,
    electrodes: served(electrodes, subject),
    ...(system?.grounding === "ungrounded" && { ungrounded: true }),
  });
}

/** Whether every enclosure with a tap hangs on the drop or lateral itself. */
function isFromDrop({ disconnects, runs, utility }: Service, { year }: Code): boolean {
  const tapped = disconnects.filter(
    ({ designation }) =>
      designation === "service-disconnect" || (designation === "supply-side-source" && year >= "2020"),
  );
  return runs.every(({ from, to }) => from === utility.id || tapped.every(({ id }) => id !== to));
}

function impedanceOf({ services = [], derivedSystems = [] }: Drawing, id: string): Service["impedance"] {
  return [...services, ...derivedSystems].find((one) => one.id === id)?.impedance;
}

function impedanceJumper(
  drawing: Drawing,
  conductors: readonly ScheduledConductor[],
  code: Code,
  subject: string,
  supply: Supply,
): SizingResult | null {
  const jumper = { material: drawing.materials.bondingJumpers };
  if (impedanceOf(drawing, subject)?.electrodeConductorAt !== "first-disconnect")
    return sizeImpedanceBondingJumper({ code, electrodeConductorAt: "impedance", supply, jumper });
  const beside = conductors.find(({ id }) => id === `impedance-grounding-conductor ${subject}`)?.result
    .outcome;
  if (beside?.kind !== "conductor") return null;
  const electrodeConductorAt = "first-disconnect";
  return sizeImpedanceBondingJumper({ code, electrodeConductorAt, impedanceConductor: beside.size, jumper });
}

const runs = {
  raceway: { kind: "single" },
  "parallel-raceways": { kind: "parallel-raceways" },
  "parallel-cables": { kind: "parallel-cables" },
  "tray-single-conductor": { kind: "tray", conductor: "single" },
  "tray-cable": { kind: "tray", conductor: "in-cable" },
} as const;

function equipmentGrounding(drawing: Drawing, code: Code, subject: string): SizingResult | null {
  const conductor = { material: drawing.materials.equipmentGrounding };
  const generator = drawing.generators?.find(({ id }) => id === subject);
  const circuit = drawing.circuits?.find(({ id }) => id === subject);
  if (generator?.deviceAmperes !== undefined || circuit === undefined) return null;
  const { device, conductors, increasedFrom, wiring } = circuit;
  return sizeEquipmentGroundingConductor({
    code: withCircumstances(code, circuit),
    circuits: [{ device, ...(conductors && { conductors }), ...(increasedFrom && { increasedFrom }) }],
    conductor,
    run: runs[wiring],
  });
}

function withCircumstances(code: Code, { lengthFeet, location }: Circuit): Code {
  if (code.amendments === undefined) return code;
  const own = { ...(lengthFeet && { lengthFeet }), ...(location && { location }) };
  return { ...code, circumstances: { ...code.circumstances, ...own } };
}

function waterPiping(drawing: Drawing, code: Code, subject: string, supply: Supply): SizingResult | null {
  const jumper = { material: drawing.materials.bondingJumpers };
  const pipe = drawing.piping?.find(({ id }) => id === subject);
  if (pipe === undefined || pipe.kind === "other") return null;
  if (pipe.kind === "water-of-occupancy") {
    return sizeWaterPipingBondingJumper({ code, of: "occupancy", deviceAmperes: pipe.deviceAmperes, jumper });
  }
  const of = kindOf(drawing, pipe.of);
  if (of !== "building") return sizeWaterPipingBondingJumper({ code, of, supply, jumper });
  const feeder = drawing.buildings?.find(({ id }) => id === pipe.of)?.circuit;
  const device = drawing.circuits?.find(({ id }) => id === feeder)?.device;
  const deviceAmperes = device && ratingOf(device);
  return sizeWaterPipingBondingJumper({ code, of, supply, jumper, ...(deviceAmperes && { deviceAmperes }) });
}

function ratingOf(device: Circuit["device"]): number {
  if ("amperes" in device) return device.amperes;
  if ("aheadOfFeeder" in device) return device.aheadOfFeeder.amperes;
  return "amperes" in device.motor ? device.motor.amperes : device.motor.dualElementFuseAmperes;
}

function kindOf(drawing: Drawing, owner: string): Tree["of"] {
  if (drawing.services?.some(({ id }) => id === owner)) return "service";
  return drawing.derivedSystems?.some(({ id }) => id === owner) ? "separately-derived" : "building";
}
