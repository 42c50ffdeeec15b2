import type { Citation } from "../edition/index.js";
import {
  derivedMetalByCommon,
  derivedMetalByPiping,
  derivedPipingByFrame,
} from "../edition/tables/sections.generated.js";
import { isExcusedFromElectrode } from "./derived-system.js";
import type { Installation } from "./document.js";
import { electrodeIds, listsOf, metalKind, type WithElectrodes } from "./electrodes-of.js";
import { ownerIds } from "./metal-owners.js";

/** A metal part that several systems may bond, and that may be an electrode. */
export interface MetalPart {
  readonly id: string;
  readonly of: string | readonly string[];
  readonly isElectrode?: boolean;
  readonly bondedTo?: string;
}

/** The metal parts of an installation that belong to systems. */
export function metalParts({ piping = [], structuralMetal = [] }: Installation): readonly MetalPart[] {
  return [...piping.filter((one) => one.kind === "water"), ...structuralMetal];
}

/**
 * Whether a system or building has to have no electrode conductor, so that none bonds what would be its electrode: a control transformer (250.30(A)), a
 * building on one branch circuit (250.32(A)).
 */
export function needsNoElectrode(
  { code, derivedSystems = [], buildings = [] }: Installation,
  owner: string,
): boolean {
  const system = derivedSystems.find(({ id }) => id === owner);
  if (system !== undefined) return isExcusedFromElectrode(code, system);
  return buildings.some(({ id, onSingleBranchCircuit }) => id === owner && onSingleBranchCircuit);
}

/** Whether a metal part is an electrode of a system: it says so, or the system has it among its electrodes. */
export function isElectrodeOf(installation: Installation, part: MetalPart, owner: string): boolean {
  if (needsNoElectrode(installation, owner)) return false;
  const isSaid = part.isElectrode === true && ownerIds(part).includes(owner);
  return isSaid || isReachedBy(installation, part.id, owner);
}

/** Whether a list of electrodes holds a metal part. */
export function isReached({ electrodes = [] }: WithElectrodes, part: string): boolean {
  return electrodes.some(({ electrode }) => electrode === part);
}

/** Whether a system has a metal part among its electrodes. */
export function isReachedBy(
  { services = [], derivedSystems = [], buildings = [] }: Installation,
  part: string,
  owner: string,
): boolean {
  const one = [...services, ...derivedSystems, ...buildings].find(({ id }) => id === owner);
  return one !== undefined && isReached(one, part);
}

/** Whether a water pipe continues the metal water pipe that a system or building has among its electrodes, under another id. */
export function continuesElectrode(
  installation: Installation,
  { id, bondedTo }: MetalPart,
  owner: string,
): boolean {
  if (needsNoElectrode(installation, owner)) return false;
  const list = listsOf(installation).find((one) => one.id === owner);
  const electrode = list?.electrodes?.find((one) => one.id === bondedTo && bondedTo !== undefined);
  return electrode?.kind === "metal-water-pipe" && metalKind(installation, id) === "metal-water-pipe";
}

/** Whether a system or building has a metal water pipe of another id among its electrodes, which water piping might continue. */
export function mayContinueElectrode(installation: Installation, part: MetalPart, owner: string): boolean {
  const list = listsOf(installation).find((one) => one.id === owner);
  const pipes = list?.electrodes?.filter(({ kind }) => kind === "metal-water-pipe") ?? [];
  return (
    metalKind(installation, part.id) === "metal-water-pipe" &&
    !isElectrodeOf(installation, part, owner) &&
    pipes.length > 0
  );
}

/** Whether a metal part serves as the common electrode conductor of a derived system. */
export function servesAsCommon({ derivedSystems = [] }: Installation, part: string, owner: string): boolean {
  return derivedSystems.find(({ id }) => id === owner)?.commonElectrodeConductor?.id === part;
}

/**
 * The exception under which a derived system needs no jumper to a part, since the part is bonded to its electrode or common conductor;
 * `null` where none holds.
 */
export function bondedOtherwise(
  installation: Installation,
  { id, bondedTo }: MetalPart,
  owner: string,
): Readonly<Record<keyof typeof derivedMetalByCommon, Citation>> | null {
  if (bondedTo === undefined || bondedTo === id) return null;
  const system = installation.derivedSystems?.find((one) => one.id === owner);
  if (system === undefined) return null;
  if (system.commonElectrodeConductor?.id === bondedTo) return derivedMetalByCommon;
  const kind = electrodeKind(installation, bondedTo, owner);
  const own = metalKind(installation, id);
  if (own === "metal-water-pipe" && kind === "structural-metal") return derivedPipingByFrame;
  return own === "structural-metal" && kind === "metal-water-pipe" ? derivedMetalByPiping : null;
}

/** The kind of an electrode of a derived system, if it has the id. */
function electrodeKind(installation: Installation, id: string, owner: string): string | undefined {
  const part = metalParts(installation).find((one) => one.id === id);
  if (part !== undefined)
    return isElectrodeOf(installation, part, owner) ? metalKind(installation, id) : undefined;
  const system = installation.derivedSystems?.find((one) => one.id === owner);
  if (system === undefined || !electrodeIds(system).includes(id)) return undefined;
  return system.electrodes?.find((one) => one.id === id)?.kind;
}
