import type { Material, Supply } from "../../../src/index.js";

type Sets = Supply["sets"];

/** Names of sizes that a set may have. */
export type Sized = Extract<Sets[number], { readonly size: unknown }>["size"] & string;

/** Sets of copper. */
export const copper = (size: Sized, count = 1) => ({ count, size, material: "copper" }) as const;

/** Sets of aluminum. */
export const aluminum = (size: Sized, count = 1) => ({ count, size, material: "aluminum" }) as const;

const phased = (count: number, ...sizes: readonly (readonly [Sized, Material])[]) => ({
  count,
  phases: sizes.map(([size, material]) => ({ size, material })),
});
const inCopper = (...sizes: readonly Sized[]) => sizes.map((size) => [size, "copper"] as const);

/** A set of copper whose phases may differ. */
export function phasedCopper(...sizes: readonly Sized[]): Sets[number] {
  return phased(1, ...inCopper(...sizes));
}

/** Supplies that a uniform run of sets does not show: edges between names, unlike entries, unlike phases, mixed and clad metals. */
export const supplies: readonly Supply[] = [
  [copper("4 AWG", 2)],
  [copper("6 AWG", 4)],
  [copper("2/0 AWG")],
  [copper("3/0 AWG", 2)],
  [copper("4 AWG", 8)],
  [copper("2 AWG", 8)],
  [copper("500 kcmil")],
  [copper("500 kcmil", 4)],
  [copper("400 kcmil", 6)],
  [copper("750 kcmil", 5)],
  [copper("1250 kcmil", 2)],
  [copper("1250 kcmil")],
  [copper("1750 kcmil", 3)],
  [aluminum("250 kcmil")],
  [aluminum("2/0 AWG", 2)],
  [aluminum("500 kcmil", 3)],
  [aluminum("750 kcmil", 4)],
  [aluminum("600 kcmil", 4)],
  [aluminum("350 kcmil", 5)],
  [copper("500 kcmil"), copper("3/0 AWG", 2)],
  [copper("2 AWG"), copper("500 kcmil", 3)],
  [aluminum("4/0 AWG"), aluminum("600 kcmil", 3)],
  [copper("500 kcmil", 2), aluminum("600 kcmil", 2)],
  [aluminum("4/0 AWG"), copper("3/0 AWG")],
  [aluminum("750 kcmil", 3), copper("500 kcmil", 2)],
  [
    phased(1, ...inCopper("500 kcmil", "250 kcmil", "250 kcmil")),
    phased(1, ...inCopper("250 kcmil", "500 kcmil", "250 kcmil")),
  ],
  [phased(1, ...inCopper("2 AWG", "4/0 AWG", "4/0 AWG"))],
  [
    phased(2, ...inCopper("600 kcmil", "350 kcmil", "350 kcmil")),
    phased(2, ...inCopper("350 kcmil", "600 kcmil", "350 kcmil")),
  ],
  [
    phased(3, ...inCopper("750 kcmil", "350 kcmil", "350 kcmil")),
    phased(3, ...inCopper("350 kcmil", "350 kcmil", "750 kcmil")),
  ],
  [phased(1, ["2/0 AWG", "copper"], ["4/0 AWG", "aluminum"], ["4/0 AWG", "aluminum"])],
  [{ count: 1, size: "4/0 AWG", material: "copper-clad aluminum" } as const],
  [{ count: 4, size: "750 kcmil", material: "copper-clad aluminum" } as const],
  [copper("1000 kcmil", 20)],
  [copper("4 AWG"), copper("6 AWG")],
  [aluminum("2/0 AWG"), aluminum("3 AWG")],
  [copper("400 kcmil", 3)],
  [aluminum("600 kcmil", 3)],
  [copper("10 AWG")],
  [
    phased(1, ...inCopper("4/0 AWG", "1/0 AWG", "1/0 AWG")),
    phased(1, ...inCopper("1/0 AWG", "4/0 AWG", "1/0 AWG")),
  ],
  [copper("4/0 AWG", 6)],
].map((sets) => ({ sets }));

/** Some of them, one of a kind. */
export const few = [0, 2, 5, 6, 38, 9, 10, 13, 16, 19, 22, 25]
  .map((place) => supplies[place])
  .filter(isSupply);

function isSupply(supply: Supply | undefined): supply is Supply {
  return supply !== undefined;
}
