import { equallyNear } from "../../input/nearest.js";
import { idsMeant } from "../dangling.js";
import type { Installation } from "../document.js";
import { type Fault, fault, type Keys } from "../fault.js";
import { allIds } from "../ids.js";
import type { FoundConductor } from "./shape.generated.js";

/** Ids among which a near one is looked for. */
const mostCompared = 1000;

/** References of what is installed that point nowhere, and entries that lack a member or contradict themselves. */
export function installedFaults(installation: Installation): readonly Fault[] {
  const { found = [], asScheduled = [] } = installation.installed ?? {};
  if (found.length === 0 && asScheduled.length === 0) return [];
  const known = new Set(namesOf(installation));
  const check = (keys: Keys, id: string | undefined): readonly Fault[] =>
    id === undefined || known.has(id) ? [] : [dangling(keys, id, [...known])];
  return [
    ...found.flatMap((one, i) => {
      const at = ["installed", "found", i];
      return [
        ...check([...at, "of"], one.of),
        ...check([...at, "at"], one.at),
        ...(one.servesAlso ?? []).flatMap((other, n) => [
          ...check([...at, "servesAlso", n, "of"], other.of),
          ...check([...at, "servesAlso", n, "at"], other.at),
        ]),
        ...formFaults(one, at),
        ...connectionFaults(one, at),
      ];
    }),
    ...asScheduled.flatMap((id, i) => check(["installed", "asScheduled", i], id)),
  ];
}

/** Whatever has a name in an installation: what has an id, and the ends of circuits. */
function namesOf(installation: Installation): readonly string[] {
  const { circuits = [], generators = [], derivedSystems = [], loadSideJumpers = [] } = installation;
  return [
    ...allIds(installation).map(({ id }) => id),
    ...derivedSystems.flatMap(({ commonElectrodeConductor: common }) => common?.id ?? []),
    ...circuits.map(({ to }) => to),
    ...generators.map(({ to }) => to),
    ...loadSideJumpers.flatMap(({ from, to }) => [from, to]),
  ];
}

function dangling(keys: Keys, id: string, known: readonly string[]): Fault {
  const near = equallyNear(id, known.slice(0, mostCompared));
  const expected = idsMeant(near.length > 0 ? near : known);
  const advice = near.length > 0 ? "correct it" : "name something that is there, or draw what was found";
  return fault("dangling-reference", keys, expected, id, advice, near);
}

/** A conductor is a wire, a bus, or something that stands in its place. */
function formFaults(
  { size, busArea, instead, material, quantity }: FoundConductor,
  at: Keys,
): readonly Fault[] {
  const forms = [size, busArea, instead].filter((one) => one !== undefined);
  if (forms.length === 0) {
    const advice = "say what was found: a wire by its size, a bus by its area, or what stands in its place";
    return [fault("missing", [...at, "size"], "size, busArea or instead", undefined, advice)];
  }
  if (forms.length > 1) {
    const given = { ...(size && { size }), ...(busArea && { busArea }), ...(instead && { instead }) };
    const keys = [...at, Object.keys(given)[1] ?? "size"];
    return [
      fault(
        "unknown-key",
        keys,
        "one of size, busArea and instead",
        given,
        "list each as an entry of its own",
      ),
    ];
  }
  if (instead === undefined) {
    return material === undefined
      ? [fault("missing", [...at, "material"], "the material", undefined, "give it; it decides the size")]
      : [];
  }
  return Object.entries({ material, quantity }).flatMap(([key, value]) =>
    value === undefined
      ? []
      : [
          fault(
            "unknown-key",
            [...at, key],
            `no ${key} of what stands in place of a conductor`,
            value,
            "remove it",
          ),
        ],
  );
}

/** Whether a connection of the grounded conductor is permitted hangs on its place alone. */
function connectionFaults(
  { connectsGroundedConductor: connects, at: place }: FoundConductor,
  at: Keys,
): readonly Fault[] {
  if (connects !== true || place !== undefined) return [];
  const advice = "say where it connects the grounded conductor; whether that is permitted hangs on the place";
  return [fault("missing", [...at, "at"], "the place where it was found", undefined, advice)];
}
