import { chosenReading } from "../edition/index.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import {
  type DerivedInCode,
  isBoundToSource,
  type JumperChoice,
  jumperChoices,
  servingToDisconnect,
  wholeServing,
} from "./derived-system.js";
import type { DrawnElectrode } from "./electrodes-of.js";
import type { ElectrodeStart } from "./schedule-electrodes.js";
import type { Serving } from "./serving.js";
import { hasGroundedConductor } from "./supplies.js";

/** Whether every enclosure with a system bonding jumper requires an electrode conductor of its own. */
export function wantsEachConnected(at: DerivedInCode, { jumperAt }: JumperChoice): boolean {
  return (
    jumperAt === "disconnects" &&
    hasGroundedConductor(at.system) &&
    !isBoundToSource(at) &&
    chosenReading(at.code, "electrode-connection-with-several-jumpers") === "at-each-jumper"
  );
}

/**
 * The conductors by which an electrode connection at a place goes: those of its enclosure if every enclosure has a connection, else all
 * of the system, since it then serves the other enclosures too.
 */
export function servingAtConnection(at: DerivedInCode, place: string, connected: readonly string[]): Serving {
  const places = at.system.disconnects.map(({ id }) => id);
  const isShared = !places.includes(place) || places.some((id) => !connected.includes(id));
  return isShared ? wholeServing(at) : servingToDisconnect(at, place);
}

/** Where the conductors to an electrode of a derived system start, in each arrangement; none for one that hangs on another. */
export function derivedElectrodeStarts(
  at: DerivedInCode,
  electrodes: readonly DrawnElectrode[],
  electrode: DrawnElectrode,
): readonly ElectrodeStart[] {
  return jumperChoices(at).flatMap((arrangement) => {
    const starts = startsIn(at, electrodes, arrangement);
    const connected = [...starts.values()].flat();
    return (starts.get(electrode) ?? []).map((from) => ({
      from,
      own: at.system.disconnects.find(({ id }) => id === from),
      servings: [servingAtConnection(at, from, connected)],
      ...(arrangement.alternative && { alternative: arrangement.alternative }),
    }));
  });
}

/**
 * The places from which each electrode is connected: as drawn; where arrangements are compared, moved to where the jumper of the arrangement
 * is, unless it is connected there already, and with a connection in every enclosure that requires one.
 */
function startsIn(
  at: DerivedInCode,
  electrodes: readonly DrawnElectrode[],
  arrangement: JumperChoice,
): ReadonlyMap<DrawnElectrode, readonly string[]> {
  const source = at.system.source.id;
  const places = at.system.disconnects.map(({ id }) => id);
  const { impedance } = at.system;
  const drawn = electrodes.filter(
    ({ from }) =>
      from === source || places.includes(from) || (impedance !== undefined && from === impedance.id),
  );
  const asDrawn = new Map(drawn.map((one) => [one, [one.from]]));
  const [first] = drawn;
  if (arrangement.alternative === undefined || first === undefined) return asDrawn;
  if (arrangement.jumperAt === "source") return eachOnce(new Map(drawn.map((one) => [one, [source]])));
  const inEnclosures = drawn.filter(({ from }) => from !== source);
  const connected = new Set(inEnclosures.map(({ from }) => from));
  const isEach = wantsEachConnected(at, arrangement);
  const already = places.filter((id) => connected.has(id));
  const enough = connected.size > 0 ? already : places.slice(0, 1);
  // Of equals, one that has no connection yet comes first, so that no order of the enclosures decides how many conductors there are.
  const required = isEach ? [...places.filter((id) => !connected.has(id)), ...already] : enough;
  const moved = neediest(at, required) ?? source;
  const isConnected = ({ id }: DrawnElectrode): boolean => inEnclosures.some((one) => one.id === id);
  const startOf = (one: DrawnElectrode): readonly string[] => {
    if (one.from !== source) return [one.from];
    return isConnected(one) ? [] : [moved];
  };
  const starts = new Map(drawn.map((one) => [one, startOf(one)]));
  const further = required.filter((id) => ![...starts.values()].flat().includes(id));
  return eachOnce(starts.set(first, [...(starts.get(first) ?? []), ...further]));
}

/** The enclosure whose conductors require the largest electrode conductor, so that no order of the enclosures decides a size; of equals the first. */
function neediest(at: DerivedInCode, places: readonly string[]): string | undefined {
  const required = (place: string): number =>
    groundingElectrodeConductor.decide({
      code: at.code,
      system: "separately-derived",
      supply: servingToDisconnect(at, place).supply,
      conductor: { material: "copper" },
      electrodes: [{ kind: "other" }],
    }).requiredArea;
  const [first, ...others] = places.map((place) => ({ place, area: required(place) }));
  return first && others.reduce((so, one) => (one.area > so.area ? one : so), first).place;
}

/** Conductors that were moved to one place and go to one electrode are one conductor: the one that is drawn there, if there is one. */
function eachOnce(
  starts: ReadonlyMap<DrawnElectrode, readonly string[]>,
): ReadonlyMap<DrawnElectrode, readonly string[]> {
  const key = (electrode: DrawnElectrode, place: string): string => JSON.stringify([electrode.id, place]);
  const all = [...starts].flatMap(([electrode, places]) => places.map((place) => ({ electrode, place })));
  const asDrawn = all.filter(({ electrode, place }) => electrode.from === place);
  // The last of a key stays in a map.
  const one = new Map(
    [...[...all].reverse(), ...asDrawn].map(({ electrode, place }) => [key(electrode, place), electrode]),
  );
  return new Map(
    [...starts].map(([electrode, places]) => [
      electrode,
      places.filter((place) => one.get(key(electrode, place)) === electrode),
    ]),
  );
}
