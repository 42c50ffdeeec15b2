import type { Dice } from "../dice.js";
import type { Run, System } from "../parts.js";

/** Now and then some runs of a system lie in one raceway that they share. */
export function withSharedRaceway<T extends System>(dice: Dice, system: T, fittings: boolean): T {
  const able = system.runs.filter(({ raceways }) => raceways?.count === 1);
  if (able.length === 0 || !dice.chance(15)) return system;
  const sharing = new Set(
    dice
      .shuffled(able)
      .slice(0, 3)
      .map(({ id }) => id),
  );
  const id = `${system.id}N`;
  const kind = dice.pick(["nonflexible-metal", "flexible-metal", "nonmetallic", "unknown"] as const);
  const bondedBy = dice.pick(
    fittings && kind !== "nonmetallic" ? (["jumper", "fittings"] as const) : (["jumper"] as const),
  );
  return {
    ...system,
    runs: system.runs.map((run) => (sharing.has(run.id) ? inShared(run, id) : run)),
    sharedRaceways: [{ id, kind, ...(dice.chance(50) && { bondedBy }) }],
  };
}

function inShared({ raceways: _, racewayJumpers: __, ...run }: Run, id: string): Run {
  return { ...run, in: id };
}
