import { electrodeBondingJumper } from "../roles/electrode-bonding-jumper/index.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import type { Electrode } from "../rules/electrode.js";
import type { SizingResult } from "../rules/result.js";
import { servingAtConnection, wantsEachConnected } from "./derived-electrodes.js";
import {
  type DerivedInCode,
  type DrawnDerivedSystem,
  isBoundToSource,
  type JumperChoice,
  jumperChoices,
  wholeServing,
} from "./derived-system.js";
import type { InstallationInCode, ScheduledConductor } from "./schedule.js";
import {
  asElectrode,
  conductorServing,
  type DrawnElectrode,
  isOnCommon,
  racewayJumpersOf,
  servedBy,
} from "./schedule-electrodes.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type ServedResult, type Serving } from "./serving.js";
import { hasGroundedConductor } from "./supplies.js";

/** A common electrode conductor with the derived systems that tap it and the electrodes on it. */
interface Common extends InstallationInCode {
  readonly id: string;
  readonly systems: readonly DrawnDerivedSystem[];
  readonly electrodes: readonly DrawnElectrode[];
}

/** The common electrode conductors that several derived systems tap, each once, with the taps and what hangs on them. */
export function commonConductors({ installation, code }: InstallationInCode): readonly ScheduledConductor[] {
  const all = installation.derivedSystems ?? [];
  const ids = new Set(all.flatMap(({ commonElectrodeConductor: common }) => common?.id ?? []));
  return [...ids].flatMap((id) => {
    const systems = all.filter(({ commonElectrodeConductor: common }) => common?.id === id);
    const electrodes = systems.flatMap(({ electrodes: own = [] }) =>
      own.filter((one) => isOnCommon(one, own, id)),
    );
    const common: Common = { installation, code, id, systems, electrodes };
    return [...conductorsTo(common), ...systems.flatMap((system) => tapsOf(common, system))];
  });
}

/** The common conductor, as far as each electrode that it reaches itself, and the jumpers to those beyond. */
function conductorsTo(common: Common): readonly ScheduledConductor[] {
  const { installation, code, id, electrodes } = common;
  const conductor = { material: installation.materials.electrodeConductors };
  if (electrodes.length === 0) {
    const result = commonOfSystems(common, [{ kind: "other" }]);
    return [scheduled({ subject: id }, id, { kind: "electrodes" }, result)];
  }
  return electrodes.flatMap((electrode) => {
    const { id: end, from } = electrode;
    const served = servedBy(electrode, electrodes);
    const jumper = largestServed(
      common.systems.map((system) => wholeServing({ installation, code, system })),
      (supply) => electrodeBondingJumper.decide({ code, supply, conductor, electrodes: served }),
    );
    const made =
      from === id
        ? scheduled({ subject: end }, from, end, commonOfSystems(common, electrodes.map(asElectrode)))
        : scheduled({ subject: end }, from, end, jumper.result, { by: jumper.by });
    return [made, ...racewayJumpersOf(common, electrode, made)];
  });
}

/** The taps of a system: one from its jumper; from each jumper where there are several and each requires a connection. */
function tapsOf(common: Common, system: DrawnDerivedSystem): readonly ScheduledConductor[] {
  const { installation, code, id, electrodes } = common;
  const at: DerivedInCode = { installation, code, system };
  const served = electrodes
    .filter(({ from }) => from === id)
    .flatMap((electrode) => servedBy(electrode, electrodes));
  return jumperChoices(at).flatMap((arrangement) => {
    const { alternative } = arrangement;
    const places = tapPlaces(at, arrangement);
    return places.map((place) => {
      const { by, result } = tapOf(at, served, servingAtConnection(at, place, places));
      const who = { part: "tap", subject: place, ...(alternative && { alternative }) } as const;
      return scheduled(who, place, id, result, { by, system: system.id });
    });
  });
}

/** What decides a tap of a system. */
export function tapOf(
  { installation, code, system }: DerivedInCode,
  served: readonly Electrode[],
  serving: Serving,
): ServedResult {
  const { controlTransformer } = system.source;
  return conductorServing({ installation, code, system: "separately-derived" }, served, {
    servings: [serving],
    part: "tap",
    ...(controlTransformer && { controlTransformer }),
  });
}

/** The common electrode conductor of several systems, which has a fixed size. */
export function commonOfSystems(
  { installation, code }: InstallationInCode,
  electrodes: readonly Electrode[],
): SizingResult {
  return groundingElectrodeConductor.decide({
    code,
    system: "separately-derived",
    part: "common",
    conductor: { material: installation.materials.electrodeConductors },
    electrodes,
  });
}

/** Where the taps of a system start. */
function tapPlaces(at: DerivedInCode, arrangement: JumperChoice): readonly string[] {
  const { source, disconnects } = at.system;
  const inEnclosures =
    arrangement.jumperAt === "disconnects" && hasGroundedConductor(at.system) && !isBoundToSource(at);
  if (!inEnclosures) return [source.id];
  const places = disconnects.map(({ id }) => id);
  return wantsEachConnected(at, arrangement) ? places : places.slice(0, 1);
}
