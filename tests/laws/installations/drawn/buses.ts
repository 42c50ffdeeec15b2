import type { Dice } from "../dice.js";
import type { Service } from "../parts.js";

/** Now and then the service disconnects of a service are sections on one bus, to which the run of the first leads. */
export function withBus(dice: Dice, service: Service): Service {
  if (!dice.chance(12)) return service;
  const id = `${service.id}K`;
  const own = service.disconnects.filter(({ designation }) => designation === "service-disconnect");
  const [first] = own;
  const sections = new Set(own.map((one) => one.id));
  const runs = service.runs.flatMap((run) => {
    if (!sections.has(run.to)) return [run];
    return run.to === first?.id ? [{ ...run, to: id }] : [];
  });
  return {
    ...service,
    buses: [{ id, ...(dice.chance(50) && { jumperForm: "bus" }) }],
    runs,
    disconnects: service.disconnects.map((one) => (sections.has(one.id) ? { ...one, bus: id } : one)),
  };
}
