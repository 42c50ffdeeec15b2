import { areaOf, standardSizes } from "../conductor/index.js";
import { type Amendment, type Code, type EditionYear, editionYears } from "../edition/index.js";
import { member, type Reader, readAll, readList, readObject, readOneOf } from "../input/reader.js";
import { amend } from "../rules/amend.js";
import type { CautionCode } from "../rules/caution.js";
import { sizeEquipmentGroundingConductor } from "../rules/equipment-grounding-conductor.js";
import { sizeGroundedConductor } from "../rules/grounded-conductor.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import { sizeMainBondingJumper } from "../rules/main-bonding-jumper.js";
import { ratingTable } from "../rules/rating-table.js";
import type { SizingResult } from "../rules/result.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import { sizeSystemBondingJumper } from "../rules/system-bonding-jumper.js";
import { buildSchedule } from "./build-schedule.js";
import type { Drawing } from "./document.js";
import { readDrawing } from "./read-drawing.js";

/** A proposal for an edition, and the drawings on which it is tried. */
export interface ProposalInput {
  readonly year: EditionYear;
  readonly amendments: readonly Amendment[];
  /** Drawings; their own edition and amendments are put aside. */
  readonly drawings?: readonly unknown[];
}

/** A conductor that the proposal changes. */
export interface ChangedConductor {
  readonly id: string;
  /** Circular mils required before and after, of one conductor. */
  readonly before: number;
  readonly after: number;
  /** Circular mils of metal added, of all alike; negative where metal is saved. */
  readonly metal: number;
  /** What the proposal has to say of it, for example that its material is forbidden or a condition is not known. */
  readonly cautions: readonly CautionCode[];
}

/** What a proposal does to one role over the grid of supplies or ratings. */
export interface GridEffect {
  readonly role: SizingResult["role"];
  readonly configurations: number;
  readonly larger: number;
  readonly smaller: number;
  /** Configurations of which the proposal has something to say, for example that the material is forbidden. */
  readonly cautioned: number;
  /** Circular mils of metal added over all configurations, one conductor each; negative where metal is saved. */
  readonly metal: number;
  readonly example: ChangedConductor | null;
}

/** What a proposal does. */
export interface ProposalEffects {
  readonly year: EditionYear;
  readonly grid: readonly GridEffect[];
  readonly drawings: readonly { readonly title: string; readonly changed: readonly ChangedConductor[] }[];
}

/**
 * Shows what amendments, or a proposal for the next edition, would change: over a grid of supplies (every standard size from 12 AWG, 1 to
 * 20 sets, both metals on both sides) and of device ratings, and in whole drawings.
 *
 * @param input - the edition, the amendments, and drawings
 * @returns per role how many configurations become larger and smaller and the metal added or saved; per drawing every changed conductor
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { proposalEffects } from "bondmil";
 * const effects = proposalEffects({
 *   year: "2023",
 *   amendments: [
 *     {
 *       kind: "floor",
 *       role: "grounding-electrode-conductor",
 *       copper: "6 AWG",
 *       citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
 *     },
 *   ],
 * });
 * effects.grid.filter(({ larger }) => larger > 0).map(({ role }) => role); // => ["grounding-electrode-conductor"]
 * ```
 */
export function proposalEffects(input: ProposalInput): ProposalEffects {
  const { year, amendments, drawings } = readAll(input, readProposal);
  const before: Code = { year };
  const after = amend(before, ...amendments);
  return {
    year,
    grid: Object.values(grids).map((grid) => gridEffect(grid(before), grid(after))),
    drawings: drawings.map(readDrawing).map((drawing) => ({
      title: drawing.title,
      changed: changedIn(drawing, before, after),
    })),
  };
}

type Configuration = readonly [id: string, result: SizingResult];

const metals = ["copper", "aluminum"] as const;
const sizes = /* @__PURE__ */ standardSizes.filter((size) => areaOf(size) >= areaOf("12 AWG"));
const mostSets = 20;
const mostAmendments = 100;
const mostDrawings = 100;

const grids = {
  main: (code: Code) =>
    overSupplies((supply, material) => sizeMainBondingJumper({ code, supply, jumper: { material } })),
  system: (code: Code) =>
    overSupplies((supply, material) => sizeSystemBondingJumper({ code, supply, jumper: { material } })),
  supplySide: (code: Code) =>
    overSupplies((supply, material) => sizeSupplySideBondingJumper({ code, supply, jumper: { material } })),
  grounded: (code: Code) =>
    overSupplies((supply, material) =>
      sizeGroundedConductor({ code, system: "service", supply, conductor: { material } }),
    ),
  electrode: (code: Code) =>
    overSupplies((supply, material) =>
      sizeGroundingElectrodeConductor({
        code,
        of: "service",
        supply,
        conductor: { material },
        electrodes: [{ kind: "metal-water-pipe" }],
      }),
    ),
  equipment: overRatings,
} as const;

function overSupplies(
  size: (supply: { readonly sets: readonly [Configured] }, material: "copper" | "aluminum") => SizingResult,
): readonly Configuration[] {
  return metals.flatMap((own) =>
    metals.flatMap((material) =>
      sizes.flatMap((one) =>
        Array.from({ length: mostSets }, (_, i): Configuration => {
          const count = i + 1;
          return [
            `${count} x ${one} ${material}, ${own}`,
            size({ sets: [{ count, size: one, material }] }, own),
          ];
        }),
      ),
    ),
  );
}

interface Configured {
  readonly count: number;
  readonly size: (typeof standardSizes)[number];
  readonly material: "copper" | "aluminum";
}

function overRatings(code: Code): readonly Configuration[] {
  const ratings = ratingTable({ year: code.year }).rows.map(({ through }) => through);
  return metals.flatMap((material) =>
    ratings.map((amperes): Configuration => {
      const circuits = [{ device: { amperes } }];
      return [
        `${amperes} A, ${material}`,
        sizeEquipmentGroundingConductor({ code, circuits, conductor: { material } }),
      ];
    }),
  );
}

function gridEffect(before: readonly Configuration[], after: readonly Configuration[]): GridEffect {
  const changed = before.flatMap(([id, result], i) => changeOf(id, result, after[i]?.[1] ?? result, 1));
  const [first] = before;
  if (first === undefined) throw new TypeError("a grid has at least one configuration");
  return {
    role: first[1].role,
    configurations: before.length,
    larger: changed.filter((one) => one.after > one.before).length,
    smaller: changed.filter((one) => one.after < one.before).length,
    cautioned: changed.filter(({ cautions }) => cautions.length > 0).length,
    metal: changed.reduce((sum, { metal }) => sum + metal, 0),
    example: changed[0] ?? null,
  };
}

function changedIn(drawing: Drawing, before: Code, after: Code): readonly ChangedConductor[] {
  const { year, amendments } = after;
  const { circumstances } = drawing.code;
  const known = circumstances === undefined ? {} : { circumstances };
  const asPrinted = buildSchedule({ ...drawing, code: { year: before.year } }).conductors;
  const amended = buildSchedule({ ...drawing, code: { year, amendments, ...known } }).conductors;
  return asPrinted.flatMap(({ id, result, quantity, alternative }) => {
    const other = amended.find((one) => one.id === id && one.alternative === alternative);
    return other === undefined ? [] : changeOf(id, result, other.result, Math.max(quantity, other.quantity));
  });
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

function readProposal(at: Reader): Required<ProposalInput> | undefined {
  if (!readObject(at, ["year", "amendments", "drawings"])) return undefined;
  const year = readOneOf(member(at, "year"), editionYears);
  const amendments = readGiven(member(at, "amendments"), mostAmendments);
  const drawings = member(at, "drawings");
  const given = drawings.value === undefined ? [] : readGiven(drawings, mostDrawings);
  return (
    year && amendments && given && { year, amendments: amendments as readonly Amendment[], drawings: given }
  );
}

/** Checks a list of what is checked later, each for itself. */
function readGiven(at: Reader, most: number): readonly unknown[] | undefined {
  if (Array.isArray(at.value) && at.value.length === 0) return [];
  return readList(at, (one) => ({ given: one.value }), most)?.map(({ given }) => given);
}
