import { removableEquipment, waterPipeContinuity } from "../edition/tables/sections.generated.js";
import { electrodeBondingJumper } from "../roles/electrode-bonding-jumper/index.js";
import { servingOfBuilding } from "./building-supply.js";
import type { ConductorEnd } from "./conductor-identity.js";
import { type DerivedInCode, wholeServing } from "./derived-system.js";
import { type DrawnElectrode, electrodesOf } from "./electrodes-of.js";
import { inMaterialsOf, type WithMaterials } from "./materials-of.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { isOnCommon } from "./schedule-electrodes.js";
import { scheduled } from "./scheduled.js";
import { servingsOfService } from "./service.js";
import { largestServed, type ServedResult, type Serving } from "./serving.js";

/** A meter or fitting in a water pipe that is likely to be taken out. */
export type RemovableFitting = NonNullable<DrawnElectrode["removable"]>[number];

/** The bonding jumpers around what is likely to be taken out of water pipes that are electrodes, each of the size of a jumper to that electrode. */
export function removablePart(at: InstallationInCode): ScheduledPart {
  const { installation } = at;
  const { services = [], derivedSystems = [], buildings = [] } = installation;
  const reached: readonly Reached[] = [
    ...services.flatMap((service) =>
      electrodesOf(installation, service).map((electrode) => ({
        electrode,
        servings: () => servingsOfService({ ...at, service }),
        own: service,
      })),
    ),
    ...derivedSystems.flatMap((system) =>
      electrodesOf(installation, system).map((electrode) => ({
        electrode,
        servings: () => servingsOfDerived({ ...at, system }, electrode),
        own: system,
      })),
    ),
    ...buildings.flatMap((building) => {
      // What sizes no conductor to the electrode of a building sizes no jumper around its fittings.
      const serving = building.onSingleBranchCircuit ? undefined : servingOfBuilding(at, building);
      if (serving === undefined) return [];
      return electrodesOf(installation, building).map((electrode) => ({
        electrode,
        servings: () => [serving],
        own: building,
      }));
    }),
  ];
  const parts = reached.flatMap(({ electrode, own }) =>
    (electrode.removable ?? []).map((fitting) => {
      const serving = reached.filter(({ electrode: { id } }) => id === electrode.id);
      const there = inMaterialsOf(at, own, electrode);
      return jumperAroundElectrode(
        there,
        electrode.id,
        fitting,
        serving.flatMap(({ servings }) => servings()),
      );
    }),
  );
  return { conductors: parts, cautions: parts.map(({ subject }) => removableCaution(at, subject)) };
}

/** What a jumper around something removable has to be besides large enough. */
export function removableCaution({ code: { year } }: InstallationInCode, fitting: string): PlacedCaution {
  const section = `${waterPipeContinuity[year].section}, ${removableEquipment[year].section}`;
  return { code: "jumper-around-removable", section, at: fitting };
}

/** The jumper around a water pipe's fitting where the pipe is the electrode. */
export function jumperAroundElectrode(
  { installation, code }: InstallationInCode,
  pipe: string,
  fitting: RemovableFitting,
  servings: readonly Serving[],
): ScheduledConductor {
  const conductor = { material: installation.materials.electrodeConductors };
  const electrodes = [{ kind: "metal-water-pipe" }] as const;
  const { by, result } = largestServed(servings, (supply) =>
    electrodeBondingJumper.decide({ code, supply, conductor, electrodes }),
  );
  return scheduled({ subject: fitting.id }, ...sidesOf(pipe, fitting.id), result, {
    by,
    placement: waterPipeContinuity[code.year],
  });
}

/** The jumper around a water pipe's fitting where the pipe is bonded: of the size of the jumper that bonds it. */
export function jumpersAroundBonded(
  pipe: string,
  fittings: readonly RemovableFitting[],
  { by, result }: ServedResult,
): readonly ScheduledConductor[] {
  return fittings.map(({ id }) => scheduled({ subject: id }, ...sidesOf(pipe, id), result, { by }));
}

/** The pipe on both sides of a fitting, between which the jumper goes. */
function sidesOf(pipe: string, fitting: string): readonly [ConductorEnd, ConductorEnd] {
  const side = { kind: "pipe-side", of: pipe, fitting } as const;
  return [
    { ...side, side: "one" },
    { ...side, side: "other" },
  ];
}

/** An electrode as one system or building reaches it, with the ungrounded conductors that it then serves. */
interface Reached {
  readonly electrode: DrawnElectrode;
  readonly servings: () => readonly Serving[];
  readonly own: WithMaterials;
}

/** An electrode on a common conductor serves all systems that tap it. */
function servingsOfDerived(at: DerivedInCode, electrode: DrawnElectrode): readonly Serving[] {
  const { commonElectrodeConductor: common } = at.system;
  const electrodes = electrodesOf(at.installation, at.system);
  if (!isOnCommon(electrode, electrodes, common?.id)) return [wholeServing(at)];
  return (at.installation.derivedSystems ?? [])
    .filter((one) => one.commonElectrodeConductor?.id === common?.id)
    .map((system) => wholeServing({ ...at, system }));
}
