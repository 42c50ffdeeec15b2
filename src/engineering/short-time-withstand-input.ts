import type { ConductorColumn, ConductorSize } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import { withstandFacts } from "../edition/tables/short-time-withstand.generated.js";
import { member, type Reader, readObject, readOneOf, readPositive, refuse } from "../input/reader.js";

/** A conductor by its trade size. */
export interface WithstandConductorBySize {
  /** Trade size of the conductor. */
  readonly size: ConductorSize;
  /** Copper or aluminum; no constants are known for copper-clad aluminum. */
  readonly material: ConductorColumn;
}

/** A conductor by its area, such as a bus bar. */
export interface WithstandConductorByArea {
  /** Whole circular mils of metal. */
  readonly areaCircularMils: number;
  /** Copper or aluminum; no constants are known for copper-clad aluminum. */
  readonly material: ConductorColumn;
}

/** Temperatures of the conductor in degrees Celsius. Neither has a default: both decide. */
export interface WithstandTemperatures {
  /** When the fault begins. */
  readonly initial: number;
  /** What the insulation, the connection or the metal may reach. */
  readonly final: number;
}

/** A fault of 0.1 s to 5 s. */
export interface WithstandFault {
  /** Symmetrical rms amperes. */
  readonly amperes: number;
  /** Seconds until the device has cleared. */
  readonly seconds: number;
}

/** What a device lets through, as its maker states it for the available current. The only way below 0.1 s. */
export interface WithstandLetThrough {
  /** Ampere-squared seconds. */
  readonly letThrough: number;
}

/** A conductor to be held against a fault. */
export interface ShortTimeWithstandInput {
  /** The conductor. */
  readonly conductor: WithstandConductorBySize | WithstandConductorByArea;
  /** Temperatures, in degrees Celsius. */
  readonly temperatures: WithstandTemperatures;
  /** The fault current and how long it flows, or what a device lets through. */
  readonly fault: WithstandFault | WithstandLetThrough;
}

const metals: readonly ConductorColumn[] = ["copper", "aluminum"];
const { limits } = withstandFacts;
/** Amperes, circular mils or ampere-squared seconds: below that a ratio would be beyond numbers. */
const least = 1e-9;
const mostLetThrough = limits.mostAmperes * limits.mostAmperes * limits.mostSeconds;

/** Checks the input of a short-time withstand; everything wrong is noted. */
export function readWithstandInput(at: Reader): ShortTimeWithstandInput | undefined {
  if (!readObject(at, ["conductor", "temperatures", "fault"])) return undefined;
  const conductor = readConductor(member(at, "conductor"));
  const temperatures = readTemperatures(
    member(at, "temperatures"),
    conductor && withstandFacts.metals[conductor.material].highestFinal,
  );
  const fault = readFault(member(at, "fault"));
  return conductor && temperatures && fault && { conductor, temperatures, fault };
}

function readConductor(at: Reader): ShortTimeWithstandInput["conductor"] | undefined {
  const byArea = has(at, "areaCircularMils");
  if (!readObject(at, byArea ? ["areaCircularMils", "material"] : ["size", "material"])) return undefined;
  const material = readOneOf(member(at, "material"), metals);
  if (byArea) {
    const areaCircularMils = readArea(member(at, "areaCircularMils"));
    return areaCircularMils === undefined || material === undefined
      ? undefined
      : { areaCircularMils, material };
  }
  const size = readSize(member(at, "size"));
  return size && material && { size, material };
}

function readArea(at: Reader): number | undefined {
  const area = readUpTo(at, "circular mils", limits.mostArea);
  if (area === undefined || Number.isInteger(area)) return area;
  return refuse(at, "not-a-whole-number", "whole circular mils", "round the area down");
}

function readTemperatures(at: Reader, highest: number | undefined): WithstandTemperatures | undefined {
  if (!readObject(at, ["initial", "final"])) return undefined;
  const most = highest ?? withstandFacts.metals.copper.highestFinal;
  const initial = readCelsius(member(at, "initial"), limits.lowestInitial, most - limits.leastRise);
  const least = (initial ?? limits.lowestInitial) + limits.leastRise;
  const final = readCelsius(member(at, "final"), least, most);
  return initial === undefined || final === undefined ? undefined : { initial, final };
}

function readCelsius(at: Reader, least: number, most: number): number | undefined {
  const expected = `degrees Celsius from ${least} to ${most}`;
  if (typeof at.value !== "number")
    return refuse(
      at,
      at.value === undefined ? "missing" : "wrong-type",
      expected,
      "name it; there is no default",
    );
  if (at.value >= least && at.value <= most) return at.value;
  return refuse(
    at,
    "out-of-range",
    expected,
    "the final temperature lies at least one degree above the initial one, and not above the melting point",
  );
}

function readFault(at: Reader): ShortTimeWithstandInput["fault"] | undefined {
  if (has(at, "letThrough")) {
    if (!readObject(at, ["letThrough"])) return undefined;
    const letThrough = readUpTo(member(at, "letThrough"), "ampere-squared seconds", mostLetThrough);
    return letThrough === undefined ? undefined : { letThrough };
  }
  if (!readObject(at, ["amperes", "seconds"])) return undefined;
  const amperes = readUpTo(member(at, "amperes"), "amperes", limits.mostAmperes);
  const seconds = readSeconds(member(at, "seconds"));
  return amperes === undefined || seconds === undefined ? undefined : { amperes, seconds };
}

function readSeconds(at: Reader): number | undefined {
  const seconds = readPositive(at, "seconds");
  if (seconds === undefined) return undefined;
  const expected = `from ${limits.leastSeconds} to ${limits.mostSeconds} seconds`;
  if (seconds < limits.leastSeconds)
    return refuse(
      at,
      "out-of-range",
      expected,
      "below that the asymmetry of the current decides: give the device's stated letThrough instead",
    );
  if (seconds > limits.mostSeconds)
    return refuse(at, "out-of-range", expected, "above that the conductor is not adiabatic");
  return seconds;
}

function readUpTo(at: Reader, what: string, most: number): number | undefined {
  const value = readPositive(at, what);
  if (value === undefined || (value >= least && value <= most)) return value;
  return refuse(at, "out-of-range", `a number of ${what} from ${least} to ${most}`, "check the unit");
}

function has(at: Reader, key: string): boolean {
  return typeof at.value === "object" && at.value !== null && Object.hasOwn(at.value, key);
}
