import { areaOf, type ConductorSize } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import { type Code, readCode } from "../edition/index.js";
import { intersystemLeast } from "../edition/tables/named-sizes.generated.js";
import {
  busbarFollowsElectrodeConductor,
  intersystemBusbarExists,
  intersystemExcusedWhereUnlikely,
} from "../edition/tables/placements.generated.js";
import { intersystemBusbar, intersystemTermination } from "../edition/tables/sections.generated.js";
import {
  member,
  optional,
  type Reader,
  readAll,
  readFlag,
  readObject,
  readOneOf,
  refuse,
} from "../input/reader.js";
import type { NamedSizeStep } from "../sizing/index.js";
import { floorStep, limited } from "../sizing/limits.js";
import { finish, notRequired } from "./finish.js";
import type { SizingResult } from "./result.js";

/** The copper conductor that ties an intersystem bonding termination to the grounding of the building. */
export interface IntersystemConductorInput {
  readonly code: Code;
  /** A termination mounted on and connected to an enclosure or raceway, one set apart, or a busbar (from 2017). */
  readonly termination: "on-enclosure" | "apart" | "busbar";
  /** Largest grounding electrode conductor that lands on the busbar, if one does; only a busbar has one. */
  readonly electrodeConductorOnBusbar?: ConductorSize;
  /** Whether communications systems are unlikely to be used here; they are likely unless told. */
  readonly communicationsUnlikely?: boolean;
}

/**
 * Sizes the conductor to an intersystem bonding termination (250.94): at least 6 AWG copper, and only where the termination is not
 * itself mounted on and connected to an enclosure or raceway. From 2023 the tie of a busbar also follows the largest grounding
 * electrode conductor on it.
 *
 * @param input - the code and how the termination is made
 * @returns the size, or why no conductor is required
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeIntersystemBondingConductor } from "bondmil";
 * const conductor = sizeIntersystemBondingConductor({ code: { year: "2017" }, termination: "apart" });
 * conductor.outcome; // => { kind: "conductor", size: "6 AWG", quantity: 1 }
 * ```
 */
export function sizeIntersystemBondingConductor(input: IntersystemConductorInput): SizingResult {
  const { code, termination, electrodeConductorOnBusbar, communicationsUnlikely } = readAll(input, readInput);
  const { year } = code;
  const citation = termination === "busbar" ? intersystemBusbar[year] : intersystemTermination[year];
  if (communicationsUnlikely === true && intersystemExcusedWhereUnlikely[year]) {
    return notRequired(role, code, "copper", "communications-unlikely", citation);
  }
  if (termination === "on-enclosure")
    return notRequired(role, code, "copper", "termination-on-enclosure", citation);
  const least = intersystemLeast[year];
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "code",
    size: least.copper,
    requiredArea: areaOf(least.copper),
    citation: least.citation,
  };
  const followed = busbarFollowsElectrodeConductor[year] ? electrodeConductorOnBusbar : undefined;
  const floors = followed === undefined ? [] : [floorStep(followed, intersystemBusbar[year], "least-size")];
  const isUnlikely = communicationsUnlikely === true;
  const isInferred = termination === "busbar" && !busbarFollowsElectrodeConductor[year];
  return finish(code, () => ({
    role,
    code,
    material: "copper",
    steps: [step, ...floors],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, [], floors),
    citation,
    cautions: [
      ...(isInferred ? [{ code: "busbar-tie-inferred", section: citation.section } as const] : []),
      ...(isUnlikely ? [{ code: "not-excused-in-this-edition", section: citation.section } as const] : []),
    ],
  }));
}

const role = "intersystem-bonding-conductor";

function readInput(at: Reader): IntersystemConductorInput | undefined {
  if (!readObject(at, ["code", "termination", "electrodeConductorOnBusbar", "communicationsUnlikely"]))
    return undefined;
  const code = readCode(member(at, "code"));
  const place = member(at, "termination");
  const termination = readOneOf(place, ["on-enclosure", "apart", "busbar"]);
  const onBusbar = optional(member(at, "electrodeConductorOnBusbar"), readSize);
  const unlikely = optional(member(at, "communicationsUnlikely"), (one) =>
    readFlag(one, "whether communications systems are unlikely"),
  );
  if (code === undefined || termination === undefined) return undefined;
  if (termination === "busbar" && !intersystemBusbarExists[code.year]) {
    return refuse(
      place,
      "unknown-value",
      '"on-enclosure" or "apart"',
      `the ${code.year} edition knows no busbar here`,
    );
  }
  if (termination !== "busbar" && onBusbar !== undefined) {
    return refuse(
      member(at, "electrodeConductorOnBusbar"),
      "unknown-value",
      "nothing",
      "only a busbar follows the electrode conductor on it",
    );
  }
  return {
    code,
    termination,
    ...(onBusbar && { electrodeConductorOnBusbar: onBusbar }),
    ...(unlikely === undefined ? {} : { communicationsUnlikely: unlikely }),
  };
}
