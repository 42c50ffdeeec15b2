// Generated from tables/roles.json by "npm run generate"; do not edit.
import type { Purpose, Role } from "../role.js";
import type { ByEdition } from "../supply-area-table.js";

export const roleFacts: Readonly<
  Record<Role, { readonly purpose: Purpose; readonly name: ByEdition<string> }>
> = {
  "main-bonding-jumper": {
    purpose: "fault-path",
    name: {
      "2008": "main bonding jumper",
      "2011": "main bonding jumper",
      "2014": "main bonding jumper",
      "2017": "main bonding jumper",
      "2020": "main bonding jumper",
      "2023": "main bonding jumper",
      "2026": "main bonding jumper",
    },
  },
  "system-bonding-jumper": {
    purpose: "fault-path",
    name: {
      "2008": "system bonding jumper",
      "2011": "system bonding jumper",
      "2014": "system bonding jumper",
      "2017": "system bonding jumper",
      "2020": "system bonding jumper",
      "2023": "system bonding jumper",
      "2026": "system bonding jumper",
    },
  },
  "supply-side-bonding-jumper": {
    purpose: "fault-path",
    name: {
      "2008": "equipment bonding jumper on the supply side of the service",
      "2011": "supply-side bonding jumper",
      "2014": "supply-side bonding jumper",
      "2017": "supply-side bonding jumper",
      "2020": "supply-side bonding jumper",
      "2023": "supply-side bonding jumper",
      "2026": "supply-side bonding jumper",
    },
  },
};
