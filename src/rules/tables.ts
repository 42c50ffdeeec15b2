import { type Code, type Policy, type SupplyAreaTable, supplyTableUnder } from "../edition/index.js";

/** The table that a policy enters. The generator of the tables refuses a policy whose edition lacks its table. */
export function tableOf(policy: Policy, code: Code): SupplyAreaTable {
  const table = supplyTableUnder(policy.table, code);
  if (table === null) throw new TypeError(`the ${code.year} edition has no ${policy.table} table`);
  return table;
}
