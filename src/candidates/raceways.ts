import type { ConductorSize } from "../conductor/index.js";
import type { EditionYear, Evidence } from "../edition/index.js";
import { areaIn } from "../engineering/raceway-fill/areas.js";
import type { Insulation, RacewayKind } from "../engineering/raceway-fill/shape.generated.js";
import { type Bore, smallestBore } from "../engineering/raceway-fill/trade-sizes.js";

/** Conductors of one size in a raceway; without insulation they are bare and stranded. */
export interface Filling {
  readonly count: number;
  readonly size: ConductorSize;
  readonly insulation: Insulation | null;
}

/** Whether a metal raceway of this kind may serve as a grounding or bonding conductor. */
export function isMetal(kind: RacewayKind): boolean {
  return kind !== "pvc-schedule-40" && kind !== "pvc-schedule-80";
}

/** Finds the smallest raceways of one edition; equal contents are looked up once. */
export interface RacewayFinder {
  /** The smallest trade size; `null` where none takes them or a size has no area in the tables. */
  find(kind: RacewayKind, contents: readonly Filling[], isNipple: boolean): Bore | null;
  /** Whether the tables have an area for conductors of this size. */
  hasArea(filling: Filling): boolean;
  /** Levels of evidence that it rests on. */
  readonly evidence: Set<Evidence>;
}

/** Prepares the raceways of an edition. */
export function racewayFinder(edition: EditionYear): RacewayFinder {
  const areas = new Map<string, number | null>();
  const bores = new Map<string, Bore | null>();
  const evidence = new Set<Evidence>();
  const areaOf = ({ size, insulation }: Filling): number | null => {
    const key = `${size} ${insulation}`;
    const known = areas.get(key);
    if (known !== undefined) return known;
    const one =
      insulation === null
        ? ({ count: 1, size, bare: "stranded" } as const)
        : ({ count: 1, size, insulation } as const);
    const found = areaIn(edition, one);
    if (found?.citation != null && found.citation.evidence !== "vouched")
      evidence.add(found.citation.evidence);
    areas.set(key, found?.area ?? null);
    return found?.area ?? null;
  };
  return {
    evidence,
    hasArea: (filling) => areaOf(filling) !== null,
    find: (kind, contents, isNipple) => {
      const counted = contents.map((one) => ({ count: one.count, area: areaOf(one) }));
      const key = `${kind} ${counted.map(({ count, area }) => `${count}x${area}`).join(" ")}`;
      const known = bores.get(key);
      if (known !== undefined) return known;
      const all = counted.flatMap(({ count, area }) => (area === null ? [] : [{ count, area }]));
      const bore = all.length < counted.length ? null : smallestBore(edition, kind, all, isNipple);
      if (bore !== null && bore.citation.evidence !== "vouched") evidence.add(bore.citation.evidence);
      bores.set(key, bore);
      return bore;
    },
  };
}
