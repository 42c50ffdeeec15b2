import { sizeIntersystemBondingConductor } from "../rules/intersystem-bonding-conductor.js";
import { sizeOtherPipingBondingJumper } from "../rules/other-piping-bonding-jumper.js";
import { ratingOf } from "../rules/protected-circuit.js";
import { sizeStructuralMetalBondingJumper } from "../rules/structural-metal-bonding-jumper.js";
import { sizeWaterPipingBondingJumper } from "../rules/water-piping-bonding-jumper.js";
import { wholeServing } from "./derived-system.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { servingsOfService } from "./service.js";
import { largestServed, type Serving } from "./serving.js";

type DrawnPiping = NonNullable<Drawing["piping"]>[number];

/** Jumpers of piping and structural metal, and conductors to intersystem terminations. */
export function metalPart(at: DrawingInCode): ScheduledPart {
  const { drawing } = at;
  const owners = new Map<string, Owner>();
  const ownerOf = (id: string): Owner => {
    const owner = owners.get(id) ?? findOwner(at, id);
    owners.set(id, owner);
    return owner;
  };
  return {
    conductors: [
      ...(drawing.piping ?? []).map((one) => pipingJumper(at, one, ownerOf)),
      ...(drawing.structuralMetal ?? []).map((one) => structuralJumper(at, one, ownerOf)),
      ...intersystemConductors(at),
    ],
  };
}

/** Whose metal it is, with the conductors that size the jumper. */
type Owner =
  | { readonly of: "service" | "separately-derived"; readonly servings: readonly Serving[] }
  | { readonly of: "building"; readonly servings: readonly [Serving]; readonly deviceAmperes: number };

type OwnerOf = (id: string) => Owner;

function findOwner({ drawing, code }: DrawingInCode, id: string): Owner {
  const service = drawing.services?.find((one) => one.id === id);
  if (service !== undefined) {
    return { of: "service", servings: servingsOfService({ drawing, code, service }) };
  }
  const system = drawing.derivedSystems?.find((one) => one.id === id);
  if (system !== undefined) {
    return { of: "separately-derived", servings: [wholeServing({ drawing, code, system })] };
  }
  const building = drawing.buildings?.find((one) => one.id === id);
  const circuit = drawing.circuits?.find((one) => one.id === building?.circuit);
  if (circuit?.conductors === undefined) throw new TypeError("a drawing is read before it is built from");
  const serving = { by: [circuit.id], supply: circuit.conductors };
  return { of: "building", servings: [serving], deviceAmperes: ratingOf(circuit.device) };
}

function pipingJumper(at: DrawingInCode, piping: DrawnPiping, ownerOf: OwnerOf): ScheduledConductor {
  const { drawing, code } = at;
  const { id } = piping;
  const jumper = { material: drawing.materials.bondingJumpers };
  if (piping.kind === "other") {
    const result = sizeOtherPipingBondingJumper({ code, deviceAmperes: piping.deviceAmperes, jumper });
    return scheduled(`other-piping-bonding-jumper ${id}`, id, "equipment grounding", result);
  }
  if (piping.kind === "water-of-occupancy") {
    const { deviceAmperes } = piping;
    const result = sizeWaterPipingBondingJumper({ code, of: "occupancy", deviceAmperes, jumper });
    return scheduled(`water-piping-bonding-jumper ${id}`, id, "panel of the occupancy", result);
  }
  const owner = ownerOf(piping.of);
  const isElectrode = owner.of === "separately-derived" && piping.isElectrode === true;
  const { by, result } = largestServed(owner.servings, (supply) =>
    owner.of === "building"
      ? sizeWaterPipingBondingJumper({
          code,
          jumper,
          of: owner.of,
          supply,
          deviceAmperes: owner.deviceAmperes,
        })
      : sizeWaterPipingBondingJumper({
          code,
          jumper,
          of: owner.of,
          supply,
          ...(isElectrode && { isElectrode }),
        }),
  );
  return scheduled(`water-piping-bonding-jumper ${id}`, id, piping.of, result, {
    by: result.steps.some(({ kind }) => kind === "sum") ? by : [],
  });
}

function structuralJumper(
  { drawing, code }: DrawingInCode,
  { id, of, isElectrode = false }: NonNullable<Drawing["structuralMetal"]>[number],
  ownerOf: OwnerOf,
): ScheduledConductor {
  const owner = ownerOf(of);
  const { by, result } = largestServed(owner.servings, (supply) =>
    sizeStructuralMetalBondingJumper({
      code,
      of: owner.of,
      supply,
      jumper: { material: drawing.materials.bondingJumpers },
      ...(isElectrode && { isElectrode }),
    }),
  );
  return scheduled(`structural-metal-bonding-jumper ${id}`, id, of, result, { by });
}

function intersystemConductors({ drawing, code }: DrawingInCode): readonly ScheduledConductor[] {
  return (drawing.intersystem ?? []).map(
    ({ id, at, termination, electrodeConductorOnBusbar, communicationsUnlikely }) => {
      const result = sizeIntersystemBondingConductor({
        code,
        termination,
        ...(electrodeConductorOnBusbar && { electrodeConductorOnBusbar }),
        ...(communicationsUnlikely === undefined ? {} : { communicationsUnlikely }),
      });
      return scheduled(`intersystem-bonding-conductor ${id}`, id, at, result);
    },
  );
}
