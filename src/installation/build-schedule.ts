import { readCode } from "../edition/index.js";
import { readAll } from "../input/reader.js";
import type { Drawing } from "./document.js";
import { fingerprintOf } from "./fingerprint.js";
import { readDrawing } from "./read-drawing.js";
import type { DrawingInCode, Schedule, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { buildingPart, circuitPart, generatorPart } from "./schedule-circuits.js";
import { commonConductors } from "./schedule-common.js";
import { derivedPart } from "./schedule-derived.js";
import { metalPart } from "./schedule-metal.js";
import { servicePart } from "./schedule-service.js";
import { totalsOf } from "./totals.js";
import type { Violation } from "./violation.js";

/**
 * Names every bonding and grounding conductor of a drawing: where it goes, its smallest permitted size, what decides it and the
 * sections that say so; what is not required and why; and what the library does not size. The order is that of the drawing.
 *
 * @param source - a drawing, its JSON text, or the value that it would parse to
 * @returns the schedule, plain JSON
 * @throws {@link InputError} listing everything that is wrong in the drawing
 *
 * @example
 * ```ts
 * import { buildSchedule } from "bondmil";
 * const schedule = buildSchedule({
 *   format: 1,
 *   title: "Barn",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "aluminum",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   services: [
 *     {
 *       id: "S1",
 *       grounding: "solidly-grounded",
 *       connection: "single-phase-three-wire",
 *       utility: { id: "pole", outdoorTransformer: true },
 *       runs: [{ id: "R1", from: "pole", to: "D1", supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] } }],
 *       disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 200 }],
 *       housing: "separate-enclosures",
 *       electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
 *     },
 *   ],
 * });
 * schedule.conductors.map(({ id, result }) => [id, result.requiredArea]);
 * // => [
 * //   ["main-bonding-jumper D1", 41740],
 * //   ["grounded-conductor R1", 66360],
 * //   ["grounding-electrode-conductor E1", 41740],
 * // ]
 * ```
 */
export function buildSchedule(source: unknown): Schedule {
  return scheduleOf(readDrawing(source));
}

/** The schedule of a drawing that was read. */
export function scheduleOf(drawing: Drawing): Schedule {
  const code = readAll(drawing.code, readCode);
  const parts = partsOf({ drawing, code });
  const conductors = parts.flatMap((part) => part.conductors);
  const { $schema: _, installed: __, ...drawn } = drawing;
  const unsigned: Omit<Schedule, "fingerprint"> = {
    format: 1,
    title: drawing.title,
    drawingFingerprint: fingerprintOf(drawn),
    edition: code.year,
    code,
    violations: [...parts.flatMap((part) => part.violations ?? []), ...forbiddenMaterials(conductors)],
    conductors,
    cautions: parts.flatMap((part) => part.cautions ?? []),
    notSized: parts.flatMap((part) => part.notSized ?? []),
    totals: totalsOf(conductors),
  };
  return { ...unsigned, fingerprint: fingerprintOf(unsigned) };
}

/** Conductors whose material an amendment forbids, by the amendment. */
function forbiddenMaterials(conductors: readonly ScheduledConductor[]): readonly Violation[] {
  const places = new Map<string, string[]>();
  for (const { id, result } of conductors) {
    for (const { code, section } of result.cautions) {
      if (code !== "material-forbidden" || section === null) continue;
      const known = places.get(section);
      if (known === undefined) places.set(section, [id]);
      else known.push(id);
    }
  }
  return [...places].map(([section, at]) => ({ code: "material-forbidden", section, at }));
}

function partsOf(at: DrawingInCode): readonly ScheduledPart[] {
  const { services = [], derivedSystems = [] } = at.drawing;
  return [
    ...services.map((service) => servicePart({ ...at, service })),
    ...derivedSystems.map((system) => derivedPart({ ...at, system })),
    { conductors: commonConductors(at) },
    generatorPart(at),
    circuitPart(at),
    buildingPart(at),
    metalPart(at),
  ];
}
