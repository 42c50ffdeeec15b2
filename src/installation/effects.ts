import { gridOf } from "../asking/grid.js";
import { plainly } from "../asking/plainly.js";
import { areaOf, materials } from "../conductor/index.js";
import type { Circumstances, Code, EditionYear, Role } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import type { AnyRole } from "../roles/definition.js";
import { roles } from "../roles/register.generated.js";
import { isAmendedFor } from "../rules/amendment-cautions.js";
import type { CautionCode } from "../rules/caution.js";
import type { SizingResult } from "../rules/result.js";
import { keyOf } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import { type EffectsInput, effectsInputShape } from "./questions/shape.generated.js";
import { readInstallation } from "./read-installation.js";
import type { ScheduledConductor } from "./schedule.js";
import { plainScheduleOf } from "./schedule-of.js";

/** A conductor that the proposal changes. */
export interface ChangedConductor {
  /** Of an installation, the id of the conductor in its schedule; over the grid, the name of the question. */
  readonly id: string;
  /** Circular mils that the edition as printed requires of one conductor; 0 where none is required. */
  readonly before: number;
  /** Circular mils required of one conductor under the proposal; 0 where none is required. */
  readonly after: number;
  /** Circular mils of metal added, of all alike; negative where metal is saved. */
  readonly metal: number;
  /** What the proposal has to say of it, for example that its material is forbidden or a condition is not known. */
  readonly cautions: readonly CautionCode[];
}

/** What a proposal does to one role over its grid. */
export interface GridEffect {
  /** The role that was asked over its grid. */
  readonly role: Role;
  /** How many questions the grid has, also those that no amendment can reach. */
  readonly configurations: number;
  /** How many become larger. */
  readonly larger: number;
  /** How many become smaller. */
  readonly smaller: number;
  /** Configurations of which the proposal has something to say, for example that the material is forbidden. */
  readonly cautioned: number;
  /** Circular mils of metal added over all configurations, one conductor each; negative where metal is saved. */
  readonly metal: number;
  /** The first that changes; `null` if none does. */
  readonly example: ChangedConductor | null;
}

/** What amendments do. */
export interface Effects {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** One entry for every role, also where nothing changes. */
  readonly grid: readonly GridEffect[];
  /** The installations, each with what changes. */
  readonly installations: readonly {
    /** Title for people. */
    readonly title: string;
    /** Conductors that change. */
    readonly changed: readonly ChangedConductor[];
  }[];
}

/**
 * Shows what amendments, or a proposal for the next edition, would change: for every role over the grid of what decides its size (every
 * standard size from 12 AWG, 1 to 20 sets, both metals on both sides; device ratings; currents; conductors), and in whole installations.
 *
 * @param input - the code with its amendments, and installations
 * @returns per role how many configurations become larger and smaller and the metal added or saved; per installation every changed conductor
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { effects } from "bondmil";
 * const found = effects({
 *   code: {
 *     year: "2023",
 *     amendments: [
 *       {
 *         kind: "floor",
 *         role: "water-piping-bonding-jumper",
 *         copper: "4/0 AWG",
 *         citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
 *       },
 *     ],
 *   },
 * });
 * found.grid.filter(({ larger }) => larger > 0).map(({ role }) => role); // => ["water-piping-bonding-jumper"]
 * ```
 */
export function effects(input: EffectsInput): Effects {
  const { code, installations = [] } = readAll(input, (at) => readShape<EffectsInput>(at, effectsInputShape));
  const before: Code = { year: code.year };
  return {
    edition: code.year,
    grid: Object.values(roles).map((role) => gridEffect(role, before, code)),
    installations: installations.map(readInstallation).map((installation) => ({
      title: installation.title,
      changed: changedIn(installation, before, code),
    })),
  };
}

function gridEffect(role: AnyRole, before: Code, after: Code): GridEffect {
  const questions = gridOf(role, before);
  const reached = materials.filter((material) => isAmendedFor({ code: after, role: role.id, material }));
  const asked = questions.filter(({ question }) => reached.includes(question.material));
  const changed = asked.flatMap(({ name, question }) =>
    changeOf(
      name,
      role.decide(plainly(role, question)),
      role.decide(plainly(role, { ...question, code: after })),
      1,
    ),
  );
  return {
    role: role.id,
    configurations: questions.length,
    larger: changed.filter((one) => one.after > one.before).length,
    smaller: changed.filter((one) => one.after < one.before).length,
    cautioned: changed.filter(({ cautions }) => cautions.length > 0).length,
    metal: changed.reduce((sum, { metal }) => sum + metal, 0),
    example: changed[0] ?? null,
  };
}

function changedIn(installation: Installation, before: Code, after: Code): readonly ChangedConductor[] {
  const asPrinted = conductorsUnder(installation, { year: before.year });
  const conductors = conductorsUnder(installation, withCircumstances(installation, after));
  const amended = new Map(conductors.map((one) => [keyOf(one), one]));
  return asPrinted.flatMap(({ result, quantity, ...one }) => {
    const other = amended.get(keyOf(one));
    return other === undefined
      ? []
      : changeOf(one.id, result, other.result, Math.max(quantity, other.quantity));
  });
}

function conductorsUnder(installation: Installation, code: Code): readonly ScheduledConductor[] {
  return plainScheduleOf(readInstallation({ ...installation, code })).conductors;
}

function changeOf(
  id: string,
  before: SizingResult,
  after: SizingResult,
  quantity: number,
): readonly ChangedConductor[] {
  const known = new Set<CautionCode>([
    "amended",
    "amendment-without-effect",
    ...before.cautions.map(({ code }) => code),
  ]);
  const cautions = after.cautions.map(({ code }) => code).filter((code) => !known.has(code));
  if (before.requiredArea === after.requiredArea && cautions.length === 0) return [];
  const metal = (metalOf(after) - metalOf(before)) * quantity;
  return [{ id, before: before.requiredArea, after: after.requiredArea, metal, cautions }];
}

/** Circular mils of the size to be used, or of the area where there is no size. */
function metalOf({ outcome, requiredArea }: SizingResult): number {
  return outcome.kind === "conductor" ? areaOf(outcome.size) : requiredArea;
}

function withCircumstances({ code: { circumstances } }: Installation, code: Code): Code {
  return circumstances === undefined ? code : { ...code, circumstances: circumstances as Circumstances };
}
