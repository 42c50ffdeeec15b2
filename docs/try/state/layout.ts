import type { Member } from "./fields.js";

/** Members that need not be given and are shown all the same; the others are behind "More". */
const shown = new Set([
  ...["services", "derivedSystems", "circuits", "piping", "structuralMetal", "buildings", "installed"],
  ...["boxes", "electrodes", "electrodesNotConnected", "commonElectrodeConductor"],
  ...["raceways", "racewayJumpers", "lengthFeet", "device", "exception", "conductors"],
  ...["of", "at", "size", "material", "quantity", "found", "rest"],
]);

/** Members that belong to the file and not to the building. */
const hidden = new Set(["$schema", "format"]);

const order = ["id", "title", "code", "materials", "services", "derivedSystems", "circuits"];

/** The members of an object as the form shows them: those at hand, and those behind "More". */
export function laidOut(members: readonly Member[]): {
  readonly first: readonly Member[];
  readonly more: readonly Member[];
} {
  const seen = members.filter(
    ({ name, schema, isRequired }) => !hidden.has(name) && !(isRequired && schema.const !== undefined),
  );
  const rank = ({ name }: Member): number => {
    const place = order.indexOf(name);
    return place < 0 ? order.length : place;
  };
  const ordered = [...seen].sort((a, b) => rank(a) - rank(b));
  const isFirst = ({ name, isRequired }: Member): boolean => isRequired || shown.has(name);
  return { first: ordered.filter(isFirst), more: ordered.filter((one) => !isFirst(one)) };
}
