import type { Code, Policy, SupplyAreaTable, SupplyAreaTableId } from "../edition/index.js";
import { bondingConductor } from "../edition/tables/bonding-conductor.generated.js";
import { electrodeConductor } from "../edition/tables/electrode-conductor.generated.js";
import { amendedSupplyTable } from "./amended-tables.js";

const tables = { "electrode-conductor": electrodeConductor, "bonding-conductor": bondingConductor } as const;

/** The table that a policy enters. The generator of the tables refuses a policy whose edition lacks its table. */
export function tableOf(policy: Policy, code: Code): SupplyAreaTable {
  const table = supplyTableUnder(policy.table, code);
  if (table === null) throw new TypeError(`the ${code.year} edition has no ${policy.table} table`);
  return table;
}

/** A table of supply areas under a code, amendments included; `null` if the edition lacks it. */
export function supplyTableUnder(id: SupplyAreaTableId, code: Code): SupplyAreaTable | null {
  const table = tables[id][code.year];
  return table === null ? null : amendedSupplyTable(id, table, code);
}
