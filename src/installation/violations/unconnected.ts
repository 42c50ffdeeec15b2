import type { Citation, EditionYear } from "../../edition/index.js";
import type { ByEdition } from "../../edition/supply-area-table.js";
import {
  buildingElectrodes,
  derivedElectrodeConnection,
  electrodesPresent,
  impedanceElectrode,
  serviceElectrodeConductor,
  serviceUngroundedElectrode,
  ungroundedDerivedElectrode,
} from "../../edition/tables/sections.generated.js";
import {
  isReached,
  type MetalPart,
  metalParts,
  needsNoElectrode,
  servesAsCommon,
} from "../bonded-otherwise.js";
import type { Installation } from "../document.js";
import { listsOf, metalKind } from "../electrodes-of.js";
import { ownerIds } from "../metal-owners.js";
import type { Violation } from "../violation.js";

/** Systems and buildings from which no electrode conductor goes, and metal that is said to be an electrode and to which none goes. */
export function unconnectedViolations(installation: Installation): readonly Violation[] {
  const metal = metalParts(installation).filter((part) => isUnconnected(installation, part));
  const said = new Set(metal.flatMap(ownerIds));
  return [
    ...withoutElectrode(installation)
      .filter(({ id }) => !said.has(id))
      .map(({ id, by }) => noConductor(id, by, installation.code.year)),
    ...metal.map((part) => notConnected(installation, part)),
  ];
}

type Grounding = NonNullable<Installation["services"]>[number]["grounding"];

interface Lacking {
  readonly id: string;
  readonly by: ByEdition<Citation>;
}

/** A common conductor counts, for the electrodes on it may stand in the drawing of another system. */
function withoutElectrode(installation: Installation): readonly Lacking[] {
  const { services = [], derivedSystems = [], buildings = [] } = installation;
  const lacks = ({ electrodes = [] }: { readonly electrodes?: readonly unknown[] }): boolean =>
    electrodes.length === 0;
  return [
    ...services
      .filter((one) => lacks(one) && one.commonElectrodeConductor === undefined)
      .map((one) => ({
        id: one.id,
        by: sectionOf(one, serviceElectrodeConductor, serviceUngroundedElectrode),
      })),
    ...derivedSystems
      .filter((one) => lacks(one) && one.commonElectrodeConductor === undefined)
      .filter(({ id }) => !needsNoElectrode(installation, id))
      .map((one) => ({
        id: one.id,
        by: sectionOf(one, derivedElectrodeConnection, ungroundedDerivedElectrode),
      })),
    ...buildings
      .filter((one) => lacks(one) && !needsNoElectrode(installation, one.id))
      .map(({ id }) => ({ id, by: buildingElectrodes })),
  ];
}

/** An ungrounded system and one with an impedance have electrode conductors by sections of their own. */
function sectionOf(
  { grounding }: { readonly grounding: Grounding },
  grounded: ByEdition<Citation>,
  ungrounded: ByEdition<Citation>,
): ByEdition<Citation> {
  if (grounding === "impedance") return impedanceElectrode;
  return grounding === "ungrounded" ? ungrounded : grounded;
}

function noConductor(id: string, by: ByEdition<Citation>, year: EditionYear): Violation {
  return {
    code: "electrode-conductor-missing",
    ...by[year],
    at: [id],
    found: { count: 0 },
    remedies: [{ code: "connect-to-electrode" }],
  };
}

/** An electrode of the same kind among those of its owners may be the part itself under another id. */
function isUnconnected(installation: Installation, part: MetalPart): boolean {
  const { id, isElectrode = false } = part;
  if (!isElectrode || listsOf(installation).some((list) => isReached(list, id))) return false;
  const owners = ownerIds(part);
  if (owners.every((owner) => needsNoElectrode(installation, owner))) return false;
  const kind = metalKind(installation, id);
  const isNamedAgain = listsOf(installation)
    .filter((list) => owners.includes(list.id))
    .some(({ electrodes = [] }) => electrodes.some((one) => one.kind === kind));
  return !isNamedAgain && !owners.some((owner) => servesAsCommon(installation, id, owner));
}

function notConnected(installation: Installation, part: MetalPart): Violation {
  const { derivedSystems = [], code } = installation;
  const derived = new Set(derivedSystems.map(({ id }) => id));
  const by = ownerIds(part).every((id) => derived.has(id)) ? derivedElectrodeConnection : electrodesPresent;
  const kind = metalKind(installation, part.id);
  return {
    code: "electrode-not-connected",
    ...by[code.year],
    at: [part.id],
    ...(kind && { found: { kind } }),
    remedies: [{ code: "connect-electrode" }],
  };
}
