import {
  type Code,
  conductorName,
  type Electrode,
  electrodeBondingJumper,
  electrodeRacewayBondingJumper,
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  type Installation,
  impedanceBondingJumper,
  impedanceGroundingConductor,
  intersystemBondingConductor,
  type Material,
  mainBondingJumper,
  otherPipingBondingJumper,
  type ScheduledConductor,
  type SizingResult,
  type Supply,
  size,
  structuralMetalBondingJumper,
  supplySideBondingJumper,
  systemBondingJumper,
  waterPipingBondingJumper,
} from "bondmil";
import { type Built, idAt } from "../built.js";
import { inOneOf } from "../conductors.js";
import type { Circuit, Derived, Electrode as DrawnElectrode, Run, Service } from "../parts.js";
import { isJumperInEach, racewaysOf } from "../parts.js";

/** Asks the sizing function of a conductor's role anew, with everything taken from the drawing but the supply. */
export function asked(
  { installation, schedule }: Built,
  scheduled: ScheduledConductor,
  supply: Supply,
): SizingResult | null {
  const { code, conductors } = schedule;
  const { bondingJumpers, groundedConductors, electrodeConductors } = installation.materials;
  const conductor = { material: bondingJumpers };
  const { subject, from } = scheduled;
  switch (scheduled.role) {
    case "main-bonding-jumper":
      return size(mainBondingJumper, { code, supply, conductor });
    case "system-bonding-jumper":
      return size(systemBondingJumper, { code, supply, conductor });
    case "supply-side-bonding-jumper":
      return supplySide(installation, code, subject, supply);
    case "grounded-conductor":
      return grounded(installation, code, scheduled, supply, groundedConductors);
    case "grounding-electrode-conductor":
      return electrodeConductor(installation, code, scheduled, subject, supply);
    case "electrode-bonding-jumper": {
      const { electrodes } = treeOf(installation, subject);
      return size(electrodeBondingJumper, {
        code,
        supply,
        conductor: { material: electrodeConductors },
        electrodes: served(electrodes, subject),
      });
    }
    case "electrode-raceway-bonding-jumper": {
      const inside = conductors.find(
        (one) => from.kind === "raceway" && conductorName(one) === conductorName(from.around),
      );
      if (inside?.result.outcome.kind !== "conductor") return null;
      const enclosed = [{ size: inside.result.outcome.size, material: electrodeConductors }];
      return size(electrodeRacewayBondingJumper, { code, ferrous: true, enclosed, conductor });
    }
    case "impedance-grounding-conductor": {
      const impedanceAmperes = impedanceOf(installation, subject)?.amperes ?? Number.NaN;
      const material = groundedConductors;
      return size(impedanceGroundingConductor, { code, impedanceAmperes, conductor: { material } });
    }
    case "impedance-bonding-jumper":
      return impedanceJumper(installation, conductors, code, subject, supply);
    case "equipment-grounding-conductor":
      return equipmentGrounding(installation, code, subject);
    case "water-piping-bonding-jumper":
      return waterPiping(installation, code, subject, supply);
    case "other-piping-bonding-jumper": {
      const pipe = installation.piping?.find(({ id }) => id === subject);
      if (pipe?.kind !== "other") return null;
      return size(otherPipingBondingJumper, { code, deviceAmperes: pipe.deviceAmperes, conductor });
    }
    case "structural-metal-bonding-jumper": {
      const frame = installation.structuralMetal?.find(({ id }) => id === subject);
      if (frame === undefined) return null;
      const system = kindOf(installation, frame.of);
      return size(structuralMetalBondingJumper, { code, system, supply, conductor });
    }
    case "intersystem-bonding-conductor": {
      const one = installation.intersystem?.find(({ id }) => id === subject);
      if (one === undefined) return null;
      const { id: _, at: __, ...rest } = one;
      return size(intersystemBondingConductor, { code, ...(rest as Omit<typeof rest, never>) } as never);
    }
    default:
      return null;
  }
}

function runOf(
  installation: Installation,
  id: string,
): { readonly run: Run; readonly isService: boolean } | null {
  for (const system of [...(installation.services ?? []), ...(installation.derivedSystems ?? [])]) {
    const run = system.runs.find((one) => one.id === id);
    if (run !== undefined) return { run, isService: "utility" in system };
  }
  return null;
}

function supplySide(installation: Installation, code: Code, subject: string, supply: Supply): SizingResult {
  const conductor = { material: installation.materials.bondingJumpers };
  const found = runOf(installation, subject);
  if (found === null) return size(supplySideBondingJumper, { code, supply, conductor });
  const { run, isService } = found;
  const { count } = racewaysOf(run);
  const isEach = isJumperInEach(run, isService);
  return size(supplySideBondingJumper, {
    code,
    supply: isEach ? inOneOf(count, supply) : supply,
    conductor,
    system: isService ? "service" : "separately-derived",
    scope: isEach ? "raceway" : "all",
  });
}

function grounded(
  installation: Installation,
  code: Code,
  { id, alternative }: ScheduledConductor,
  supply: Supply,
  material: Material,
): SizingResult | null {
  const subject = id.slice("grounded-conductor ".length).replace(/ \(.*\)$/, "");
  const all = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])];
  const system = all.find(({ runs }) => runs.some((run) => run.id === subject));
  const run = system?.runs.find((one) => one.id === subject);
  if (system === undefined || run === undefined) return null;
  const { count } = racewaysOf(run);
  const isDerived = "source" in system;
  const atSource =
    isDerived &&
    (system.jumperAt === "source" || (system.jumperAt === "compare" && alternative !== inEnclosures));
  return size(groundedConductor, {
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
  readonly system: "service" | "separately-derived" | "building";
  readonly electrodes: readonly DrawnElectrode[];
  readonly drawn?: Service | Derived;
}

/** What an electrode belongs to, with all that may hang on it; of a common conductor of derived systems, what hangs on that. */
function treeOf(installation: Installation, electrode: string): Tree {
  const { services = [], derivedSystems = [], buildings = [] } = installation;
  const has = ({
    electrodes = [],
  }: {
    readonly electrodes?: readonly DrawnElectrode[] | undefined;
  }): boolean => electrodes.some(({ id }) => id === electrode);
  const service = services.find(has);
  if (service !== undefined)
    return { system: "service", electrodes: service.electrodes ?? [], drawn: service };
  const system = derivedSystems.find(has);
  if (system === undefined) return { system: "building", electrodes: buildings.find(has)?.electrodes ?? [] };
  return { system: "separately-derived", electrodes: system.electrodes ?? [], drawn: system };
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
  installation: Installation,
  code: Code,
  { part: drawnPart, from: start }: ScheduledConductor,
  subject: string,
  supply: Supply,
): SizingResult | null {
  const { services = [], derivedSystems = [] } = installation;
  const conductor = { material: installation.materials.electrodeConductors };
  const isTap = drawnPart === "tap";
  const from = idAt(start);
  const place = isTap ? subject : from;
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
    return size(groundingElectrodeConductor, {
      code,
      system: "service",
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
    own.filter((one) => one.from === common?.id).flatMap((one) => served(own, one.id)),
  );
  if (isTap) {
    const electrodes = all.length > 0 ? all : [{ kind: "other" } as const];
    return size(groundingElectrodeConductor, {
      code,
      system: "separately-derived",
      supply,
      conductor,
      electrodes,
      part: "tap",
    });
  }
  if (systems.some((one) => one.commonElectrodeConductor?.id === from)) {
    const electrodes = all.length > 0 ? all : [{ kind: "other" } as const];
    return size(groundingElectrodeConductor, {
      code,
      system: "separately-derived",
      part: "common",
      conductor,
      electrodes,
    });
  }
  const { system, electrodes, drawn } = treeOf(installation, subject);
  if (electrodes.length === 0) return null;
  return size(groundingElectrodeConductor, {
    code,
    system,
    supply,
    conductor,
    electrodes: served(electrodes, subject),
    ...(drawn?.grounding === "ungrounded" && { ungrounded: true }),
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

function impedanceOf({ services = [], derivedSystems = [] }: Installation, id: string): Service["impedance"] {
  return [...services, ...derivedSystems].find((one) => one.id === id)?.impedance;
}

function impedanceJumper(
  installation: Installation,
  conductors: readonly ScheduledConductor[],
  code: Code,
  subject: string,
  supply: Supply,
): SizingResult | null {
  const conductor = { material: installation.materials.bondingJumpers };
  if (impedanceOf(installation, subject)?.electrodeConductorAt !== "first-disconnect")
    return size(impedanceBondingJumper, { code, electrodeConductorAt: "impedance", supply, conductor });
  const beside = conductors.find(({ id }) => id === `impedance-grounding-conductor ${subject}`)?.result
    .outcome;
  if (beside?.kind !== "conductor") return null;
  const electrodeConductorAt = "first-disconnect";
  return size(impedanceBondingJumper, {
    code,
    electrodeConductorAt,
    impedanceConductor: beside.size,
    conductor,
  });
}

const runs = {
  raceway: { kind: "single" },
  "parallel-raceways": { kind: "parallel-raceways" },
  "parallel-cables": { kind: "parallel-cables" },
  "tray-single-conductor": { kind: "tray", conductor: "single" },
  "tray-cable": { kind: "tray", conductor: "in-cable" },
} as const;

function equipmentGrounding(installation: Installation, code: Code, subject: string): SizingResult | null {
  const conductor = { material: installation.materials.equipmentGrounding };
  const generator = installation.generators?.find(({ id }) => id === subject);
  const circuit = installation.circuits?.find(({ id }) => id === subject);
  if (generator?.deviceAmperes !== undefined || circuit === undefined) return null;
  const { device, conductors, increasedFrom, wiring } = circuit;
  return size(equipmentGroundingConductor, {
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

function waterPiping(
  installation: Installation,
  code: Code,
  subject: string,
  supply: Supply,
): SizingResult | null {
  const conductor = { material: installation.materials.bondingJumpers };
  const pipe = installation.piping?.find(({ id }) => id === subject);
  if (pipe === undefined || pipe.kind === "other") return null;
  if (pipe.kind === "water-of-occupancy") {
    return size(waterPipingBondingJumper, {
      code,
      system: "occupancy",
      deviceAmperes: pipe.deviceAmperes,
      conductor,
    });
  }
  const system = kindOf(installation, pipe.of);
  if (system !== "building") return size(waterPipingBondingJumper, { code, system, supply, conductor });
  const feeder = installation.buildings?.find(({ id }) => id === pipe.of)?.circuit;
  const device = installation.circuits?.find(({ id }) => id === feeder)?.device;
  const deviceAmperes = device && ratingOf(device);
  return size(waterPipingBondingJumper, {
    code,
    system,
    supply,
    conductor,
    ...(deviceAmperes && { deviceAmperes }),
  });
}

function ratingOf(device: Circuit["device"]): number {
  if ("amperes" in device) return device.amperes;
  if ("aheadOfFeeder" in device) return device.aheadOfFeeder.amperes;
  return "amperes" in device.motor ? device.motor.amperes : device.motor.dualElementFuseAmperes;
}

function kindOf(installation: Installation, owner: string): Tree["system"] {
  if (installation.services?.some(({ id }) => id === owner)) return "service";
  return installation.derivedSystems?.some(({ id }) => id === owner) ? "separately-derived" : "building";
}
