import { kindOfSource } from "../systems/system-classification.js";
import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { type Origin, originsOf } from "./origins.js";
import { hasGroundedConductor } from "./supplies.js";

type TransferSwitch = NonNullable<Installation["transferSwitches"]>[number];
type Named = { readonly given: TransferSwitch; readonly place: number };

/**
 * Sources whose kind of system and transfer switch contradict each other: a switch that carries the grounded conductor through makes no separately
 * derived system, any other does.
 */
export function transferFaults(installation: Installation): readonly Fault[] {
  const { transferSwitches = [], generators = [], derivedSystems = [], circuits = [] } = installation;
  if (transferSwitches.length === 0) return [];
  const switches = new Map(transferSwitches.map((given, place) => [given.id, { given, place }]));
  const originOf = originsOf(installation);
  const derived = new Map(derivedSystems.map((one) => [one.id, one]));
  return [
    ...generators.flatMap(({ to }, i) => tiedFaults(switches.get(to), ["generators", i, "to"])),
    ...derivedSystems.flatMap((system, i) => {
      const named = switches.get(system.transferSwitch ?? "");
      return derivedFaults(named, system, ["derivedSystems", i, "transferSwitch"]);
    }),
    ...circuits.flatMap(({ from, to }, i) => {
      const named = switches.get(to);
      const origin: Origin | undefined = named && originOf(from);
      const system = derived.get(origin?.id ?? "");
      const keys = ["circuits", i, "to"];
      if (origin?.kind === "generator") return tiedFaults(named, keys);
      return system === undefined ? [] : derivedFaults(named, system, keys);
    }),
  ];
}

function tiedFaults(named: Named | undefined, keys: Keys): readonly Fault[] {
  if (named === undefined || kindWith(named.given) === "not-separately-derived") return [];
  const { given, place } = named;
  const how =
    given.groundedConductor === "switched" ? "switches the grounded conductor" : "has no grounded conductor";
  const expected = "a transfer switch that carries the grounded conductor through";
  const advice = `"${given.id}" ${how}, which makes the generator a separately derived system: move it to derivedSystems, or mend transferSwitches[${place}].groundedConductor`;
  return [fault("unknown-value", keys, expected, given.id, advice)];
}

function derivedFaults(
  named: Named | undefined,
  { source, grounding, transferSwitch }: NonNullable<Installation["derivedSystems"]>[number],
  keys: Keys,
): readonly Fault[] {
  if (named === undefined || source.kind === "transformer" || !hasGroundedConductor({ grounding })) return [];
  const { given, place } = named;
  const isSaidBefore = keys[0] === "circuits" && transferSwitch === given.id;
  if (isSaidBefore || kindWith(given) === "separately-derived") return [];
  const expected = "a transfer switch that does not carry the grounded conductor through";
  const advice = `"${given.id}" carries it through, so that "${source.id}" is not separately derived: move it to generators, or mend transferSwitches[${place}].groundedConductor`;
  return [fault("unknown-value", keys, expected, given.id, advice)];
}

function kindWith({ groundedConductor }: TransferSwitch): ReturnType<typeof kindOfSource> {
  return kindOfSource({
    source: { kind: "generator", overcurrentDevice: "integral" },
    grounding: "solidly-grounded",
    ...(groundedConductor === "none"
      ? { groundedConductorSolidlyConnected: false }
      : { transferSwitch: { switchesGroundedConductor: groundedConductor === "switched" } }),
  });
}
