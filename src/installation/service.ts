import { isSourceLikeService } from "../systems/main-jumper.js";
import type { Installation } from "./document.js";
import type { InstallationInCode } from "./schedule.js";
import { type Serving, servingOf, servingsFrom, servingTo } from "./serving.js";
import { joined } from "./supplies.js";

/** A service of an installation. */
export type DrawnService = NonNullable<Installation["services"]>[number];

/** A disconnect of a service. */
export type DrawnDisconnect = DrawnService["disconnects"][number];

/** A service with its drawing and its code. */
export interface ServiceInCode extends InstallationInCode {
  readonly service: DrawnService;
}

/** What holds one or, if it is a listed assembly, several disconnects, and has one grounded conductor terminal. */
export interface Enclosure {
  /** Id of its disconnect; of an assembly, that of the service; of sections on one bus, that of the bus. */
  readonly id: string;
  /** Whether it is the sections on one bus. */
  readonly isBus?: true;
  readonly disconnects: readonly string[];
}

export function isServiceDisconnect({ designation }: DrawnDisconnect): boolean {
  return designation === "service-disconnect";
}

/** Whether a disconnect is bonded as that of a service is. */
export function isLikeService({ code }: Pick<ServiceInCode, "code">, one: DrawnDisconnect): boolean {
  if (one.designation === "supply-side-source") return isSourceLikeService(code);
  return isServiceDisconnect(one);
}

/** Whether several disconnects stand in one listed assembly; sections on a bus stand there. */
export function isAssembly({ housing, disconnects }: DrawnService): boolean {
  const own = disconnects.filter((one) => isServiceDisconnect(one) && one.bus === undefined);
  return housing === "listed-assembly" && own.length > 1;
}

/** The enclosures that are bonded as those of a service are, an assembly and the sections on a bus once. */
export function enclosuresOf(at: ServiceInCode): readonly Enclosure[] {
  const { service } = at;
  const bonded = service.disconnects.filter((one) => isLikeService(at, one) && one.bus === undefined);
  const assembled = isAssembly(service) ? bonded.filter(isServiceDisconnect) : [];
  const alone = bonded.filter((one) => !assembled.includes(one));
  return [
    ...(assembled.length === 0 ? [] : [{ id: service.id, disconnects: assembled.map(({ id }) => id) }]),
    ...alone.map(({ id }) => ({ id, disconnects: [id] })),
    ...(service.buses ?? []).map(({ id }) => {
      const on = service.disconnects.filter(({ bus }) => bus === id);
      return { id, disconnects: on.map((one) => one.id), isBus: true } as const;
    }),
  ];
}

/**
 * The conductors that supply an enclosure: those that end in it, and of an assembly those to the boxes directly ahead of it, since the runs
 * to its disconnects may only divide them.
 */
export function servingsOfEnclosure(
  { service, code }: ServiceInCode,
  { id: enclosure, disconnects, isBus }: Enclosure,
): readonly Serving[] {
  const { runs, boxes = [] } = service;
  if (isBus) return [servingTo(runs, enclosure, code.year)];
  const own = runs.filter(({ to }) => disconnects.includes(to));
  const ahead = boxes.filter(({ id }) => own.some(({ from }) => from === id)).map(({ id }) => id);
  if (disconnects.length === 1 || ahead.length === 0) return [servingOf(own, code.year)];
  const divided = runs.filter(({ to }) => ahead.includes(to));
  const direct = own.filter(({ from }) => !ahead.includes(from));
  return [servingOf(own, code.year), servingOf([...divided, ...direct], code.year)];
}

/** The conductors of all enclosures of a service together. */
export function servingsOfAll(at: ServiceInCode): readonly Serving[] {
  const each = enclosuresOf(at).map((one) => servingsOfEnclosure(at, one));
  return [together(each.map(([own]) => own)), together(each.map((servings) => servings.at(-1)))];
}

/** The conductors of a whole service: those from the utility, and those of the premises behind them. */
export function servingsOfService({ service, code }: ServiceInCode): readonly Serving[] {
  return servingsFrom(service.runs, service.utility.id, code.year);
}

/** The conductors that end at a place. */
export function servingToPlace({ service, code }: ServiceInCode, place: string): Serving {
  return servingTo(service.runs, place, code.year);
}

function together(servings: readonly (Serving | undefined)[]): Serving {
  const all = servings.filter((one) => one !== undefined);
  return { by: all.flatMap(({ by }) => by), supply: joined(all.map(({ supply }) => supply)) };
}
