import type { Material } from "../conductor/index.js";
import type { Role } from "../edition/index.js";
import { InputError } from "../input/input-error.js";
import { keyOf } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import { type MaterialKey, withMaterial } from "./materials-of.js";
import { readInstallation } from "./read-installation.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";
import { scheduleOfRead } from "./schedule-of.js";

/** What is required of a conductor if it is of a material, with the installation that has it of this material. */
export interface Requirement {
  readonly installation: Installation;
  readonly conductor: ScheduledConductor;
}

/** Which of the installation's materials a role takes; none where the code names the material. */
const materialOf: Readonly<Record<Role, MaterialKey | null>> = {
  "main-bonding-jumper": "bondingJumpers",
  "system-bonding-jumper": "bondingJumpers",
  "supply-side-bonding-jumper": "bondingJumpers",
  "grounded-conductor": "groundedConductors",
  "impedance-grounding-conductor": "groundedConductors",
  "impedance-bonding-jumper": "bondingJumpers",
  "equipment-grounding-conductor": "equipmentGrounding",
  "equipment-bonding-jumper": "bondingJumpers",
  "water-piping-bonding-jumper": "bondingJumpers",
  "other-piping-bonding-jumper": "bondingJumpers",
  "structural-metal-bonding-jumper": "bondingJumpers",
  "grounding-electrode-conductor": "electrodeConductors",
  "electrode-bonding-jumper": "electrodeConductors",
  "electrode-raceway-bonding-jumper": "bondingJumpers",
  "intersystem-bonding-conductor": null,
};

/**
 * What is required of a conductor of the schedule if it is of another material than drawn: the installation is scheduled again with that
 * material, once for each, since the tables, their notes and the limits for electrodes treat every material in their own way. `null` where
 * this material cannot be.
 */
export function requirementsIn(
  installation: Installation,
  schedule: Schedule,
): (conductor: ScheduledConductor, material: Material) => Requirement | null {
  const known = new Map<string, Variant | null>();
  return (conductor, material) => {
    if (conductor.result.material === material) return { installation, conductor };
    const key = materialOf[conductor.role];
    if (key === null) return null;
    const name = `${key} ${material}`;
    const variant = known.has(name) ? known.get(name) : variantOf(installation, schedule, key, material);
    known.set(name, variant ?? null);
    const found = variant?.conductors.get(keyOf(conductor));
    return variant && found ? { installation: variant.installation, conductor: found } : null;
  };
}

interface Variant {
  readonly installation: Installation;
  readonly conductors: ReadonlyMap<string, ScheduledConductor>;
}

function variantOf(
  installation: Installation,
  { code }: Schedule,
  key: MaterialKey,
  material: Material,
): Variant | null {
  const changed = withMaterial({ ...installation, code }, key, material);
  try {
    const read = readInstallation(changed);
    const { conductors } = scheduleOfRead(read);
    return { installation: read, conductors: new Map(conductors.map((one) => [keyOf(one), one])) };
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}
