import properties from "../../tables/conductor-properties.json" with { type: "json" };
import ampacities from "../../tables/raceway-ampacity.json" with { type: "json" };

/*
 * The sizing of the jumpers once more, from what the editions say and with its own rows and loops. It reads areas and
 * ampacities from the tables, knows names only as text, and imports nothing of the library: where the two disagree, one
 * of them has misread the code.
 */

type Metal = "copper" | "aluminum";

export interface ReferenceConductor {
  readonly size: string;
  readonly material: string;
}

/** So many sets, with the conductor of every phase. */
export interface ReferenceSet {
  readonly count: number;
  readonly phases: readonly (ReferenceConductor | null)[];
}

export interface ReferenceQuestion {
  readonly year: string;
  readonly role: string;
  readonly sets: readonly ReferenceSet[];
  readonly jumper: string;
  readonly temperature: number;
}

const areas = new Map<string, number>();
const listed: string[] = [];
for (const block of properties.blocks) {
  for (const [size, area, standard] of block.rows) {
    areas.set(String(size), Number(area));
    if (standard === true) listed.push(String(size));
  }
}
listed.sort((a, b) => cmils(a) - cmils(b));

/** Row ends and answers as the table prints them; 1100 and 1750 kcmil are ends, not sizes. */
const rows = [
  { copper: "2 AWG", aluminum: "1/0 AWG", answer: { copper: "8 AWG", aluminum: "6 AWG" } },
  { copper: "1/0 AWG", aluminum: "3/0 AWG", answer: { copper: "6 AWG", aluminum: "4 AWG" } },
  { copper: "3/0 AWG", aluminum: "250 kcmil", answer: { copper: "4 AWG", aluminum: "2 AWG" } },
  { copper: "350 kcmil", aluminum: "500 kcmil", answer: { copper: "2 AWG", aluminum: "1/0 AWG" } },
  { copper: "600 kcmil", aluminum: "900 kcmil", answer: { copper: "1/0 AWG", aluminum: "3/0 AWG" } },
  { copper: "1100 kcmil", aluminum: "1750 kcmil", answer: { copper: "2/0 AWG", aluminum: "4/0 AWG" } },
] as const;

/** What the open last row named while the jumpers were sized by the electrode conductors' table. */
const lastRow = { copper: "3/0 AWG", aluminum: "250 kcmil" } as const;

/** Circular mils that the edition requires. */
export function referenceArea({ year, role, sets, jumper, temperature }: ReferenceQuestion): number {
  const supplySide = role === "supply-side-bonding-jumper";
  const byLargest = supplySide && Number(year) >= 2023;
  const hasFloor = Number(year) <= 2011;
  const hasCap = Number(year) >= 2017;
  // 2011 has the sentence in a paragraph of its own; of 2014 no text was read that would have made jumpers smaller again.
  const replacesAnySize = supplySide && (year === "2011" || year === "2014");

  const wanted = metalOf(jumper);
  const metals = new Set<Metal>();
  for (const set of sets) for (const one of set.phases) if (one !== null) metals.add(metalOf(one.material));
  const both = metals.size === 2;
  const supplied: Metal = metals.has("copper") ? "copper" : "aluminum";

  const installed = sumUp(sets, byLargest, (one) => cmils(one.size));
  const beyond = installed > cmils(supplied === "copper" ? "1100 kcmil" : "1750 kcmil");
  const replaces = both || (supplied !== wanted && (replacesAnySize || beyond));
  const counted = replaces
    ? sumUp(sets, byLargest, (one) => areaInMetal(one, wanted, year, temperature))
    : installed;
  const entered = replaces ? wanted : supplied;

  let required = 0;
  for (const row of rows) {
    if (counted <= cmils(row[entered])) {
      required = cmils(row.answer[wanted]);
      break;
    }
  }
  if (required === 0) required = Math.ceil(counted / 8);
  if (hasCap && !both && supplied === wanted && installed < required) required = installed;
  const floorHolds = both ? counted > cmils(rows[5][wanted]) : beyond;
  if (hasFloor && floorHolds) required = Math.max(required, cmils(lastRow[wanted]));
  if (!both) return required;

  // A supply of both metals never asks for less than its copper or its aluminum alone would.
  for (const metal of metals) {
    const alone = sets.map(({ count, phases }) => ({
      count,
      phases: phases.map((one) => (one !== null && metalOf(one.material) === metal ? one : null)),
    }));
    required = Math.max(required, referenceArea({ year, role, sets: alone, jumper, temperature }));
  }
  return required;
}

/** The smallest listed size with at least an area. */
export function referenceSize(area: number): string | null {
  for (const size of listed) if (cmils(size) >= area) return size;
  return null;
}

function sumUp(
  sets: readonly ReferenceSet[],
  byLargest: boolean,
  areaOf: (one: ReferenceConductor) => number,
): number {
  let largestOfEach = 0;
  const byPhase: number[] = [];
  for (const { count, phases } of sets) {
    let largest = 0;
    for (const [phase, one] of phases.entries()) {
      const area = one === null ? 0 : areaOf(one);
      byPhase[phase] = (byPhase[phase] ?? 0) + count * area;
      if (area > largest) largest = area;
    }
    largestOfEach += count * largest;
  }
  return byLargest ? largestOfEach : Math.max(...byPhase);
}

/** What a conductor counts for in another metal: the smallest with at least its ampacity, or equal conductance. */
function areaInMetal(one: ReferenceConductor, wanted: Metal, year: string, temperature: number): number {
  const own = metalOf(one.material);
  if (own === wanted) return cmils(one.size);
  const key = [one.size, wanted, year, temperature].join();
  const known = replaced.get(key);
  if (known !== undefined) return known;
  const area = replacedArea(one.size, own, wanted, year, temperature);
  replaced.set(key, area);
  return area;
}

const replaced = new Map<string, number>();

function replacedArea(size: string, own: Metal, wanted: Metal, year: string, temperature: number): number {
  // A size that the table leaves out counts as the next larger that it has.
  const from = listed.filter((one) => cmils(one) >= cmils(size));
  const amperes = from.map((one) => amperesOf(one, own, year, temperature)).find((one) => one !== null) ?? 0;
  for (const candidate of listed) {
    const other = amperesOf(candidate, wanted, year, temperature);
    if (other !== null && other >= amperes) return cmils(candidate);
  }
  return Math.ceil((cmils(size) * 100) / 61);
}

function amperesOf(size: string, metal: Metal, year: string, temperature: number): number | null {
  const column = ampacities.columns.findIndex(({ id }) => id === `${metal}${temperature}`);
  let found: number | null = null;
  for (const block of ampacities.blocks) {
    if (block.from > year) continue;
    const row = block.rows.find(([name]) => name === size);
    if (row !== undefined) found = row[column] === null ? null : Number(row[column]);
  }
  return found;
}

function metalOf(material: string): Metal {
  return material === "copper" ? "copper" : "aluminum";
}

function cmils(name: string): number {
  const area = areas.get(name) ?? (name.endsWith(" kcmil") ? Number.parseInt(name, 10) * 1000 : undefined);
  if (area === undefined) throw new Error(`no area for ${name}`);
  return area;
}
