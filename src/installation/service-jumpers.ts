import { type Citation, inferred, weakestEvidence } from "../edition/index.js";
import {
  listedAssembly,
  mainJumperPlace,
  mainJumperSeveralEnclosures,
  meterAndEmergencyDisconnects,
  serviceBoxes,
  supplySideBoxesByGroundedConductor,
  supplySideSourceBonding,
} from "../edition/tables/sections.generated.js";
import { mainBondingJumper } from "../roles/main-bonding-jumper/index.js";
import { supplySideBondingJumper } from "../roles/supply-side-bonding-jumper/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import type { NotRequiredReason } from "../rules/result.js";
import { serviceWithoutMainJumper } from "../systems/main-jumper.js";
import { groundedBar, groundedBus, landing } from "./landing.js";
import { inMaterialsOf } from "./materials-of.js";
import type { ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import {
  type DrawnDisconnect,
  type DrawnService,
  type Enclosure,
  enclosuresOf,
  isAssembly,
  isLikeService,
  type ServiceInCode,
  servingsOfEnclosure,
  servingToPlace,
} from "./service.js";
import { largestServed, servingsAt } from "./serving.js";
import { hasGroundedConductor } from "./supplies.js";
import { inForm, wantedJumper } from "./wanted-jumper.js";

type Bus = NonNullable<DrawnService["buses"]>[number];

/** The main bonding jumpers of a service: one in each enclosure, or one in a listed assembly. */
export function mainJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  const { service } = at;
  const assembly = isAssembly(service) && hasGroundedConductor(service) ? enclosuresOf(at)[0] : undefined;
  const alone = service.disconnects.filter(
    (one) => one.bus === undefined && assembly?.disconnects.includes(one.id) !== true,
  );
  return [
    ...(assembly === undefined ? [] : [mainJumperOfAssembly(at, assembly)]),
    ...alone.map((one) => mainJumperOf(at, one)),
    ...(service.buses ?? []).map((bus) => mainJumperOfBus(at, bus)),
  ];
}

/** The text places the one jumper of an assembly and gives it no size: that all conductors decide is inferred. */
function mainJumperOfAssembly(at: ServiceInCode, assembly: Enclosure): ScheduledConductor {
  const { code } = at;
  const { by, result: sized } = largestServed(servingsOfEnclosure(at, assembly), (supply) =>
    mainBondingJumper.decide({ code, supply, ...wantedJumper(at) }),
  );
  const citation = inferred(sized.citation);
  const result = { ...sized, citation, evidence: weakestEvidence([sized.evidence, citation.evidence]) };
  const bus = { kind: "assembly", of: assembly.id, on: "grounding-bus" } as const;
  const placement = listedAssembly[code.year];
  return scheduled({ subject: assembly.id }, groundedBus(at.service), bus, result, { by, placement });
}

/** The one main bonding jumper of the sections on a bus, by the sets that feed it. */
function mainJumperOfBus(drawn: ServiceInCode, bus: Bus): ScheduledConductor {
  const { id, jumperForm } = bus;
  const at = inMaterialsOf(drawn, bus);
  const { code, service } = at;
  const wanted = inForm(wantedJumper(at), jumperForm);
  const none = serviceWithoutMainJumper(code, service.grounding);
  const { by, supply } = servingToPlace(at, id);
  const result =
    none === null
      ? mainBondingJumper.decide({ code, supply, ...wanted })
      : notRequired(mainBondingJumper.facts, code, wanted.conductor.material, ...none);
  return scheduled({ subject: id }, groundedBar(service, id), landing(id, "grounding-bar"), result, { by });
}

function mainJumperOf(drawn: ServiceInCode, disconnect: DrawnDisconnect): ScheduledConductor {
  const { id } = disconnect;
  const at = inMaterialsOf(drawn, disconnect);
  const { code, service } = at;
  const wanted = inForm(wantedJumper(at), disconnect.jumperForm);
  const needless = noMainJumper(at, disconnect);
  const [from, to] = [groundedBar(service, id), landing(id, "grounding-bar")];
  if (needless !== null) {
    const result = notRequired(mainBondingJumper.facts, code, wanted.conductor.material, ...needless);
    return scheduled({ subject: id }, from, to, result);
  }
  const { by, supply } = servingToPlace(at, id);
  const result = mainBondingJumper.decide({ code, supply, ...wanted });
  const placement = mainJumperPlace[code.year];
  const sizing = enclosuresOf(at).length > 1 ? mainJumperSeveralEnclosures[code.year] : undefined;
  return scheduled({ subject: id }, from, to, result, { by, placement, sizing });
}

/** Why a disconnect has no main bonding jumper; `null` if it has one. */
function noMainJumper(
  at: ServiceInCode,
  disconnect: DrawnDisconnect,
): readonly [NotRequiredReason, Citation] | null {
  const { code, service } = at;
  const none = serviceWithoutMainJumper(code, service.grounding);
  if (none !== null || isLikeService(at, disconnect)) return none;
  return disconnect.designation === "supply-side-source"
    ? ["supply-side-source-before-its-rule", supplySideSourceBonding[code.year]]
    : ["not-service-equipment", meterAndEmergencyDisconnects[code.year]];
}

/** The supply-side bonding jumpers of the boxes ahead of the disconnects. */
export function boxJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  return (at.service.boxes ?? []).map((box) =>
    metalJumper(inMaterialsOf(at, box), box.id, box.bondedBy, box.jumperForm),
  );
}

/** Boxes that no supply conductors run through: what bonds them in place of a supply-side jumper. */
export function boxesWithoutSupply(at: ServiceInCode): readonly ScheduledConductor[] {
  const { code, service } = at;
  const { material } = wantedJumper(at).conductor;
  return (service.boxesWithoutSupply ?? []).map(({ id, beside, bondedBy }) => {
    const why = bondedBy === "metal-raceway" ? "bonded-by-its-raceway" : "bonded-with-its-wiring";
    const citation = serviceBoxes[code.year];
    const result = notRequired(supplySideBondingJumper.facts, code, material, why, citation);
    return scheduled({ subject: id }, beside, id, result);
  });
}

/** The main bonding jumpers that a reviewer might look for in the boxes: they are in the service disconnects behind them. */
export function noMainJumpersInBoxes(at: ServiceInCode): readonly ScheduledConductor[] {
  const { service, code } = at;
  if (!hasGroundedConductor(service)) return [];
  const { material } = wantedJumper(at).conductor;
  const citation = mainJumperPlace[code.year];
  return (service.boxes ?? []).map(({ id }) => {
    const result = notRequired(mainBondingJumper.facts, code, material, "not-service-equipment", citation);
    return scheduled({ subject: id }, landing(id, "grounded-conductor"), landing(id, "enclosure"), result);
  });
}

/** Enclosures that have no main bonding jumper are bonded as boxes are. */
export function disconnectJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  return [
    ...at.service.disconnects
      .filter((one) => !isLikeService(at, one))
      .map((one) => metalJumper(inMaterialsOf(at, one), one.id, one.bondedBy ?? "jumper", one.jumperForm)),
    ...(hasGroundedConductor(at.service) ? [] : enclosureJumpers(at)),
  ];
}

/**
 * Without a grounded conductor the metal of an enclosure is bonded to the electrode conductor (250.80, 250.92): by a jumper, unless the
 * electrode conductor or a tap starts in it.
 */
function enclosureJumpers(at: ServiceInCode): readonly ScheduledConductor[] {
  const { code, service } = at;
  if (service.commonElectrodeConductor !== undefined) return [];
  const starts = new Set((service.electrodes ?? []).map(({ from }) => from));
  return enclosuresOf(at)
    .filter(({ id, disconnects }) => ![id, ...disconnects].some((one) => starts.has(one)))
    .map((enclosure) => {
      const [only, ...others] = enclosure.isBus ? [enclosure.id] : enclosure.disconnects;
      const isAlone = only !== undefined && others.length === 0;
      const own = isAlone
        ? [...service.disconnects, ...(service.buses ?? [])].find(({ id }) => id === only)
        : undefined;
      const { by, result } = largestServed(servingsOfEnclosure(at, enclosure), (supply) =>
        supplySideBondingJumper.decide({ code, supply, ...wantedJumper(inMaterialsOf(at, own)) }),
      );
      const place = isAlone
        ? landing(only, "enclosure")
        : ({ kind: "assembly", of: enclosure.id, on: "grounding-bus" } as const);
      const subject = isAlone ? only : enclosure.id;
      const placement = serviceBoxes[code.year];
      return scheduled({ subject }, { kind: "grounding-electrode-conductor" }, place, result, {
        by,
        placement,
      });
    });
}

function metalJumper(
  at: ServiceInCode,
  id: string,
  bondedBy: NonNullable<DrawnDisconnect["bondedBy"]>,
  form: Bus["jumperForm"],
): ScheduledConductor {
  const { service, code } = at;
  const { by, result } = largestServed(servingsAt(service.runs, id, code.year), (supply) =>
    supplySideBondingJumper.decide({
      code,
      supply,
      ...inForm(wantedJumper(at), form),
      ...(bondedBy === "grounded-conductor" && { instead: bondedBy }),
    }),
  );
  const from = hasGroundedConductor(service)
    ? landing(id, "grounded-conductor")
    : ({ kind: "grounding-electrode-conductor" } as const);
  const placement = serviceBoxes[code.year];
  const citation = supplySideBoxesByGroundedConductor[code.year];
  const mayServe = hasGroundedConductor(service) && !isAlwaysWire(code, "supply-side-bonding-jumper");
  return scheduled({ subject: id }, from, landing(id, "enclosure"), result, {
    by,
    placement,
    ...(mayServe && { insteadPermitted: { by: "grounded-conductor", citation } }),
  });
}
