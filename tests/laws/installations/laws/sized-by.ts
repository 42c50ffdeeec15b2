import type { Installation, ScheduledConductor, Supply } from "bondmil";
import { askedOf, type Built, nameOf } from "../built.js";
import { countedSets, inOneOf, suppliesOf, together } from "../conductors.js";
import { isJumperInEach, racewaysOf } from "../parts.js";
import { asked } from "./asked.js";
import type { Law } from "./law.js";

/** Each conductor is what its sizing function gives for the conductors that it names. */
export const sizedByWhatItNames: Law = {
  name: "each conductor is what the sizing function gives for the conductors that it names",
  breaches: (built) =>
    built.schedule.conductors
      .filter(({ quantity }) => quantity > 0)
      .flatMap((one) => {
        const anew = asked(built, one, suppliedBy(built, one) ?? none);
        if (anew === null) return [];
        const { outcome } = anew;
        const quantity =
          (outcome.kind === "conductor" ? outcome.quantity : 1) * timesOf(built.installation, one);
        const same = { ...one, result: anew, quantity };
        return askedOf(same) === askedOf(one) && anew.governs === one.result.governs
          ? []
          : [`${nameOf(one)} is ${askedOf(one)}, the function says ${askedOf(same)}`];
      }),
};

/** The sum that a conductor goes by adds the conductors of the runs that it names, and no others. */
export const sumOfWhatItNames: Law = {
  name: "the sum that a conductor goes by adds the conductors of the runs that it names",
  breaches: ({ installation, schedule }) => {
    const supplies = suppliesOf(installation);
    return schedule.conductors.flatMap((one) => {
      const sum = sumIn(one);
      const by = one.by;
      if (by.length === 0 || sum === undefined) return [];
      const unknown = by.filter((id) => !supplies.has(id));
      if (unknown.length > 0)
        return [`${nameOf(one)} goes by ${unknown.join(", ")}, which has no conductors`];
      const whole = together(by.flatMap((id) => supplies.get(id) ?? []));
      const parts = [1, 2, 3, 4].filter((n) => whole.sets.every(({ count }) => count % n === 0));
      const isKnown = parts.some((n) => countedSets(inOneOf(n, whole)) === countedSets(sum));
      return isKnown ? [] : [`${nameOf(one)} adds ${countedSets(sum)}, its runs hold ${countedSets(whole)}`];
    });
  },
};

/** How many alike there are: one in each raceway or cable, where each has its own. */
function timesOf(installation: Installation, { id, role }: ScheduledConductor): number {
  const subject = id.slice(role.length + 1).replace(/ \(.*\)$/, "");
  if (role === "equipment-grounding-conductor")
    return installation.circuits?.find((one) => one.id === subject)?.raceways ?? 1;
  const systems = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])];
  const system = systems.find(({ runs }) => runs.some((run) => run.id === subject));
  const run = system?.runs.find((one) => one.id === subject);
  if (system === undefined || run === undefined) return 1;
  const { count } = racewaysOf(run);
  return role === "grounded-conductor" || isJumperInEach(run, "utility" in system) ? count : 1;
}

/** For roles that no conductors size. */
const none: Supply = { sets: [{ count: 1, size: "14 AWG", material: "copper" }] };

function sumIn({ result }: ScheduledConductor): Supply | undefined {
  const sums = result.steps.flatMap((step) => (step.kind === "sum" ? [step.supply] : []));
  return [...sums].sort((a, b) => b.sets.length - a.sets.length)[0];
}

/** The conductors that a scheduled one names: by its runs, else those drawn with it, else those in its sum. */
function suppliedBy({ installation }: Built, one: ScheduledConductor): Supply | undefined {
  const supplies = suppliesOf(installation);
  const by = one.by.flatMap((id) => supplies.get(id) ?? []);
  if (by.length > 0) return together(by);
  return supplies.get(drawnWith(installation, one)) ?? sumIn(one);
}

/** The run in which a conductor lies, or the feeder or run to the building to whose piping it goes. */
function drawnWith(
  { piping = [], buildings = [], derivedSystems = [] }: Installation,
  { subject, place }: ScheduledConductor,
): string {
  const pipe = piping.find(
    (one) =>
      one.id === subject ||
      ("removable" in one && one.removable?.some(({ id: own }) => own === subject) === true),
  );
  const owner = place ?? (pipe?.kind === "water" ? [pipe.of].flat()[0] : undefined);
  const building = buildings.find(({ id }) => id === owner);
  const run = derivedSystems.flatMap(({ runs }) => runs).find(({ to }) => to === building?.disconnect);
  return building?.circuit ?? (building === undefined ? undefined : run?.id) ?? subject;
}
