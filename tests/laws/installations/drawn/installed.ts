import type { Installation } from "bondmil";
import type { Dice } from "../dice.js";

type Installed = NonNullable<Installation["installed"]>;

/** What is installed: nothing most often, the rest as scheduled, some systems, or a jumper in a disconnect. */
export function drawInstalled(
  dice: Dice,
  { services = [], derivedSystems = [] }: Installation,
): { readonly installed?: Installed } {
  if (dice.chance(70)) return {};
  const systems = [...services, ...derivedSystems].map(({ id }) => id);
  const disconnects = services.flatMap((one) => one.disconnects.map(({ id }) => id));
  const [at] = dice.shuffled(disconnects);
  return {
    installed: {
      ...(dice.chance(50) && { rest: "as-scheduled" as const }),
      ...(dice.chance(50) && { asScheduled: systems.filter(() => dice.chance(50)) }),
      ...(at !== undefined && {
        found: [{ role: "main-bonding-jumper", at, size: "4/0 AWG", material: "copper" }] as const,
      }),
    },
  };
}
