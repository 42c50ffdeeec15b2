import { sizeCommonConductorOfDerivedSystems } from "../rules/common-derived-electrode-conductor.js";
import { sizeElectrodeBondingJumper } from "../rules/electrode-bonding-jumper.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import { servingAtConnection, wantsEachConnected } from "./derived-electrodes.js";
import {
  type Arrangement,
  arrangementsOf,
  type DerivedInCode,
  type DrawnDerivedSystem,
  isBoundToSource,
  wholeServing,
} from "./derived-system.js";
import type { DrawingInCode, ScheduledConductor } from "./schedule.js";
import {
  asElectrode,
  type DrawnElectrode,
  isOnCommon,
  racewayJumpersOf,
  servedBy,
} from "./schedule-electrodes.js";
import { scheduled } from "./scheduled.js";
import { largestServed } from "./serving.js";
import { hasGroundedConductor } from "./supplies.js";

/** A common electrode conductor with the derived systems that tap it and the electrodes on it. */
interface Common extends DrawingInCode {
  readonly id: string;
  readonly systems: readonly DrawnDerivedSystem[];
  readonly electrodes: readonly DrawnElectrode[];
}

/** The common electrode conductors that several derived systems tap, each once, with the taps and what hangs on them. */
export function commonConductors({ drawing, code }: DrawingInCode): readonly ScheduledConductor[] {
  const all = drawing.derivedSystems ?? [];
  const ids = new Set(all.flatMap(({ commonElectrodeConductor: common }) => common?.id ?? []));
  return [...ids].flatMap((id) => {
    const systems = all.filter(({ commonElectrodeConductor: common }) => common?.id === id);
    const electrodes = systems.flatMap(({ electrodes: own = [] }) =>
      own.filter((one) => isOnCommon(one, own, id)),
    );
    const common: Common = { drawing, code, id, systems, electrodes };
    return [...conductorsTo(common), ...systems.flatMap((system) => tapsOf(common, system))];
  });
}

/** The common conductor, as far as each electrode that it reaches itself, and the jumpers to those beyond. */
function conductorsTo(common: Common): readonly ScheduledConductor[] {
  const { drawing, code, id, electrodes } = common;
  const conductor = { material: drawing.materials.electrodeConductors };
  if (electrodes.length === 0) {
    const result = sizeCommonConductorOfDerivedSystems({ code, conductor, electrodes: [{ kind: "other" }] });
    return [scheduled(`grounding-electrode-conductor ${id}`, id, "electrodes", result)];
  }
  return electrodes.flatMap((electrode) => {
    const { id: end, from } = electrode;
    const served = servedBy(electrode, electrodes);
    const jumper = largestServed(
      common.systems.map((system) => wholeServing({ drawing, code, system })),
      (supply) => sizeElectrodeBondingJumper({ code, supply, jumper: conductor, to: served }),
    );
    const made =
      from === id
        ? scheduled(
            `grounding-electrode-conductor ${end}`,
            from,
            end,
            sizeCommonConductorOfDerivedSystems({
              code,
              conductor,
              electrodes: electrodes.map(asElectrode),
            }),
          )
        : scheduled(`electrode-bonding-jumper ${end}`, from, end, jumper.result, { by: jumper.by });
    return [made, ...racewayJumpersOf(common, electrode, made)];
  });
}

/** The taps of a system: one from its jumper; from each jumper where there are several and each wants a connection. */
function tapsOf(common: Common, system: DrawnDerivedSystem): readonly ScheduledConductor[] {
  const { drawing, code, id, electrodes } = common;
  const at: DerivedInCode = { drawing, code, system };
  const served = electrodes
    .filter(({ from }) => from === id)
    .flatMap((electrode) => servedBy(electrode, electrodes));
  return arrangementsOf(at).flatMap((arrangement) => {
    const { alternative } = arrangement;
    const places = tapPlaces(at, arrangement);
    return places.map((place) => {
      const { by, supply } = servingAtConnection(at, place, places);
      const result = sizeGroundingElectrodeConductor({
        code,
        of: "separately-derived",
        supply,
        conductor: { material: drawing.materials.electrodeConductors },
        electrodes: served.length > 0 ? served : [{ kind: "other" }],
        part: "tap",
        ...(system.source.controlTransformer && { controlTransformer: true }),
      });
      const name = `${place}${alternative === undefined ? "" : ` (${alternative})`}`;
      const options = { by, system: system.id, ...(alternative && { alternative }) };
      return scheduled(`grounding-electrode-tap ${name}`, place, id, result, options);
    });
  });
}

/** Where the taps of a system start. */
function tapPlaces(at: DerivedInCode, arrangement: Arrangement): readonly string[] {
  const { source, disconnects } = at.system;
  const inEnclosures =
    arrangement.jumperAt === "disconnects" && hasGroundedConductor(at.system) && !isBoundToSource(at);
  if (!inEnclosures) return [source.id];
  const places = disconnects.map(({ id }) => id);
  return wantsEachConnected(at, arrangement) ? places : places.slice(0, 1);
}
