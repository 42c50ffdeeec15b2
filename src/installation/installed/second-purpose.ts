import type { Citation, EditionYear, Role } from "../../edition/index.js";
import type { ByEdition } from "../../edition/supply-area-table.js";
import {
  electrodeConductorNoEquipmentGrounding,
  electrodeConductorPastElectrodes,
  equipmentGroundingSeveralCircuits,
  otherPiping,
  serviceStructuralMetal,
  serviceWaterPiping,
} from "../../edition/tables/sections.generated.js";

/** Whether one conductor may serve as two, and where that is said; `open` where no sentence is known that says so. */
export type SecondPurpose =
  | { readonly is: "permitted" | "forbidden"; readonly citation: Citation }
  | { readonly is: "open" };

interface Pair {
  readonly roles: readonly [Role, Role];
  readonly is: "permitted" | "forbidden";
  readonly by: ByEdition<Citation>;
}

const pairs: readonly Pair[] = [
  {
    roles: ["equipment-grounding-conductor", "other-piping-bonding-jumper"],
    is: "permitted",
    by: otherPiping,
  },
  {
    roles: ["equipment-grounding-conductor", "equipment-grounding-conductor"],
    is: "permitted",
    by: equipmentGroundingSeveralCircuits,
  },
  {
    roles: ["grounding-electrode-conductor", "water-piping-bonding-jumper"],
    is: "permitted",
    by: serviceWaterPiping,
  },
  {
    roles: ["grounding-electrode-conductor", "structural-metal-bonding-jumper"],
    is: "permitted",
    by: serviceStructuralMetal,
  },
  {
    roles: ["grounding-electrode-conductor", "electrode-bonding-jumper"],
    is: "permitted",
    by: electrodeConductorPastElectrodes,
  },
  {
    roles: ["electrode-bonding-jumper", "electrode-bonding-jumper"],
    is: "permitted",
    by: electrodeConductorPastElectrodes,
  },
  {
    roles: ["grounding-electrode-conductor", "grounding-electrode-conductor"],
    is: "permitted",
    by: electrodeConductorPastElectrodes,
  },
  {
    roles: ["equipment-grounding-conductor", "grounding-electrode-conductor"],
    is: "forbidden",
    by: electrodeConductorNoEquipmentGrounding,
  },
];

/** Whether a conductor of one role may serve as one of another besides. */
export function mayServeAlso(role: Role, other: Role, edition: EditionYear): SecondPurpose {
  const found = pairs.find(({ roles: [a, b] }) => (a === role && b === other) || (a === other && b === role));
  return found === undefined ? { is: "open" } : { is: found.is, citation: found.by[edition] };
}
