import { type Check, checkOf, type FoundConductor, type Installation, roleIds, scheduleOf } from "bondmil";

type Installed = NonNullable<Installation["installed"]>;

/** Something found, by the name that a schedule prints: its role, then what it serves. */
export function piece(name: string, size: string, parts: object = {}): FoundConductor {
  const role = roleIds.find((one) => name.startsWith(`${one} `));
  if (role === undefined) throw new TypeError(`no role begins ${name}`);
  return { role, of: name.slice(role.length + 1), size, material: "copper", ...parts } as FoundConductor;
}

/** The check of an installation of which so much was found. */
export function checkFound(
  installation: Installation,
  found: readonly FoundConductor[],
  parts: Installed = {},
): Check {
  return checkOf({ ...installation, installed: { found, ...parts } });
}

/** The check of an installation of which everything is as scheduled but what is listed. */
export function checkRest(installation: Installation, found: readonly FoundConductor[]): Check {
  return checkFound(installation, found, { rest: "as-scheduled" });
}

/** What is found: of each conductor what is wrong with it, and the circular mils or the number that it lacks. */
export function findings({
  findings: all,
}: Check): readonly (readonly [id: string, kind: string, by?: number])[] {
  return all.map(({ id, kind, shortBy, more }) => {
    const by = shortBy ?? (kind === "missing" ? null : more);
    return by === null ? [id, kind] : [id, kind, by];
  });
}

/** What a conductor comes to, with its reserve. */
export function verdict(
  { conductors }: Check,
  id: string,
): readonly [string | undefined, number | null | undefined] {
  const one = conductors.find((conductor) => conductor.id === id);
  return [one?.verdict, one?.reserve];
}

/** Everything that a schedule requires in one arrangement, listed as found one by one. */
export function foundAsScheduled(
  installation: Installation,
  alternative: "jumper-at-source" | "jumper-in-each-enclosure" = "jumper-at-source",
): readonly FoundConductor[] {
  return scheduleOf(installation)
    .conductors.filter((one) => one.quantity > 0 && [undefined, alternative].includes(one.alternative))
    .map(({ role, subject, place, quantity, result: { outcome, material, requiredArea } }) => {
      const form = outcome.kind === "conductor" ? { size: outcome.size } : { busArea: requiredArea };
      return { role, of: subject, ...(place !== undefined && { at: place }), ...form, material, quantity };
    });
}
