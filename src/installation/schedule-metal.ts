import { sizeIntersystemBondingConductor } from "../rules/intersystem-bonding-conductor.js";
import { sizeOtherPipingBondingJumper } from "../rules/other-piping-bonding-jumper.js";
import { ratingOf } from "../rules/protected-circuit.js";
import type { SizingResult } from "../rules/result.js";
import { sizeStructuralMetalBondingJumper } from "../rules/structural-metal-bonding-jumper.js";
import { sizeWaterPipingBondingJumper } from "../rules/water-piping-bonding-jumper.js";
import type { Supply } from "../supply/index.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { supplyFrom } from "./supplies.js";

type DrawnPiping = NonNullable<Drawing["piping"]>[number];

/** Jumpers of piping and structural metal, and conductors to intersystem terminations. */
export function metalPart(at: DrawingInCode): ScheduledPart {
  const { drawing } = at;
  return {
    conductors: [
      ...(drawing.piping ?? []).map((one) => pipingJumper(at, one)),
      ...(drawing.structuralMetal ?? []).map((one) => structuralJumper(at, one)),
      ...intersystemConductors(at),
    ],
  };
}

/** Whose metal it is, with the conductors that size the jumper. */
type Owner =
  | { readonly of: "service" | "separately-derived"; readonly supply: Supply }
  | { readonly of: "building"; readonly supply: Supply; readonly deviceAmperes: number };

function ownerOf({ drawing, code: { year } }: DrawingInCode, id: string): Owner {
  const service = drawing.services?.find((one) => one.id === id);
  if (service !== undefined) {
    return { of: "service", supply: supplyFrom(service.runs, service.utility.id, year) };
  }
  const system = drawing.derivedSystems?.find((one) => one.id === id);
  if (system !== undefined) {
    return { of: "separately-derived", supply: supplyFrom(system.runs, system.source.id, year) };
  }
  const building = drawing.buildings?.find((one) => one.id === id);
  const circuit = drawing.circuits?.find((one) => one.id === building?.circuit);
  if (circuit?.conductors === undefined) throw new TypeError("a drawing is read before it is built from");
  return { of: "building", supply: circuit.conductors, deviceAmperes: ratingOf(circuit.device) };
}

function pipingJumper(at: DrawingInCode, piping: DrawnPiping): ScheduledConductor {
  const { drawing, code } = at;
  const jumper = { material: drawing.materials.bondingJumpers };
  if (piping.kind === "other") {
    const result = sizeOtherPipingBondingJumper({ code, deviceAmperes: piping.deviceAmperes, jumper });
    return scheduled(`other-piping-bonding-jumper ${piping.id}`, piping.id, "equipment grounding", result);
  }
  if (piping.kind === "water-of-occupancy") {
    const { deviceAmperes } = piping;
    const result = sizeWaterPipingBondingJumper({ code, of: "occupancy", deviceAmperes, jumper });
    return scheduled(`water-piping-bonding-jumper ${piping.id}`, piping.id, "panel of the occupancy", result);
  }
  const owner = ownerOf(at, piping.of);
  const isElectrode = owner.of === "separately-derived" && piping.isElectrode === true;
  const result: SizingResult =
    owner.of === "building"
      ? sizeWaterPipingBondingJumper({ code, jumper, ...owner })
      : sizeWaterPipingBondingJumper({ code, jumper, ...owner, ...(isElectrode && { isElectrode }) });
  return scheduled(`water-piping-bonding-jumper ${piping.id}`, piping.id, piping.of, result);
}

function structuralJumper(
  at: DrawingInCode,
  { id, of, isElectrode = false }: NonNullable<Drawing["structuralMetal"]>[number],
): ScheduledConductor {
  const { drawing, code } = at;
  const owner = ownerOf(at, of);
  const result = sizeStructuralMetalBondingJumper({
    code,
    of: owner.of,
    supply: owner.supply,
    jumper: { material: drawing.materials.bondingJumpers },
    ...(isElectrode && { isElectrode }),
  });
  return scheduled(`structural-metal-bonding-jumper ${id}`, id, of, result);
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
