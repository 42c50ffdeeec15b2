import { type Installation, materials } from "bondmil";
import fc from "fast-check";
import { type Dice, diceOf, several } from "../dice.js";
import { drawBranches, drawGenerator, drawLoadSide } from "./circuits.js";
import { drawCode } from "./code.js";
import { drawDerived } from "./derived.js";
import { drawInstalled } from "./installed.js";
import { drawIntersystem, drawPiping, drawStructures } from "./metal.js";
import { withOwnMaterials } from "./own-materials.js";
import { drawService } from "./services.js";
import { withSharedElectrodes } from "./shared.js";
import { withSources } from "./sources.js";

/** Installations that can be read, of every kind that the format knows; small ones far more often. */
export const anyInstallation: fc.Arbitrary<Installation> = fc
  .noShrink(fc.integer({ min: 0, max: 0xffff_ffff }))
  .map((seed) => drawInstallation(diceOf(seed)));

/** How many services and derived systems; most often one of them, so that a thousand are soon drawn. */
const counts = [
  ...([
    [1, 0],
    [1, 0],
    [1, 0],
    [1, 0],
    [0, 1],
    [0, 1],
    [0, 1],
  ] as const),
  ...([
    [1, 1],
    [2, 0],
    [0, 2],
    [0, 0],
  ] as const),
];

/** One installation, as the dice fall. */
export function drawInstallation(dice: Dice): Installation {
  const [services, derived] = dice.pick(counts);
  const material = () => (dice.chance(60) ? "copper" : dice.pick(materials));
  const code = drawCode(dice);
  const drawnServices = several(services, (n) => drawService(dice, n));
  const derivedSystems = several(derived, (n) => drawDerived(dice, n));
  const disconnects = [...drawnServices, ...derivedSystems].flatMap((one) =>
    one.disconnects.map(({ id }) => id),
  );
  const generators = several(dice.chance(15) ? 1 : 0, (n) => drawGenerator(dice, n, disconnects));
  const starts = [...disconnects, ...generators.map(({ id }) => id), "main panel"];
  const sources = derivedSystems.map((one) => one.source.id).filter(() => starts.length > 0);
  const { circuits, buildings } = drawBranches(dice, withoutDerived(starts), sources);
  const plain: Installation = withSources(dice, {
    format: 1,
    title: dice.pick(["Shop", "Depot \u{1f3ed}", "=1+1"]),
    code,
    materials: {
      bondingJumpers: material(),
      groundedConductors: material(),
      electrodeConductors: material(),
      equipmentGrounding: material(),
    },
    existing: [{ id: "main panel" }],
    ...listed("services", drawnServices, dice),
    ...listed("derivedSystems", derivedSystems, dice),
    ...listed("generators", generators, dice),
    ...listed("circuits", circuits, dice),
    ...listed("buildings", buildings, dice),
    ...listed("loadSideConnections", drawLoadSide(dice, circuits, sources), dice),
  });
  const hasOwner = services + derived > 0;
  const drawn: Installation = {
    ...plain,
    ...listed("piping", hasOwner ? drawPiping(dice, plain) : [], dice),
    ...listed("structuralMetal", hasOwner ? drawStructures(dice, plain) : [], dice),
    ...listed("intersystem", drawIntersystem(dice, plain), dice),
    ...drawInstalled(dice, plain),
  };
  return withOwnMaterials(dice, withSharedElectrodes(dice, drawn));
}

/** Circuits may feed a derived source, so they start where no derived system comes before. */
function withoutDerived(starts: readonly string[]): readonly string[] {
  return starts.filter((one) => !/^X\d+P/.test(one));
}

/** A list under its name; an empty one is left out or not. */
function listed<K extends string, T>(key: K, list: T[], dice: Dice): { [P in K]?: T[] } {
  return list.length > 0 || dice.chance(15) ? ({ [key]: list } as { [P in K]?: T[] }) : {};
}
