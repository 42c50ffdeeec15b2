import type { SupplyCandidate, SupplyCandidates } from "../../candidates/candidate.js";
import { candidatesMarks } from "../../candidates/candidate.js";
import { useResult } from "../../input/given-result.js";
import { escapeMarkup } from "./markup.js";
import { sheetStyles } from "./sheet-svg.js";

/**
 * Draws candidates for a supply as one SVG file: the weight of their metal against their terminations, and against their raceways. Copper
 * is a circle and aluminum a square, so that no color is needed; what no other one beats is filled. The file loads nothing, follows a dark
 * theme, and carries what it shows in words.
 *
 * @param candidates - what supplyCandidates gives
 * @returns the text of the file
 * @throws {@link InputError} for anything but such candidates
 *
 * @example
 * ```ts
 * import { supplyCandidates, tradeOffAsSvg } from "bondmil";
 * const found = supplyCandidates({
 *   code: { year: "2023" },
 *   system: { kind: "feeder", ungrounded: 3 },
 *   load: { continuous: 0, other: 400 },
 *   conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
 *   place: { location: "dry" },
 *   limits: { mostSets: 4 },
 *   bonding: { material: "copper" },
 * });
 * tradeOffAsSvg(found).startsWith("<svg"); // => true
 * ```
 */
export function tradeOffAsSvg(candidates: SupplyCandidates): string {
  return useResult(candidates, "supplyCandidates", candidatesMarks, svgOf);
}

const width = 760;
const panelHeight = 330;
const left = 70;
const right = 40;
const top = 40;
const bottom = 50;

/** One of the two pictures: what stands on the upright axis. */
interface Panel {
  readonly name: string;
  readonly of: (one: SupplyCandidate) => number;
}

const panels: readonly Panel[] = [
  { name: "Terminations", of: ({ terminations }) => terminations },
  { name: "Raceways", of: ({ raceways, sets, setsInRaceway }) => raceways?.count ?? sets / setsInRaceway },
];

function metalOf({ mass }: SupplyCandidate): number {
  return mass.copper + mass.aluminum;
}

function svgOf({ candidates, device, total }: SupplyCandidates): string {
  const height = 60 + panels.length * panelHeight;
  const title = `Candidates for a supply of ${device} A`;
  const best = candidates.filter(({ unbeaten }) => unbeaten);
  const description = `${total} candidates, ${best.length} of them unbeaten: ${best.map(nameOf).join("; ")}.`;
  return [
    `<svg class="bondmil" xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="trade-off-title trade-off-desc">`,
    `<title id="trade-off-title">${escapeMarkup(title)}</title><desc id="trade-off-desc">${escapeMarkup(description)}</desc>`,
    `<style>${sheetStyles()}.bondmil .best{fill:currentColor}</style>`,
    `<rect class="ground" width="${width}" height="${height}"/>`,
    `<text class="label strong" x="16" y="20">${escapeMarkup(title)}</text>`,
    `<circle cx="22" cy="40" r="4"/><text class="label" x="32" y="44">copper</text><rect x="98" y="36" width="8" height="8"/><text class="label" x="112" y="44">aluminum</text><circle class="best" cx="192" cy="40" r="4"/><text class="label" x="202" y="44">unbeaten</text>`,
    ...panels.map(
      (panel, at) =>
        `<g transform="translate(0 ${60 + at * panelHeight})">\n${panelOf(panel, candidates).join("\n")}\n</g>`,
    ),
    "</svg>\n",
  ].join("\n");
}

function nameOf({ sets, size, material, raceways }: SupplyCandidate): string {
  const kind = raceways === null ? "" : `, ${raceways.count} x ${raceways.kind} ${raceways.tradeSize}`;
  return `${sets} x ${size} ${material}${kind}`;
}

function panelOf({ name, of }: Panel, candidates: readonly SupplyCandidate[]): readonly string[] {
  const across = axis(candidates.map(metalOf), left, width - right);
  const upright = axis(candidates.map(of), panelHeight - bottom, top);
  const base = panelHeight - bottom;
  // Candidates that differ in their kind of raceway alone stand at one point; it is drawn once, as the best of them.
  const points = new Map<string, { readonly one: SupplyCandidate; readonly best: boolean }>();
  for (const one of candidates) {
    const key = `${one.material} ${round(across.at(metalOf(one)))} ${round(upright.at(of(one)))}`;
    const known = points.get(key);
    points.set(key, { one: known?.one ?? one, best: known?.best === true || one.unbeaten });
  }
  return [
    `<path class="context" d="M${left} ${top}V${base}H${width - right}"/>`,
    ...across.ticks.map(
      (value) =>
        `<text class="label" text-anchor="middle" x="${round(across.at(value))}" y="${base + 18}">${value.toLocaleString("en-US")}</text>`,
    ),
    ...upright.ticks.map(
      (value) =>
        `<text class="label" text-anchor="end" x="${left - 8}" y="${round(upright.at(value)) + 4}">${value}</text>`,
    ),
    `<text class="label" text-anchor="middle" x="${(left + width - right) / 2}" y="${base + 38}">Pounds of metal per 1000 ft</text>`,
    `<text class="label strong" x="16" y="${top - 16}">${name}</text>`,
    ...[...points.values()].map(({ one, best }) => {
      const [x, y] = [round(across.at(metalOf(one))), round(upright.at(of(one)))];
      const style = best ? ' class="best"' : "";
      const named = `<title>${escapeMarkup(nameOf(one))}</title>`;
      return one.material === "copper"
        ? `<circle${style} cx="${x}" cy="${y}" r="4">${named}</circle>`
        : `<rect${style} x="${x - 4}" y="${y - 4}" width="8" height="8">${named}</rect>`;
    }),
  ];
}

interface Axis {
  readonly ticks: readonly number[];
  readonly at: (value: number) => number;
}

/** An axis from zero to the next round number above the largest value. */
function axis(values: readonly number[], from: number, to: number): Axis {
  const most = Math.max(1, ...values);
  const step = stepFor(most);
  const end = Math.ceil(most / step) * step;
  const ticks = Array.from({ length: Math.round(end / step) + 1 }, (_, at) => at * step);
  return { ticks, at: (value) => from + ((to - from) * value) / end };
}

/** A step of 1, 2 or 5 times a power of ten that leaves at most eight parts. */
function stepFor(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most / 8));
  return Math.max(
    1,
    [1, 2, 5, 10].map((times) => times * power).find((step) => most / step <= 8) ?? 10 * power,
  );
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
