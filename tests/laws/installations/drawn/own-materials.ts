import { type Installation, type Material, materials } from "bondmil";
import type { Dice } from "../dice.js";

type Key = keyof Installation["materials"];

/** Some things of an installation with materials of their own, of the conductors that they have. */
export function withOwnMaterials(dice: Dice, installation: Installation): Installation {
  if (dice.chance(60)) return installation;
  const own = <T extends object>(one: T, ...keys: readonly Key[]): T => {
    const chosen = keys
      .filter(() => dice.chance(50))
      .map((key): [Key, Material] => [key, dice.pick(materials)]);
    return dice.chance(75) ? one : { ...one, materials: Object.fromEntries(chosen) };
  };
  const each = <T extends object>(list: readonly T[] | undefined, ...keys: readonly Key[]): T[] | undefined =>
    list?.map((one) => own(one, ...keys));
  const inSystem = <T extends object>(
    system: T & { runs: readonly object[]; electrodes?: readonly object[] },
  ): T => ({
    ...own(system, "bondingJumpers", "groundedConductors", "electrodeConductors"),
    runs: each(system.runs, "bondingJumpers", "groundedConductors"),
    ...(system.electrodes && {
      electrodes: each(system.electrodes, "electrodeConductors", "bondingJumpers"),
    }),
  });
  const { services, derivedSystems, generators, circuits, buildings, piping, structuralMetal } = installation;
  return {
    ...installation,
    ...(services && {
      services: services.map((one) => ({
        ...inSystem(one),
        ...(one.boxes && { boxes: each(one.boxes, "bondingJumpers") }),
        disconnects: each(one.disconnects, "bondingJumpers"),
      })),
    }),
    ...(derivedSystems && {
      derivedSystems: derivedSystems.map((one) => ({
        ...inSystem(one),
        disconnects: each(one.disconnects, "bondingJumpers"),
      })),
    }),
    ...(generators && { generators: each(generators, "bondingJumpers", "equipmentGrounding") }),
    ...(circuits && { circuits: each(circuits, "equipmentGrounding") }),
    ...(buildings && { buildings: each(buildings, "electrodeConductors") }),
    ...(piping && { piping: each(piping, "bondingJumpers") }),
    ...(structuralMetal && { structuralMetal: each(structuralMetal, "bondingJumpers") }),
  } as Installation;
}
