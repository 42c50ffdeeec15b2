import type { Built } from "../built.js";
import { type Derived, isGrounded, racewaysOf, type Service } from "../parts.js";
import type { Law } from "./law.js";

/**
 * A grounded conductor is connected to ground where 250.24, 250.28 and 250.30 permit it and nowhere else, or a violation says so:
 * once in each service disconnect or once in a listed assembly; of a derived system at the source or in its enclosures.
 */
export const jumperPlaces: Law = {
  name: "jumpers are where they are permitted, or a violation says so",
  breaches: (built) => {
    const { services = [], derivedSystems = [] } = built.installation;
    const wanted = [
      ...services.flatMap((service) => mainJumpers(built, service)),
      ...derivedSystems.flatMap((system) => systemJumpers(built, system)),
    ];
    const drawn = built.schedule.conductors
      .filter(({ role, quantity }) => jumperRoles.includes(role) && quantity > 0)
      .map(({ id, quantity, alternative }) =>
        `${id} ${alternative ?? ""}${quantity === 1 ? "" : quantity}`.trim(),
      );
    return [
      ...drawn.filter((one) => !wanted.includes(one)).map((one) => `${one} may not be there`),
      ...wanted.filter((one) => !drawn.includes(one)).map((one) => `${one} is not there`),
      ...derivedSystems.flatMap((system) => unsaid(built, system)),
    ];
  },
};

const jumperRoles: readonly string[] = ["main-bonding-jumper", "system-bonding-jumper"];

function mainJumpers({ installation }: Built, service: Service): readonly string[] {
  if (!isGrounded(service)) return [];
  const { id, disconnects, housing } = service;
  const own = disconnects.filter(
    ({ designation, bus }) => designation === "service-disconnect" && bus === undefined,
  );
  const since2020 = installation.code.year >= "2020";
  const sources = disconnects.filter(({ designation }) => designation === "supply-side-source" && since2020);
  const isAssembly = housing === "listed-assembly" && own.length > 1;
  const places = [...(isAssembly ? [{ id }] : own), ...sources, ...(service.buses ?? [])].map(
    (one) => one.id,
  );
  return places.map((place) => `main-bonding-jumper ${place}`);
}

function systemJumpers({ installation }: Built, system: Derived): readonly string[] {
  if (!isGrounded(system)) return [];
  const { source, disconnects, jumperAt } = system;
  const at = (place: string, alternative = ""): string =>
    `system-bonding-jumper ${place} ${alternative}`.trim();
  const enclosures = (alternative = "") => disconnects.map(({ id }) => at(id, alternative));
  switch (jumperAt) {
    case "source":
      return [at(source.id)];
    case "disconnects":
      return enclosures();
    case "both-ends":
      return [at(source.id), ...enclosures()];
    case "compare":
      return isBound(installation.code.year, system)
        ? [at(source.id)]
        : [at(source.id, "jumper-at-source"), ...enclosures("jumper-in-each-enclosure")];
  }
}

/** From 2011 the jumper of an outdoor source is at the source, 250.30(A)(1) and (C); always that of one whose first disconnect is its own. */
function isBound(year: string, { source }: Derived): boolean {
  return (source.outdoors && year >= "2011") || source.deviceAmperes !== undefined;
}

/** Where an arrangement that is not permitted is drawn without a violation at one of its places, or a permitted one with it. */
function unsaid({ installation, schedule }: Built, system: Derived): readonly string[] {
  if (!isGrounded(system)) return [];
  const { id, source, disconnects, jumperAt, runs } = system;
  const { year } = installation.code;
  const places = [id, source.id, ...disconnects.map((one) => one.id), ...runs.map((one) => one.id)];
  const isSaid = schedule.violations.some(
    ({ code, at }) => code === "jumper-not-permitted-here" && at.some((place) => places.includes(place)),
  );
  const isParallel = runs.some((run) => racewaysOf(run, system).kind.endsWith("-metal"));
  const isAnySource = year < "2014" || source.outdoors;
  const isPermitted =
    jumperAt === "both-ends"
      ? isAnySource && !isParallel && source.deviceAmperes === undefined && disconnects.length === 1
      : jumperAt !== "disconnects" || !isBound(year, system);
  if (isPermitted === !isSaid) return [];
  return [
    `${id} with jumpers at ${jumperAt}: ${isPermitted ? "permitted, but marked" : "not permitted, but not marked"}`,
  ];
}
