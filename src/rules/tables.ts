import type { EditionYear, Policy, SupplyAreaTable } from "../edition/index.js";
import { bondingConductor } from "../edition/tables/bonding-conductor.generated.js";
import { electrodeConductor } from "../edition/tables/electrode-conductor.generated.js";

const tables = { "electrode-conductor": electrodeConductor, "bonding-conductor": bondingConductor } as const;

/** The table that a policy enters. The generator of the tables refuses a policy whose edition lacks its table. */
export function tableOf(policy: Policy, year: EditionYear): SupplyAreaTable {
  const table = tables[policy.table][year];
  if (table === null) throw new TypeError(`the ${year} edition has no ${policy.table} table`);
  return table;
}
