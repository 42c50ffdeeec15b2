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
import { electrodesIn, listOf, served } from "../electrodes.js";
import { materialsAt } from "../materials.js";
import type { Circuit, Electrode as DrawnElectrode, Run, Service } from "../parts.js";
import { isJumperInEach, racewaysOf } from "../parts.js";

/** Asks the sizing function of a conductor's role anew, with everything taken from the drawing but the supply. */
export function asked(
  { installation: drawn, schedule }: Built,
  scheduled: ScheduledConductor,
  supply: Supply,
): SizingResult | null {
  const installation = { ...drawn, materials: materialsAt(drawn, scheduled) };
  const { code, conductors } = schedule;
  const { bondingJumpers, groundedConductors, electrodeConductors } = installation.materials;
  const conductor = { material: bondingJumpers };
  const { subject, from } = scheduled;
  switch (scheduled.role) {
    case "main-bonding-jumper":
      return size(mainBondingJumper, {
        code,
        supply,
        conductor: { ...conductor, ...formOf(installation, subject) },
      });
    case "system-bonding-jumper":
      return size(systemBondingJumper, { code, supply, conductor });
    case "supply-side-bonding-jumper":
      return supplySide(installation, code, subject, supply);
    case "grounded-conductor":
      return grounded(installation, code, scheduled, supply, groundedConductors);
    case "grounding-electrode-conductor":
      return electrodeConductor(installation, code, scheduled, supply);
    case "electrode-bonding-jumper": {
      if (isRemovable(installation, subject))
        return size(electrodeBondingJumper, {
          code,
          supply,
          conductor: { material: electrodeConductors },
          electrodes: [{ kind: "metal-water-pipe" }],
        });
      return size(electrodeBondingJumper, {
        code,
        supply,
        conductor: { material: electrodeConductors },
        electrodes: served(installation, subject),
      });
    }
    case "electrode-raceway-bonding-jumper": {
      const inside = conductors.find(
        (one) => from.kind === "raceway" && conductorName(one) === conductorName(from.around),
      );
      if (inside?.result.outcome.kind !== "conductor") return null;
      const enclosed = [{ size: inside.result.outcome.size, material: inside.result.material }];
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
      return waterPiping(installation, code, scheduled, supply);
    case "other-piping-bonding-jumper": {
      const pipe = installation.piping?.find(({ id }) => id === subject);
      if (pipe?.kind !== "other") return null;
      return size(otherPipingBondingJumper, { code, deviceAmperes: pipe.deviceAmperes, conductor });
    }
    case "structural-metal-bonding-jumper": {
      const frame = installation.structuralMetal?.find(({ id }) => id === subject);
      if (frame === undefined) return null;
      const system = kindOf(installation, ownerOf(scheduled, frame.of));
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

/** The form in which the main bonding jumper of a bus is drawn. */
function formOf({ services = [] }: Installation, id: string): { readonly form?: "wire" | "bus" } {
  const bus = services.flatMap(({ buses = [] }) => buses).find((one) => one.id === id);
  return bus?.jumperForm === undefined ? {} : { form: bus.jumperForm };
}

/** Whether it is something that is likely to be taken out of a water pipe. */
function isRemovable(
  { services = [], derivedSystems = [], buildings = [], piping = [] }: Installation,
  id: string,
): boolean {
  const electrodes = [...services, ...derivedSystems, ...buildings].flatMap((one) => one.electrodes ?? []);
  return [...electrodes, ...piping].some(
    (one) => "removable" in one && one.removable?.some((fitting) => fitting.id === id),
  );
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
  const sharing = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])].find(
    ({ sharedRaceways = [] }) => sharedRaceways.some(({ id }) => id === subject),
  );
  if (sharing !== undefined) {
    const system = "utility" in sharing ? "service" : "separately-derived";
    return size(supplySideBondingJumper, { code, supply, conductor, system, scope: "single-raceway" });
  }
  if (found === null) return size(supplySideBondingJumper, { code, supply, conductor });
  const { run, isService } = found;
  const { count } = racewaysOf(run);
  const isEach = isJumperInEach(run, isService);
  return size(supplySideBondingJumper, {
    code,
    supply: isEach ? inOneOf(count, supply) : supply,
    conductor,
    system: isService ? "service" : "separately-derived",
    scope: isEach ? "raceway" : count > 1 ? "all" : "single-raceway",
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
  const device = isDerived ? system.source.deviceAmperes : undefined;
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
    ...(device === undefined ? {} : { feederDeviceAmperes: device }),
    ...(isDerived &&
      device === undefined && { jumperAt: atSource ? ("source" as const) : ("enclosure" as const) }),
    ...(run.load && { load: { ...run.load, amperes: run.load.amperes / count } as never }),
  });
}

const inEnclosures = "jumper-in-each-enclosure";

function electrodeConductor(
  installation: Installation,
  code: Code,
  scheduled: ScheduledConductor,
  supply: Supply,
): SizingResult | null {
  const { part: drawnPart, from: start, subject } = scheduled;
  const { services = [], derivedSystems = [] } = installation;
  const conductor = { material: installation.materials.electrodeConductors };
  const isTap = drawnPart === "tap";
  const from = idAt(start);
  const place = isTap ? subject : from;
  const service = services.find((one) => {
    const { boxes = [], buses = [], disconnects, commonElectrodeConductor: common } = one;
    return (
      [one, ...boxes, ...buses, ...disconnects].some(({ id: own }) => own === place) || common?.id === place
    );
  });
  const tapped = services.find((one) => one.commonElectrodeConductor?.id === place);
  const onCommon = (own: readonly DrawnElectrode[], common: string | undefined): readonly Electrode[] => {
    const found = own.filter((one) => one.from === common).flatMap((one) => served(installation, one.id));
    return found.length > 0 ? found : [{ kind: "other" }];
  };
  if (service !== undefined) {
    const own = electrodesIn(installation, service);
    const common = service.commonElectrodeConductor?.id;
    const isNamed = own.some((one) => one.id === subject);
    const part = isTap ? "tap" : tapped ? "common" : "only";
    return size(groundingElectrodeConductor, {
      code,
      system: "service",
      supply,
      conductor,
      electrodes: isNamed && !isTap ? served(installation, subject) : onCommon(own, common),
      part,
      ...(part === "common" && isFromDrop(service, code) && { fromDrop: true }),
      ...(service.grounding === "ungrounded" && !isTap && isNamed && { ungrounded: true }),
      ...(service.grounding === "impedance" && !isTap && isNamed && { impedance: true }),
    });
  }
  const systems = derivedSystems.filter((one) => one.commonElectrodeConductor !== undefined);
  const all = systems.flatMap((system) =>
    electrodesIn(installation, system)
      .filter((one) => one.from === system.commonElectrodeConductor?.id)
      .flatMap((one) => served(installation, one.id)),
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
    // That of one system alone goes by conductors, which it then names.
    if (scheduled.by.length > 0)
      return size(groundingElectrodeConductor, {
        code,
        system: "separately-derived",
        supply,
        conductor,
        electrodes,
      });
    return size(groundingElectrodeConductor, {
      code,
      system: "separately-derived",
      part: "common",
      conductor,
      electrodes,
    });
  }
  const list = listOf(installation, scheduled);
  if (list === undefined) return null;
  const system = kindOf(installation, list.id);
  const drawn = [...services, ...derivedSystems].find(({ id }) => id === list.id);
  return size(groundingElectrodeConductor, {
    code,
    system,
    supply,
    conductor,
    electrodes: served(installation, subject),
    ...(drawn?.grounding === "ungrounded" && { ungrounded: true }),
    ...(drawn?.grounding === "impedance" && { impedance: true }),
  });
}

/** Whether every enclosure with a tap hangs on the drop or lateral itself. */
function isFromDrop({ buses = [], disconnects, runs, utility }: Service, { year }: Code): boolean {
  const tapped = [
    ...buses,
    ...disconnects.filter(
      ({ designation }) =>
        designation === "service-disconnect" || (designation === "supply-side-source" && year >= "2020"),
    ),
  ];
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
  scheduled: ScheduledConductor,
  supply: Supply,
): SizingResult | null {
  const conductor = { material: installation.materials.bondingJumpers };
  const { subject } = scheduled;
  const pipe = installation.piping?.find(
    (one) =>
      one.id === subject || ("removable" in one && one.removable?.some(({ id }) => id === subject) === true),
  );
  if (pipe === undefined || pipe.kind === "other") return null;
  if (pipe.kind === "water-of-occupancy") {
    return size(waterPipingBondingJumper, {
      code,
      system: "occupancy",
      deviceAmperes: pipe.deviceAmperes,
      conductor,
    });
  }
  // What goes around a fitting of a pipe of several systems is as large as the largest jumper of the pipe.
  if (subject !== pipe.id && Array.isArray(pipe.of) && pipe.of.length > 1) return null;
  const owner = ownerOf(scheduled, pipe.of);
  const system = kindOf(installation, owner);
  if (system !== "building") return size(waterPipingBondingJumper, { code, system, supply, conductor });
  const building = installation.buildings?.find(({ id }) => id === owner);
  const device = installation.circuits?.find(({ id }) => id === building?.circuit)?.device;
  const source = installation.derivedSystems?.find(({ disconnects }) =>
    disconnects.some(({ id }) => id === building?.disconnect),
  )?.source;
  const deviceAmperes = device === undefined ? source?.deviceAmperes : ratingOf(device);
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
  return "deviceAmperes" in device.motor ? device.motor.deviceAmperes : device.motor.dualElementFuseAmperes;
}

/** Whose jumper it is: of several systems that of the one in its identity. */
function ownerOf({ place }: ScheduledConductor, of: string | readonly string[]): string {
  return place ?? (typeof of === "string" ? of : (of[0] ?? ""));
}

function kindOf(installation: Installation, owner: string): "service" | "separately-derived" | "building" {
  if (installation.services?.some(({ id }) => id === owner)) return "service";
  return installation.derivedSystems?.some(({ id }) => id === owner) ? "separately-derived" : "building";
}
