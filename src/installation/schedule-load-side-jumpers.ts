import { equipmentBondingJumperFacts } from "../edition/tables/roles.generated.js";
import { flexibleConduitAsGrounding, jumperOutsideRaceway } from "../edition/tables/sections.generated.js";
import { equipmentBondingJumper } from "../roles/equipment-bonding-jumper/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import { ratingOf } from "../rules/protected-circuit.js";
import type { DrawnCircuit } from "./building-supply.js";
import type { Installation } from "./document.js";
import { conduitServes, mostFeetOutside } from "./flexible-conduit.js";
import { inMaterialsOf } from "./materials-of.js";
import type { InstallationInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";

type DrawnJumper = NonNullable<Installation["loadSideJumpers"]>[number];

/** The equipment bonding jumpers on the load side that are drawn, by the largest device of their circuits (250.102(D)). */
export function loadSideJumperPart(at: InstallationInCode): ScheduledPart {
  const { installation, code } = at;
  const jumpers = installation.loadSideJumpers ?? [];
  const circuits = new Map((installation.circuits ?? []).map((one) => [one.id, one]));
  const conductors = jumpers.map((one) => {
    const served = one.circuits.flatMap((id) => circuits.get(id) ?? []);
    return jumperOf(inMaterialsOf(at, one), one, served);
  });
  return {
    conductors,
    violations: jumpers.flatMap(({ id, placed, lengthFeet = 0, atOutdoorPole }, i) =>
      placed === "outside" &&
      lengthFeet > mostFeetOutside &&
      atOutdoorPole !== true &&
      conductors[i]?.quantity !== 0
        ? [
            {
              code: "jumper-outside-too-long",
              ...jumperOutsideRaceway[code.year],
              at: [id],
              remedies: [{ code: "run-inside-or-shorten" }],
            },
          ]
        : [],
    ),
  };
}

function jumperOf(
  { installation, code }: InstallationInCode,
  jumper: DrawnJumper,
  circuits: readonly DrawnCircuit[],
): ScheduledConductor {
  const { id, from, to, flexibleConduit } = jumper;
  const material = installation.materials.bondingJumpers;
  const largest = Math.max(...circuits.map(({ device }) => ratingOf(device)));
  const serves =
    flexibleConduit !== undefined &&
    !isAlwaysWire(code, "equipment-bonding-jumper") &&
    conduitServes(flexibleConduit, largest);
  const result = serves
    ? notRequired(
        equipmentBondingJumperFacts,
        code,
        material,
        "flexible-conduit-serves",
        flexibleConduitAsGrounding[code.year],
      )
    : equipmentBondingJumper.decide({
        code,
        circuits: circuits.map(({ device, conductors, increasedFrom }) => ({
          device,
          ...(conductors && { conductors }),
          ...(increasedFrom && { increasedFrom }),
        })),
        conductor: { material },
      });
  return scheduled({ subject: id }, from, to, result, { run: jumper });
}
