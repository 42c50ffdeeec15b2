import {
  structuralMetalBondingJumperFacts,
  waterPipingBondingJumperFacts,
} from "../edition/tables/roles.generated.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import { intersystemBondingConductor } from "../roles/intersystem-bonding-conductor/index.js";
import { otherPipingBondingJumper } from "../roles/other-piping-bonding-jumper/index.js";
import { structuralMetalBondingJumper } from "../roles/structural-metal-bonding-jumper/index.js";
import { waterPipingBondingJumper } from "../roles/water-piping-bonding-jumper/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import type { SizingResult } from "../rules/result.js";
import {
  bondedOtherwise,
  continuesElectrode,
  isElectrodeOf,
  type MetalPart,
  mayContinueElectrode,
  servesAsCommon,
} from "./bonded-otherwise.js";
import type { Installation } from "./document.js";
import { inMaterialsOf } from "./materials-of.js";
import { type MetalOwner, metalOwner, ownerIds } from "./metal-owners.js";
import type { InstallationInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import {
  jumperAroundElectrode,
  jumpersAroundBonded,
  type RemovableFitting,
  removableCaution,
} from "./schedule-removable.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type ServedResult } from "./serving.js";

type DrawnPiping = NonNullable<Installation["piping"]>[number];
type WaterPiping = Extract<DrawnPiping, { readonly kind: "water" }>;

/** Jumpers of piping and structural metal, and conductors to intersystem terminations. */
export function metalPart(at: InstallationInCode): ScheduledPart {
  const { installation } = at;
  const owners = new Map<string, MetalOwner>();
  const ownerOf = (id: string): MetalOwner => {
    const owner = owners.get(id) ?? metalOwner(at, id);
    owners.set(id, owner);
    return owner;
  };
  return {
    conductors: [
      ...(installation.piping ?? []).flatMap((one) =>
        one.kind === "water"
          ? pipingJumpers(inMaterialsOf(at, one), one, ownerOf)
          : [jumperByDevice(inMaterialsOf(at, one), one)],
      ),
      ...(installation.structuralMetal ?? []).flatMap((one) =>
        jumpersOf(inMaterialsOf(at, one), one, ownerOf, structuralJumper),
      ),
      ...intersystemConductors(at),
    ],
    cautions: (installation.piping ?? []).flatMap((one) =>
      removableOf(one).map(({ id }) => removableCaution(at, id)),
    ),
  };
}

function removableOf(piping: DrawnPiping): readonly RemovableFitting[] {
  return piping.kind === "water" ? (piping.removable ?? []) : [];
}

/**
 * The jumpers that bond water piping, and those around what is likely to be taken out of it, as large as the largest of them; and as the conductor of
 * a system whose electrode or electrode conductor the piping is, which needs no jumper of its own.
 */
function pipingJumpers(
  at: InstallationInCode,
  piping: WaterPiping,
  ownerOf: (id: string) => MetalOwner,
): readonly ScheduledConductor[] {
  const jumpers = jumpersOf(at, piping, ownerOf, waterJumper);
  const fittings = removableOf(piping);
  const bonding = jumpers.filter(({ result }) => result.outcome.kind !== "not-required");
  const [first, ...others] = bonding;
  if (first === undefined) {
    const servings = ownerIds(piping).flatMap((id) => ownerOf(id).servings);
    return [...jumpers, ...fittings.map((one) => jumperAroundElectrode(at, piping.id, one, servings))];
  }
  const largest = others.reduce(larger, first);
  const servings = ownerIds(piping).flatMap((id, i) =>
    servesInstead(jumpers[i]) ? ownerOf(id).servings : [],
  );
  if (servings.length === 0) return [...jumpers, ...jumpersAroundBonded(piping.id, fittings, largest)];
  const around = fittings.flatMap((fitting) => {
    const asElectrode = jumperAroundElectrode(inBondingMaterial(at), piping.id, fitting, servings);
    return asElectrode.result.requiredArea > largest.result.requiredArea
      ? [jumperAroundElectrode(at, piping.id, fitting, servings)]
      : jumpersAroundBonded(piping.id, [fitting], largest);
  });
  return [...jumpers, ...around];
}

function larger(one: ScheduledConductor, other: ScheduledConductor): ScheduledConductor {
  return other.result.requiredArea > one.result.requiredArea ? other : one;
}

/** With electrode conductors of the material of bonding jumpers, so that the areas of both can be compared. */
function inBondingMaterial(at: InstallationInCode): InstallationInCode {
  const { materials } = at.installation;
  const installation = {
    ...at.installation,
    materials: { ...materials, electrodeConductors: materials.bondingJumpers },
  };
  return { ...at, installation };
}

function servesInstead(jumper: ScheduledConductor | undefined): boolean {
  const outcome = jumper?.result.outcome;
  return (
    outcome?.kind === "not-required" &&
    (outcome.why === "part-is-the-electrode" || outcome.why === "part-serves-as-electrode-conductor")
  );
}

type Sizing = (at: InstallationInCode, owner: MetalOwner, isElectrode: boolean) => ServedResult;

/** The jumper of a metal part to each system that it belongs to, or why that system needs none. */
function jumpersOf(
  at: InstallationInCode,
  part: MetalPart,
  ownerOf: (id: string) => MetalOwner,
  jumper: Sizing,
): readonly ScheduledConductor[] {
  const { installation, code } = at;
  const ids = ownerIds(part);
  return ids.map((id) => {
    const owner = ownerOf(id);
    const who = { subject: part.id, ...(ids.length > 1 && { place: id }) };
    const isContinued = continuesElectrode(installation, part, id);
    const sized = jumper(at, owner, isContinued || isElectrodeOf(installation, part, id));
    const { facts, material, citation } = factsOf(sized.result);
    if (isContinued && part.bondedTo !== undefined)
      return scheduled(who, part.id, part.bondedTo, sized.result, { by: sized.by });
    if (isAlwaysWire(code, facts.role) || sized.result.outcome.kind === "not-required")
      return scheduled(who, part.id, owner.landing, sized.result, { by: sized.by });
    if (servesAsCommon(installation, part.id, id)) {
      const why = "part-serves-as-electrode-conductor";
      return scheduled(who, part.id, owner.landing, notRequired(facts, code, material, why, citation));
    }
    const exception = bondedOtherwise(installation, part, id);
    if (exception === null || part.bondedTo === undefined) {
      const result = withHint(installation, part, id, sized.result);
      return scheduled(who, part.id, owner.landing, result, { by: sized.by });
    }
    const why = "bonded-by-another-part";
    const result = notRequired(facts, code, material, why, exception[code.year]);
    return scheduled(who, part.id, part.bondedTo, result);
  });
}

/** A jumper of piping beside a water pipe that is an electrode under another id; nobody knows whether they are one pipe. */
function withHint(
  installation: Installation,
  part: MetalPart,
  owner: string,
  result: SizingResult,
): SizingResult {
  if (!mayContinueElectrode(installation, part, owner)) return result;
  const caution = { code: "piping-may-continue-electrode", section: result.citation.section } as const;
  return { ...result, cautions: [...result.cautions, caution] };
}

function factsOf({ role, material, citation }: SizingResult) {
  const facts =
    role === "water-piping-bonding-jumper"
      ? waterPipingBondingJumperFacts
      : structuralMetalBondingJumperFacts;
  return { facts, material, citation };
}

function jumperByDevice(
  { installation, code }: InstallationInCode,
  { id, kind, deviceAmperes }: Exclude<DrawnPiping, { readonly kind: "water" }>,
): ScheduledConductor {
  const conductor = { material: installation.materials.bondingJumpers };
  if (kind === "other") {
    const result = otherPipingBondingJumper.decide({ code, deviceAmperes, conductor });
    return scheduled({ subject: id }, id, { kind: "equipment-grounding-conductors" }, result);
  }
  const result = waterPipingBondingJumper.decide({ code, system: "occupancy", deviceAmperes, conductor });
  return scheduled({ subject: id }, id, { kind: "panel-of-occupancy" }, result);
}

/**
 * A pipe that is the electrode of a derived system needs no jumper. At a service or building its electrode conductor bonds it, as far as it
 * is as large as the jumper would have to be (250.104(A)).
 */
function waterJumper(at: InstallationInCode, owner: MetalOwner, isElectrode: boolean): ServedResult {
  const { installation, code } = at;
  const conductor = { material: installation.materials.bondingJumpers };
  const { by, result } = largestServed(owner.servings, (supply) =>
    owner.system === "building"
      ? waterPipingBondingJumper.decide({
          code,
          conductor,
          system: owner.system,
          supply,
          ...(owner.deviceAmperes === undefined ? {} : { deviceAmperes: owner.deviceAmperes }),
        })
      : waterPipingBondingJumper.decide({
          code,
          conductor,
          system: owner.system,
          supply,
          ...(isElectrode && owner.system === "separately-derived" && { isElectrode }),
        }),
  );
  const sized = { by: result.steps.some(({ kind }) => kind === "sum") ? by : [], result };
  if (!isElectrode || owner.system === "separately-derived" || isAlwaysWire(code, result.role)) return sized;
  const { system } = owner;
  const toPipe = largestServed(owner.servings, (supply) =>
    groundingElectrodeConductor.decide({
      code,
      system,
      supply,
      conductor,
      electrodes: [{ kind: "metal-water-pipe" }],
    }),
  );
  if (toPipe.result.requiredArea >= result.requiredArea) {
    const { facts, material, citation } = factsOf(result);
    return { by: [], result: notRequired(facts, code, material, "part-is-the-electrode", citation) };
  }
  const caution = {
    code: "electrode-conductor-of-sufficient-size",
    section: result.citation.section,
  } as const;
  return { ...sized, result: { ...result, cautions: [...result.cautions, caution] } };
}

function structuralJumper(at: InstallationInCode, owner: MetalOwner, isElectrode: boolean): ServedResult {
  const { installation, code } = at;
  return largestServed(owner.servings, (supply) =>
    structuralMetalBondingJumper.decide({
      code,
      system: owner.system,
      supply,
      conductor: { material: installation.materials.bondingJumpers },
      ...(isElectrode && { isElectrode }),
    }),
  );
}

function intersystemConductors({ installation, code }: InstallationInCode): readonly ScheduledConductor[] {
  return (installation.intersystem ?? []).map(
    ({ id, at, termination, electrodeConductorOnBusbar, communicationsUnlikely }) => {
      const result = intersystemBondingConductor.decide({
        code,
        termination,
        ...(electrodeConductorOnBusbar && { electrodeConductorOnBusbar }),
        ...(communicationsUnlikely === undefined ? {} : { communicationsUnlikely }),
      });
      return scheduled({ subject: id }, id, at, result);
    },
  );
}
