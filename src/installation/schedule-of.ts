import { type Code, citeAmendment, overruledReadings } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import { version } from "../input/version.generated.js";
import { identityOf } from "./conductor-identity.js";
import { coveringOf } from "./covering.js";
import type { Installation } from "./document.js";
import { placementOf } from "./electrode-placement.js";
import { fingerprintOf } from "./fingerprint.js";
import { type ScheduleOptions, scheduleOptionsShape } from "./questions/shape.generated.js";
import { readInstallation } from "./read-installation.js";
import type {
  InstallationInCode,
  PlacedCaution,
  Schedule,
  ScheduledConductor,
  ScheduledPart,
} from "./schedule.js";
import { buildingPart } from "./schedule-buildings.js";
import { circuitPart } from "./schedule-circuits.js";
import { commonConductors } from "./schedule-common.js";
import { derivedPart } from "./schedule-derived.js";
import { generatorPart } from "./schedule-generators.js";
import { loadSideJumperPart } from "./schedule-load-side-jumpers.js";
import { metalPart } from "./schedule-metal.js";
import { removablePart } from "./schedule-removable.js";
import { servicePart } from "./schedule-service.js";
import { totalsOf } from "./totals.js";
import type { Violation } from "./violation.js";
import { installationFindings } from "./violations/of-installation.js";

/**
 * Names every bonding and grounding conductor of an installation: where it goes, its minimum size, what decides it and the
 * sections that say so; what is not required and why; and what the library does not size. The order is that of the installation.
 *
 * @param installation - the installation; {@link readInstallation} reads one from text
 * @param options - `{ fingerprint: false }` for a schedule without its fingerprint and that of the installation, which take about a third of the
 *   time
 * @returns the schedule, plain JSON
 * @throws {@link InputError} listing everything that is wrong in the installation, or in the options
 *
 * @example
 * ```ts
 * import { scheduleOf } from "bondmil";
 * const schedule = scheduleOf({
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
 *       runs: [{ id: "R1", from: "pole", to: "D1", supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] }, raceways: { count: 1, kind: "nonmetallic" } }],
 *       disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 200 }],
 *       housing: "separate-enclosures",
 *       electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
 *     },
 *   ],
 * });
 * schedule.conductors.map(({ id, result }) => [id, result.requiredArea]);
 * // => [
 * //   ["main-bonding-jumper D1", 41740],
 * //   ["supply-side-bonding-jumper R1", 0],
 * //   ["grounded-conductor R1", 66360],
 * //   ["grounding-electrode-conductor E1", 41740],
 * // ]
 * ```
 */
export function scheduleOf(
  installation: Installation,
  options: {
    /** Leaves its fingerprint and that of the installation out. */
    readonly fingerprint: false;
  },
): Omit<Schedule, "installationFingerprint" | "fingerprint">;
export function scheduleOf(
  installation: Installation,
  options?: {
    /** As by default. */
    readonly fingerprint?: true;
  },
): Schedule;
export function scheduleOf(
  installation: Installation,
  options: ScheduleOptions = {},
): Schedule | PlainSchedule {
  const { fingerprint } = readAll(options, (at) => readShape<ScheduleOptions>(at, scheduleOptionsShape));
  const read = readInstallation(installation);
  return fingerprint === false ? plainScheduleOf(read) : scheduleOfRead(read);
}

/** A schedule without fingerprints: enough for whatever is held against another. */
export type PlainSchedule = Omit<Schedule, "installationFingerprint" | "fingerprint">;

/** The schedule of an installation that was read. */
export function scheduleOfRead(installation: Installation): Schedule {
  const { $schema: _, installed: __, ...drawn } = installation;
  const { format, library, title, ...rest } = plainScheduleOf(installation);
  const installationFingerprint = fingerprintOf(drawn);
  const unsigned = { format, library, title, installationFingerprint, ...rest };
  return { ...unsigned, fingerprint: fingerprintOf(unsigned) };
}

/** The same without fingerprints. */
export function plainScheduleOf(installation: Installation): PlainSchedule {
  const { code } = installation;
  const parts = partsOf({ installation, code });
  const conductors = parts.flatMap((part) => part.conductors).map((one) => told(installation, one));
  const findings = installationFindings({ installation, code }, conductors);
  return {
    format: 1,
    library: { name: "bondmil", version },
    title: installation.title,
    edition: code.year,
    code,
    violations: [
      ...parts.flatMap((part) => part.violations ?? []),
      ...findings.violations,
      ...forbiddenMaterials(conductors),
    ],
    conductors,
    cautions: [...overruled(code), ...parts.flatMap((part) => part.cautions ?? []), ...findings.cautions],
    notSized: parts.flatMap((part) => part.notSized ?? []),
    totals: totalsOf(conductors),
  };
}

/** A conductor with what is said of it beside its size: the section that places it, and whether it may be bare. */
function told(installation: Installation, one: ScheduledConductor): ScheduledConductor {
  const placement = one.placement ?? placementOf(installation, one);
  const isService = installation.services?.some(({ id }) => id === one.system) === true;
  const covering = one.quantity === 0 ? null : coveringOf(one.role, installation.code, isService);
  return { ...one, ...(placement && { placement }), ...(covering && { covering }) };
}

/** Conductors whose material an amendment forbids, by the amendment. */
function forbiddenMaterials(conductors: readonly ScheduledConductor[]): readonly Violation[] {
  const forbidden = new Map<string, ScheduledConductor[]>();
  for (const one of conductors) {
    for (const { code, section } of one.result.cautions) {
      if (code !== "material-forbidden" || section === null) continue;
      const known = forbidden.get(section);
      if (known === undefined) forbidden.set(section, [one]);
      else known.push(one);
    }
  }
  return [...forbidden].map(([section, all]) => ({
    code: "material-forbidden",
    section,
    evidence: "vouched",
    at: all.map(({ id }) => id),
    conductors: all.map(identityOf),
    remedies: [{ code: "permitted-material" }],
  }));
}

/** Readings that the installation chooses in vain; some of them place a conductor, so that no result could say it. */
function overruled(code: Code): readonly PlacedCaution[] {
  return overruledReadings(code).map(({ id, by }) => ({
    code: "enforced-reading-overrules-chosen",
    section: citeAmendment(by),
    at: `code.readings.${id}`,
  }));
}

function partsOf(at: InstallationInCode): readonly ScheduledPart[] {
  const { services = [], derivedSystems = [] } = at.installation;
  return [
    ...services.map((service) => servicePart({ ...at, service })),
    ...derivedSystems.map((system) => derivedPart({ ...at, system })),
    { conductors: commonConductors(at) },
    generatorPart(at),
    circuitPart(at),
    loadSideJumperPart(at),
    buildingPart(at),
    metalPart(at),
    removablePart(at),
  ];
}
