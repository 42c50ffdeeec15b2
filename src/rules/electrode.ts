import { areaOf, type ConductorSize, columnOf, type Material } from "../conductor/index.js";
import {
  type Citation,
  type Code,
  chosenReading,
  type NamedSize,
  type Role,
  restingOn,
} from "../edition/index.js";
import {
  concreteElectrodeCeiling,
  ringElectrodeLeast,
  rodElectrodeCeiling,
} from "../edition/tables/named-sizes.generated.js";
import {
  electrodeCeilingWording,
  rodCeilingNamesCopperClad,
} from "../edition/tables/placements.generated.js";
import {
  aluminumElectrodeConductor,
  electrodeCeilingConnection,
  ringElectrodeCeiling,
} from "../edition/tables/sections.generated.js";
import { placeIn, type Reader, refuse } from "../input/reader.js";
import type { CapStep } from "../sizing/index.js";
import { isWithoutCeiling } from "./amendment-effects.js";
import type { Caution } from "./caution.js";
import type { Electrode, PlainElectrode } from "./shape.generated.js";

export type { Electrode };

/** Refuses the conductor of a ring that is too small to be an electrode. */
export function refuseSmallRings(at: Reader, electrodes: readonly Electrode[], { year }: Code): void {
  const least = ringElectrodeLeast[year].copper;
  electrodes.forEach((electrode, i) => {
    if (electrode.kind !== "ring" || areaOf(electrode.conductor) >= areaOf(least)) return;
    const place = placeIn(at, ["electrodes", i, "conductor"], electrode.conductor);
    refuse(place, "out-of-range", `a ring conductor of at least ${least}`, "a smaller one is no electrode");
  });
}

/**
 * The cap that the electrodes of one conductor set, if each of them has one: the largest of them. Through 2014 the text speaks of
 * the sole connection to an electrode, so that by default a conductor to electrodes of different kinds has none.
 */
export function electrodeCap(
  code: Code,
  role: Role,
  electrodes: readonly Electrode[],
  material: Material,
): CapStep | null {
  const [first, ...others] = electrodes;
  if (first === undefined) return null;
  if (electrodeCeilingWording[code.year] === "sole-connection" && others.length > 0) {
    const several = chosenReading(code, "electrode-ceiling-for-several");
    const alike = others.every((other) => familyOf(other) === familyOf(first));
    if (several === "one-electrode-only" || (several === "all-of-a-kind" && !alike)) return null;
  }
  const ceilings = electrodes.map((electrode) =>
    isWithoutCeiling(code, role, electrode.kind) ? null : ceilingOf(code, electrode, material),
  );
  const known = ceilings.filter((ceiling) => ceiling !== null);
  if (known.length < electrodes.length) return null;
  const largest = known.reduce((so, one) => (one.requiredArea > so.requiredArea ? one : so));
  const wording = others.length > 0 ? [electrodeCeilingConnection[code.year]] : [];
  const { requiredArea, citation } = largest;
  return { kind: "cap", why: "electrode", requiredArea, citation: restingOn(citation, wording) };
}

/**
 * A size that the code names as a limit, for a material; `null` where it names none. Through 2020 the limits for rods name aluminum
 * and not copper-clad aluminum.
 */
export function namedLimit(code: Code, named: NamedSize, material: Material): ConductorSize | null {
  const unnamed =
    material === "copper-clad aluminum" &&
    !rodCeilingNamesCopperClad[code.year] &&
    chosenReading(code, "copper-clad-to-rods") === "not-named";
  return unnamed ? null : named[columnOf(material)];
}

/** What to know about a material: where it may not be used, and that a limit is named for copper but not for it. */
export function electrodeCautions(
  code: Code,
  role: Role,
  electrodes: readonly Electrode[],
  material: Material,
): readonly Caution[] {
  if (material === "copper") return [];
  const restricted: Caution = {
    code: "aluminum-grounding-restrictions",
    section: aluminumElectrodeConductor[code.year].section,
  };
  const [unnamed] = electrodes.flatMap((electrode) => namedForCopperOnly(code, electrode, material)).sort();
  if (unnamed === undefined || electrodeCap(code, role, electrodes, "copper") === null) return [restricted];
  return [restricted, { code: "electrode-limit-not-for-material", section: unnamed }];
}

/** The section that limits the conductor to an electrode in copper and not in the material; none where it limits both or neither. */
function namedForCopperOnly(code: Code, electrode: Electrode, material: Material): readonly string[] {
  const inCopper = ceilingOf(code, electrode, "copper");
  return inCopper !== null && ceilingOf(code, electrode, material) === null
    ? [inCopper.citation.section]
    : [];
}

interface Ceiling {
  readonly requiredArea: number;
  readonly citation: Citation;
}

function ceilingOf(code: Code, electrode: Electrode, material: Material): Ceiling | null {
  if (electrode.kind === "ring") {
    const copper = { requiredArea: areaOf(electrode.conductor), citation: ringElectrodeCeiling[code.year] };
    return material === "copper" ? copper : null;
  }
  const named = namedCeiling(electrode.kind)?.[code.year];
  const size = named === undefined ? null : namedLimit(code, named, material);
  return named === undefined || size === null
    ? null
    : { requiredArea: areaOf(size), citation: named.citation };
}

function namedCeiling(kind: PlainElectrode["kind"]): typeof rodElectrodeCeiling | null {
  switch (kind) {
    case "rod":
    case "pipe":
    case "plate":
      return rodElectrodeCeiling;
    case "concrete-encased":
      return concreteElectrodeCeiling;
    default:
      return null;
  }
}

/** Rods, pipes and plates share one ceiling. */
function familyOf({ kind }: Electrode): string {
  return kind === "pipe" || kind === "plate" ? "rod" : kind;
}
