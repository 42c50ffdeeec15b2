import type { Leaving } from "./exits.js";
import type { Frame } from "./frame.js";
import type { Marked } from "./group.js";
import { isAtBar, landsOnGrounded, portOf } from "./ports.js";
import type { Branch } from "./tree.js";
import { isThere } from "./write.js";

/** Conductors of a place by where they are drawn. */
export interface Within {
  readonly toBar: readonly Marked[];
  readonly toMetal: readonly Marked[];
  readonly missing: readonly Marked[];
  readonly leaving: readonly Leaving[];
}

/** Conductors inside a place by where they go: from the grounded conductor to bar or metal, or out to something else. */
export function sortInside(inside: readonly Marked[], leaving: readonly Leaving[]): Within {
  const there = inside.filter(isThere);
  const across = there.filter(({ conductor }) => conductor.role === "impedance-bonding-jumper");
  const ofElectrodes = there.filter(
    ({ conductor }) => conductor.from.kind === "grounding-electrode-conductor",
  );
  const jumpers = there.filter((one) => !across.includes(one) && !ofElectrodes.includes(one));
  const toBar = jumpers.filter(
    (one) =>
      portOf(one, one.conductor.to) === "grounding" || one.conductor.from.kind === "grounded-conductor",
  );
  return {
    toBar,
    toMetal: jumpers.filter((one) => !toBar.includes(one)),
    missing: inside.filter((one) => !isThere(one)),
    leaving: [
      ...leaving,
      ...across.map((marked): Leaving => {
        const { from } = marked.conductor;
        return {
          marked,
          around: [],
          to: from.kind === "place" ? from.id : "first disconnect",
          kind: "place",
          port: "grounded",
          isToElectrode: false,
        };
      }),
      ...ofElectrodes.map(
        (marked): Leaving => ({
          marked,
          around: [],
          to: "grounding electrode conductor",
          kind: "electrode-conductor",
          port: "metal",
          isToElectrode: false,
        }),
      ),
    ],
  };
}

/** Whether no jumper but the grounded conductor itself bonds the metal of a place. */
export function isBondedByGrounded({ place, link }: Branch): boolean {
  return (
    place.isBondedByGrounded === true ||
    link?.conductors.some(({ conductor: { result } }) => {
      const { outcome } = result;
      return outcome.kind === "not-required" && outcome.why === "grounded-conductor-is-fault-path";
    }) === true
  );
}

/** Whether the grounded conductor lands on a bar in a place, and does not only pass through. */
export function isWithBar(
  { place, exits, children, leaves }: Branch,
  { arriving, starts }: Frame,
  { toBar }: Within,
): boolean {
  const ends = [
    ...arriving.flatMap(({ marked, column }) =>
      marked !== undefined && column === "grounded" ? [marked.conductor.to] : [],
    ),
    ...exits.flatMap(({ conductors }) => conductors.map(({ conductor }) => conductor.from)),
    ...[...children, ...leaves].flatMap(
      ({ link }) => link?.conductors.map(({ conductor }) => conductor.from) ?? [],
    ),
  ];
  const passes = ends.some((end) => end.kind === "place" && end.on === "grounded-conductor");
  if (ends.some((end) => end.kind === "place" && isAtBar(end) && landsOnGrounded(end))) return true;
  return (
    toBar.length > 0 ||
    (!passes &&
      place.symbol !== "meter" &&
      (starts.has("grounded") || arriving.some((one) => one.column === "grounded" && one.end === "grounded")))
  );
}
