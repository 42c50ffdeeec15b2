import type { Material } from "../conductor/index.js";
import type { Role } from "../edition/index.js";
import { InputError } from "../input/input-error.js";
import { scheduleOf } from "./build-schedule.js";
import type { Drawing } from "./document.js";
import { readDrawing } from "./read-drawing.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";

/** What is asked of a conductor if it is of a material, with the drawing that has it of this material. */
export interface Requirement {
  readonly drawing: Drawing;
  readonly conductor: ScheduledConductor;
}

/** Which of the drawing's materials a role takes; none where the code names the material. */
const materialOf: Readonly<Record<Role, keyof Drawing["materials"] | null>> = {
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
 * Answers what is asked of a conductor of the schedule if it is of another material than drawn: the drawing is scheduled again with that
 * material, once for each, since the tables, their notes and the limits for electrodes treat every material in their own way. `null` where
 * this material cannot be.
 */
export function requirementsIn(
  drawing: Drawing,
  schedule: Schedule,
): (conductor: ScheduledConductor, material: Material) => Requirement | null {
  const known = new Map<string, Variant | null>();
  return (conductor, material) => {
    if (conductor.result.material === material) return { drawing, conductor };
    const key = materialOf[conductor.role];
    if (key === null) return null;
    const name = `${key} ${material}`;
    const variant = known.has(name) ? known.get(name) : variantOf(drawing, schedule, key, material);
    known.set(name, variant ?? null);
    const found = variant?.conductors.get(conductor.id);
    return variant && found ? { drawing: variant.drawing, conductor: found } : null;
  };
}

interface Variant {
  readonly drawing: Drawing;
  readonly conductors: ReadonlyMap<string, ScheduledConductor>;
}

function variantOf(
  { installed: _, ...drawing }: Drawing,
  { code }: Schedule,
  key: keyof Drawing["materials"],
  material: Material,
): Variant | null {
  const changed = { ...drawing, code, materials: { ...drawing.materials, [key]: material } };
  try {
    const read = readDrawing(changed);
    const { conductors } = scheduleOf(read);
    return { drawing: read, conductors: new Map(conductors.map((one) => [one.id, one])) };
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}
