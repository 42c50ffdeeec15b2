import { intersystemBondingConductor } from "../roles/intersystem-bonding-conductor/index.js";
import { otherPipingBondingJumper } from "../roles/other-piping-bonding-jumper/index.js";
import { structuralMetalBondingJumper } from "../roles/structural-metal-bonding-jumper/index.js";
import { waterPipingBondingJumper } from "../roles/water-piping-bonding-jumper/index.js";
import { ratingOf } from "../rules/protected-circuit.js";
import { wholeServing } from "./derived-system.js";
import type { Installation } from "./document.js";
import type { InstallationInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { servingsOfService } from "./service.js";
import { largestServed, type Serving } from "./serving.js";

type DrawnPiping = NonNullable<Installation["piping"]>[number];

/** Jumpers of piping and structural metal, and conductors to intersystem terminations. */
export function metalPart(at: InstallationInCode): ScheduledPart {
  const { installation } = at;
  const owners = new Map<string, Owner>();
  const ownerOf = (id: string): Owner => {
    const owner = owners.get(id) ?? findOwner(at, id);
    owners.set(id, owner);
    return owner;
  };
  return {
    conductors: [
      ...(installation.piping ?? []).map((one) => pipingJumper(at, one, ownerOf)),
      ...(installation.structuralMetal ?? []).map((one) => structuralJumper(at, one, ownerOf)),
      ...intersystemConductors(at),
    ],
  };
}

/** Whose metal it is, with the conductors that size the jumper. */
type Owner =
  | { readonly system: "service" | "separately-derived"; readonly servings: readonly Serving[] }
  | { readonly system: "building"; readonly servings: readonly [Serving]; readonly deviceAmperes: number };

type OwnerOf = (id: string) => Owner;

function findOwner({ installation, code }: InstallationInCode, id: string): Owner {
  const service = installation.services?.find((one) => one.id === id);
  if (service !== undefined) {
    return { system: "service", servings: servingsOfService({ installation, code, service }) };
  }
  const system = installation.derivedSystems?.find((one) => one.id === id);
  if (system !== undefined) {
    return { system: "separately-derived", servings: [wholeServing({ installation, code, system })] };
  }
  const building = installation.buildings?.find((one) => one.id === id);
  const circuit = installation.circuits?.find((one) => one.id === building?.circuit);
  if (circuit?.conductors === undefined)
    throw new TypeError("an installation is read before it is built from");
  const serving = { by: [circuit.id], supply: circuit.conductors };
  return { system: "building", servings: [serving], deviceAmperes: ratingOf(circuit.device) };
}

function pipingJumper(at: InstallationInCode, piping: DrawnPiping, ownerOf: OwnerOf): ScheduledConductor {
  const { installation, code } = at;
  const { id } = piping;
  const conductor = { material: installation.materials.bondingJumpers };
  if (piping.kind === "other") {
    const result = otherPipingBondingJumper.decide({ code, deviceAmperes: piping.deviceAmperes, conductor });
    return scheduled({ subject: id }, id, { kind: "equipment-grounding-conductors" }, result);
  }
  if (piping.kind === "water-of-occupancy") {
    const { deviceAmperes } = piping;
    const result = waterPipingBondingJumper.decide({ code, system: "occupancy", deviceAmperes, conductor });
    return scheduled({ subject: id }, id, { kind: "panel-of-occupancy" }, result);
  }
  const owner = ownerOf(piping.of);
  const isElectrode = owner.system === "separately-derived" && piping.isElectrode === true;
  const { by, result } = largestServed(owner.servings, (supply) =>
    owner.system === "building"
      ? waterPipingBondingJumper.decide({
          code,
          conductor,
          system: owner.system,
          supply,
          deviceAmperes: owner.deviceAmperes,
        })
      : waterPipingBondingJumper.decide({
          code,
          conductor,
          system: owner.system,
          supply,
          ...(isElectrode && { isElectrode }),
        }),
  );
  return scheduled({ subject: id }, id, piping.of, result, {
    by: result.steps.some(({ kind }) => kind === "sum") ? by : [],
  });
}

function structuralJumper(
  { installation, code }: InstallationInCode,
  { id, of, isElectrode = false }: NonNullable<Installation["structuralMetal"]>[number],
  ownerOf: OwnerOf,
): ScheduledConductor {
  const owner = ownerOf(of);
  const { by, result } = largestServed(owner.servings, (supply) =>
    structuralMetalBondingJumper.decide({
      code,
      system: owner.system,
      supply,
      conductor: { material: installation.materials.bondingJumpers },
      ...(isElectrode && { isElectrode }),
    }),
  );
  return scheduled({ subject: id }, id, of, result, { by });
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
