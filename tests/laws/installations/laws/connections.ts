import type { Installation, ScheduledConductor } from "bondmil";
import type { Built } from "../built.js";
import { endOf, placeOfEnd } from "../electrodes.js";
import { type Derived, isGrounded, ownersOf, racewaysOf, type Service, type System } from "../parts.js";
import { Graph } from "./graph.js";

/** Metal of an enclosure or a part, the grounded conductor at a place, and the electrodes of a system. */
export const metal = (place: string): string => `metal of ${place}`;
export const neutral = (place: string): string => `grounded conductor at ${place}`;
export const earth = (system: string): string => `electrodes of ${system}`;
const impedance = (system: string): string => `impedance of ${system}`;

/** What the schedule connects, of one alternative of each arrangement that is compared, with what the drawing says of raceways. */
export function connectionsOf({ installation, schedule }: Built, alternative: string): Graph {
  const graph = new Graph();
  const conductors = schedule.conductors.filter(
    (one) => one.alternative === undefined || one.alternative === alternative,
  );
  const found = new Map(conductors.map((one) => [one.id, one]));
  const runs = new Map(
    conductors.filter(({ role }) => role === "grounded-conductor").map((one) => [one.subject, one]),
  );
  for (const system of [...(installation.services ?? []), ...(installation.derivedSystems ?? [])]) {
    for (const { id, from, to } of system.runs)
      if ((runs.get(id)?.quantity ?? 0) > 0) graph.connect(neutral(from), neutral(to));
    connectImpedance(graph, system, found);
    if (schedule.notSized.some(({ what }) => what === `grounding electrode conductor of ${system.id}`))
      connectOpenElectrodes(graph, system);
  }
  for (const service of installation.services ?? []) connectService(graph, service, found);
  for (const system of installation.derivedSystems ?? []) connectDerived(graph, system, found);
  connectBeyond(graph, installation, found);
  for (const one of conductors) connectElectrode(graph, installation, one);
  return graph;
}

type Found = ReadonlyMap<string, ScheduledConductor>;

/** Whether a conductor is there, or what the code lets serve in its place. */
function serves(one: ScheduledConductor | undefined): boolean {
  if (one === undefined) return false;
  const { outcome } = one.result;
  return outcome.kind !== "not-required" || outcome.why.endsWith("-serves") || outcome.why.endsWith("-serve");
}

function isThere(one: ScheduledConductor | undefined): boolean {
  return (one?.quantity ?? 0) > 0;
}

function connectService(graph: Graph, service: Service, found: Found): void {
  const common = service.commonElectrodeConductor;
  if (common !== undefined) graph.connect(earth(service.id), earth(common.id));
  const { id, utility, boxes = [], buses = [], disconnects, runs, housing } = service;
  const source = isGrounded(service) ? neutral : () => earth(id);
  const own = disconnects.filter(
    ({ designation, bus }) => designation === "service-disconnect" && bus === undefined,
  );
  for (const one of disconnects) if (one.bus !== undefined) graph.connect(metal(one.id), metal(one.bus));
  for (const place of [...boxes, ...buses, ...disconnects]) {
    graph.add(metal(place.id));
    const bond = found.get(`supply-side-bonding-jumper ${place.id}`);
    if (serves(bond)) graph.connect(metal(place.id), source(place.id));
    if (isThere(found.get(`main-bonding-jumper ${place.id}`)))
      graph.connect(metal(place.id), neutral(place.id));
  }
  if (housing === "listed-assembly" && own.length > 1) {
    const [first, ...others] = own.map((one) => one.id);
    for (const other of others) graph.connect(metal(first ?? ""), metal(other));
    if (isThere(found.get(`main-bonding-jumper ${id}`)))
      graph.connect(metal(first ?? ""), neutral(first ?? ""));
    if (serves(found.get(`supply-side-bonding-jumper ${id}`)))
      graph.connect(metal(first ?? ""), source(first ?? ""));
  }
  for (const run of runs) {
    const jumper = found.get(`supply-side-bonding-jumper ${run.id}`);
    const isMetal = racewaysOf(run).kind !== "nonmetallic";
    if (isMetal) graph.add(metal(run.id));
    for (const end of [run.from, run.to]) {
      if (end !== utility.id && isMetal && serves(jumper)) graph.connect(metal(run.id), metal(end));
    }
  }
  for (const { id: place } of [...own, ...buses]) graph.connect(metal(place), metal(id));
}

function connectDerived(graph: Graph, system: Derived, found: Found): void {
  const { id, source, runs, disconnects, commonElectrodeConductor: common } = system;
  for (const place of [source, ...disconnects]) {
    graph.add(metal(place.id));
    if (isThere(found.get(`system-bonding-jumper ${place.id}`)))
      graph.connect(metal(place.id), neutral(place.id));
  }
  for (const run of runs) {
    const jumper = found.get(`supply-side-bonding-jumper ${run.in ?? run.id}`);
    const behindDevice = found.get(`equipment-grounding-conductor ${run.id}`);
    if (serves(jumper) || isThere(behindDevice)) graph.connect(metal(run.from), metal(run.to));
  }
  graph.connect(metal(source.id), metal(id));
  if (common !== undefined) graph.connect(earth(id), earth(common.id));
}

/** Electrodes that are not drawn, of which the schedule says so, hang where the system is grounded. */
function connectOpenElectrodes(graph: Graph, system: System): void {
  for (const { id } of placesOfElectrodes(system)) graph.connect(metal(id), earth(system.id));
}

function placesOfElectrodes(system: System): readonly { readonly id: string }[] {
  return "utility" in system ? system.disconnects : [system.source];
}

/**
 * The impedance lies between the neutral point and the equipment grounding conductors at the first disconnect; the electrode
 * conductor starts between them (250.36).
 */
function connectImpedance(graph: Graph, system: System, found: Found): void {
  const { id, disconnects } = system;
  const first = disconnects.find(
    (one) => !("designation" in one) || one.designation === "service-disconnect",
  );
  const source = "utility" in system ? system.utility.id : system.source.id;
  if (first !== undefined && isThere(found.get(`impedance-bonding-jumper ${id}`)))
    graph.connect(metal(first.id), impedance(id));
  if (system.impedance !== undefined) graph.connect(earth(id), impedance(id));
  if (isThere(found.get(`impedance-grounding-conductor ${id}`)))
    graph.connect(impedance(id), neutral(source));
}

/** Circuits, generators and buildings; piping and frames. A circuit that starts from another one starts at its end. */
function connectBeyond(graph: Graph, installation: Installation, found: Found): void {
  const { circuits = [], generators = [], buildings = [], piping = [], structuralMetal = [] } = installation;
  const ends = new Map(circuits.map(({ id, to }) => [id, to]));
  const endOf = (place: string): string => ends.get(place) ?? place;
  for (const { id, from, to } of circuits) {
    if (serves(found.get(`equipment-grounding-conductor ${id}`)))
      graph.connect(metal(endOf(from)), metal(to));
  }
  for (const { id, to } of generators) {
    const roles = ["supply-side-bonding-jumper", "equipment-grounding-conductor"];
    if (roles.some((role) => isThere(found.get(`${role} ${id}`)))) graph.connect(metal(id), metal(to));
  }
  for (const { id, circuit, disconnect } of buildings) {
    graph.connect(metal(circuit === undefined ? (disconnect ?? id) : endOf(circuit)), metal(id));
  }
  for (const part of [...piping, ...structuralMetal]) {
    if (!("of" in part)) continue;
    graph.add(metal(part.id));
    const role = "kind" in part ? "water-piping-bonding-jumper" : "structural-metal-bonding-jumper";
    for (const owner of ownersOf(part)) {
      const jumper = found.get(`${role} ${part.id}${ownersOf(part).length === 1 ? "" : ` from ${owner}`}`);
      const isElectrode =
        jumper?.result.outcome.kind === "not-required" &&
        jumper.result.outcome.why === "part-is-the-electrode";
      if (isThere(jumper)) graph.connect(metal(part.id), metal(owner));
      else if (isElectrode) graph.connect(metal(part.id), earth(owner));
    }
  }
}

/** An electrode conductor, a tap or a jumper between electrodes. */
function connectElectrode(
  graph: Graph,
  installation: Installation,
  { role, part, subject, quantity, ...ends }: ScheduledConductor,
): void {
  if (quantity === 0) return;
  const [from, to] = [placeOfEnd(ends.from), placeOfEnd(ends.to)];
  if (part === "tap") graph.connect(metal(subject), earth(to));
  if (role !== "grounding-electrode-conductor" && role !== "electrode-bonding-jumper") return;
  for (const system of [
    ...(installation.services ?? []),
    ...(installation.derivedSystems ?? []),
    ...(installation.buildings ?? []),
  ]) {
    if (!(system.electrodes ?? []).some((one) => endOf(one) === to)) continue;
    graph.connect(earth(from), earth(to));
    graph.connect(earth(system.id), earth(to));
    graph.connect(metal(from), earth(from));
  }
}
