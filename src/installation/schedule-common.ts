import { groundingElectrodeConductorFacts } from "../edition/tables/roles.generated.js";
import { commonConductorByMetal } from "../edition/tables/sections.generated.js";
import { electrodeBondingJumper } from "../roles/electrode-bonding-jumper/index.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import type { Electrode } from "../rules/electrode.js";
import { notRequired } from "../rules/finish.js";
import type { SizingResult } from "../rules/result.js";
import { commonOfOneSystem } from "./common-of-one-system.js";
import type { Alternative } from "./conductor-identity.js";
import { servingAtConnection, wantsEachConnected } from "./derived-electrodes.js";
import {
  type DerivedInCode,
  type DrawnDerivedSystem,
  isBoundToSource,
  type JumperChoice,
  jumperChoices,
  wholeServing,
} from "./derived-system.js";
import type { Installation } from "./document.js";
import { landingAtDerived } from "./electrode-landing.js";
import { type DrawnElectrode, electrodesOf, metalKind } from "./electrodes-of.js";
import { inMaterialsOf } from "./materials-of.js";
import type { InstallationInCode, ScheduledConductor } from "./schedule.js";
import {
  asElectrode,
  conductorServing,
  isOnCommon,
  racewayJumpersOf,
  servedBy,
  whoHangs,
} from "./schedule-electrodes.js";
import { ofSystem, scheduled } from "./scheduled.js";
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
    const electrodes = systems.flatMap((system) => {
      const own = electrodesOf(installation, system);
      return own.filter((one) => isOnCommon(one, own, id));
    });
    const own = systems.map(({ commonElectrodeConductor: conductor }) => conductor);
    const ofOne = systems.length === 1 ? systems : [];
    const common: Common = {
      ...inMaterialsOf({ installation, code }, ...ofOne, ...own),
      id,
      systems,
      electrodes,
    };
    // Arrangements exclude each other within their system, and only that of one system alone has a size in each.
    const itself = conductorsTo(common).flatMap((one) =>
      one.alternative === undefined ? [one] : ofSystem(systems[0]?.id ?? id, [one]),
    );
    return [...itself, ...systems.flatMap((system) => tapsOf(installation, common, system))];
  });
}

/** The common conductor, as far as each electrode that it reaches itself, and the jumpers to those beyond. */
function conductorsTo(common: Common): readonly ScheduledConductor[] {
  const { installation, code, id, electrodes } = common;
  const isMetal =
    metalKind(installation, id) !== undefined && !isAlwaysWire(code, "grounding-electrode-conductor");
  const itself = isMetal ? [metalInstead(common)] : [];
  if (electrodes.length === 0 && !isMetal) {
    return commonSizes(common, common, [{ kind: "other" }]).map(({ alternative, by, result }) =>
      scheduled({ subject: id, ...(alternative && { alternative }) }, id, { kind: "electrodes" }, result, {
        by,
      }),
    );
  }
  const reached = electrodes.flatMap((electrode) => {
    const { id: end, from } = electrode;
    const own = inMaterialsOf(common, electrode);
    const who = whoHangs(electrode);
    const made =
      from === id && !isMetal
        ? commonSizes(common, own, electrodes.map(asElectrode)).map(({ alternative, by, result }) =>
            scheduled({ ...who, ...(alternative && { alternative }) }, from, end, result, { by }),
          )
        : [jumperTo(common, own, electrode)];
    return made.flatMap((one) => [one, ...racewayJumpersOf(common, electrode, one)]);
  });
  return [...itself, ...reached];
}

/** The jumper to an electrode from another one, or from the metal that serves as the common conductor. */
function jumperTo(
  { code, systems }: Common,
  { installation }: Common,
  electrode: DrawnElectrode,
): ScheduledConductor {
  const conductor = { material: installation.materials.electrodeConductors };
  const served = servedBy(installation, electrode);
  const { by, result } = largestServed(
    systems.map((system) => wholeServing({ installation, code, system })),
    (supply) => electrodeBondingJumper.decide({ code, supply, conductor, electrodes: served }),
  );
  return scheduled(whoHangs(electrode), electrode.from, electrode.id, result, { by });
}

/** Says that water piping or a frame serves in place of a conductor. */
function metalInstead({ installation, code, id }: Common): ScheduledConductor {
  const result = notRequired(
    groundingElectrodeConductorFacts,
    code,
    installation.materials.electrodeConductors,
    "part-serves-as-electrode-conductor",
    commonConductorByMetal[code.year],
  );
  return scheduled({ subject: id }, id, { kind: "electrodes" }, result);
}

interface SizedCommon extends ServedResult {
  readonly alternative?: Alternative;
}

/**
 * The size of a common conductor: fixed where several systems tap it, or one at a single place, beside others that are not drawn; by its own
 * conductors where several jumpers of one system tap it. Where the arrangements of that one system differ in this, one for each.
 */
function commonSizes(
  { code, systems }: Common,
  { installation }: Common,
  electrodes: readonly Electrode[],
): readonly SizedCommon[] {
  const ofSeveral = (at: InstallationInCode): ServedResult => ({
    by: [],
    result: commonOfSystems(at, electrodes),
  });
  const [system, ...others] = systems;
  if (system === undefined || others.length > 0) return [ofSeveral({ installation, code })];
  const at: DerivedInCode = { installation, code, system };
  const choices = jumperChoices(at).map((arrangement) => ({
    ...(arrangement.alternative && { alternative: arrangement.alternative }),
    isOfOne: tapPlaces(at, arrangement).length > 1,
  }));
  const isAlike = choices.every(({ isOfOne }) => isOfOne === choices[0]?.isOfOne);
  return choices.slice(0, isAlike ? 1 : choices.length).map(({ alternative, isOfOne }) => ({
    ...(isOfOne ? commonOfOneSystem(at, electrodes, ofSeveral) : ofSeveral(at)),
    ...(!isAlike && alternative && { alternative }),
  }));
}

/** The taps of a system: one from its jumper; from each jumper where there are several and each requires a connection. */
function tapsOf(
  drawn: Installation,
  { code, id, electrodes }: Common,
  system: DrawnDerivedSystem,
): readonly ScheduledConductor[] {
  const at: DerivedInCode = { ...inMaterialsOf({ installation: drawn, code }, system), system };
  const served = electrodes
    .filter(({ from }) => from === id)
    .flatMap((electrode) => servedBy(drawn, electrode));
  return jumperChoices(at).flatMap((arrangement) => {
    const { alternative } = arrangement;
    const places = tapPlaces(at, arrangement);
    return places.map((place) => {
      const own = system.disconnects.find(({ id: of }) => of === place);
      const serving = servingAtConnection(at, place, places);
      const { by, result } = tapOf(inMaterialsOf(at, own), served, serving);
      const who = { part: "tap", subject: place, ...(alternative && { alternative }) } as const;
      return scheduled(who, landingAtDerived(system, place), id, result, { by, system: system.id });
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
export function tapPlaces(at: DerivedInCode, arrangement: JumperChoice): readonly string[] {
  const { source, disconnects } = at.system;
  const inEnclosures =
    arrangement.jumperAt === "disconnects" && hasGroundedConductor(at.system) && !isBoundToSource(at);
  if (!inEnclosures) return [source.id];
  const places = disconnects.map(({ id }) => id);
  return wantsEachConnected(at, arrangement) ? places : places.slice(0, 1);
}
