import { conductorColumns, isConductorSize, materials } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import {
  member,
  optional,
  type Reader,
  readList,
  readName,
  readObject,
  readOneOf,
  readPositive,
  refuse,
} from "../input/reader.js";
import {
  type Amendment,
  type AmendmentCitation,
  type AmendmentCondition,
  type Circumstances,
  electrodeKinds,
} from "./amendment.js";
import { type Own, refuseSenseless } from "./refuse-senseless.js";
import { roles } from "./role.js";
import { type Readings, readingFacts } from "./tables/readings.generated.js";

/** Kinds of amendments, a closed set. */
export const amendmentKinds = ["cell", "floor", "basis", "reading", "material", "always-wire"] as const;

const mostAmendments = 100;

/** Checks a list of amendments in an input. */
export function readAmendments(at: Reader): readonly Amendment[] | undefined {
  if (Array.isArray(at.value) && at.value.length > mostAmendments) {
    return refuse(
      at,
      "out-of-range",
      `at most ${mostAmendments} amendments`,
      "leave out those of other places",
    );
  }
  return Array.isArray(at.value) && at.value.length === 0 ? [] : readList(at, readAmendment);
}

/** Checks what is known of the place. */
export function readCircumstances(at: Reader): Circumstances | undefined {
  if (!readObject(at, ["lengthFeet", "location", "serviceAmperes"])) return undefined;
  const lengthFeet = optional(member(at, "lengthFeet"), (one) => readPositive(one, "feet"));
  const location = optional(member(at, "location"), (one) => readName(one, "the location"));
  const serviceAmperes = optional(member(at, "serviceAmperes"), (one) => readPositive(one, "amperes"));
  return {
    ...(lengthFeet && { lengthFeet }),
    ...(location && { location }),
    ...(serviceAmperes && { serviceAmperes }),
  };
}

/** Checks one amendment in an input. */
export function readAmendment(at: Reader): Amendment | undefined {
  const kind = readOneOf(member(at, "kind"), amendmentKinds);
  if (kind === undefined || !readObject(at, ["kind", "citation", "when", ...keysOf[kind]])) return undefined;
  const citation = readCitation(member(at, "citation"));
  const when = optional(member(at, "when"), readCondition);
  const own = readOwn(at, kind);
  if (own !== undefined) refuseSenseless(at, own);
  return own && citation && { ...own, citation, ...(when && { when }) };
}

const keysOf: Readonly<Record<Amendment["kind"], readonly string[]>> = {
  cell: ["table", "row", "column", "size"],
  floor: ["role", "copper", "aluminum"],
  basis: ["role", "use", "electrode"],
  reading: ["reading", "alternative"],
  material: ["role", "material", "allowedFrom"],
  "always-wire": ["role"],
};

function readOwn(at: Reader, kind: Amendment["kind"]): Own | undefined {
  switch (kind) {
    case "cell":
      return readCell(at);
    case "floor":
      return readFloor(at);
    case "basis": {
      const role = readOneOf(member(at, "role"), roles);
      const use = readOneOf(member(at, "use"), [
        "no-increase",
        "no-electrode-ceiling",
        "equipment-grounding-table",
      ]);
      const electrode = optional(member(at, "electrode"), (one) => readOneOf(one, electrodeKinds));
      return role && use && { kind, role, use, ...(electrode && { electrode }) };
    }
    case "reading":
      return readReading(at);
    case "material": {
      const role = readOneOf(member(at, "role"), [...roles, "every-role"]);
      const material = readOneOf(member(at, "material"), materials);
      const allowedFrom = optional(member(at, "allowedFrom"), readSize);
      return role && material && { kind, role, material, ...(allowedFrom && { allowedFrom }) };
    }
    case "always-wire": {
      const role = readOneOf(member(at, "role"), roles);
      return role && { kind, role };
    }
  }
}

function readCell(at: Reader): Own | undefined {
  const table = readOneOf(member(at, "table"), [
    "electrode-conductor",
    "bonding-conductor",
    "equipment-grounding",
  ]);
  const column = readOneOf(member(at, "column"), conductorColumns);
  const size = readSize(member(at, "size"));
  const row = readRow(member(at, "row"), table === "equipment-grounding");
  return table && column && size && row !== undefined
    ? { kind: "cell", table, row, column, size }
    : undefined;
}

function readRow(at: Reader, byRating: boolean): string | number | undefined {
  if (byRating) return readPositive(at, "amperes, as the table's row has them");
  if (
    typeof at.value === "string" &&
    (at.value === "last" || isConductorSize(at.value) || /^\d+ kcmil$/.test(at.value))
  ) {
    return at.value;
  }
  return refuse(
    at,
    "unknown-value",
    'the row\'s largest copper supply size, or "last"',
    "name the row as the table does",
  );
}

function readFloor(at: Reader): Own | undefined {
  const role = readOneOf(member(at, "role"), roles);
  const sizes = [member(at, "copper"), member(at, "aluminum")] as const;
  if (sizes.every(({ value }) => value === undefined)) {
    return refuse(at, "missing", "a size for copper or for aluminum", "a floor names at least one");
  }
  const [copper, aluminum] = sizes.map((size) => optional(size, readSize));
  return role && { kind: "floor", role, ...(copper && { copper }), ...(aluminum && { aluminum }) };
}

function readReading(at: Reader): Own | undefined {
  const ids = Object.keys(readingFacts) as (keyof Readings)[];
  const reading = readOneOf(member(at, "reading"), ids);
  if (reading === undefined) return undefined;
  const alternative = readOneOf(member(at, "alternative"), Object.keys(readingFacts[reading].policy));
  return alternative === undefined ? undefined : { kind: "reading", reading, alternative };
}

function readCitation(at: Reader): AmendmentCitation | undefined {
  if (!readObject(at, ["jurisdiction", "section", "url"])) return undefined;
  const jurisdiction = readName(member(at, "jurisdiction"), "the jurisdiction");
  const section = readName(member(at, "section"), "the section or ordinance");
  const url = optional(member(at, "url"), (one) => readName(one, "the address"));
  return jurisdiction && section ? { jurisdiction, section, ...(url && { url }) } : undefined;
}

function readCondition(at: Reader): AmendmentCondition | undefined {
  const keys = [
    "lengthBelowFeet",
    "lengthFromFeet",
    "location",
    "serviceFromAmperes",
    "serviceThroughAmperes",
  ] as const;
  if (!readObject(at, keys)) return undefined;
  const numbers = (
    ["lengthBelowFeet", "lengthFromFeet", "serviceFromAmperes", "serviceThroughAmperes"] as const
  ).flatMap((key) => {
    const value = optional(member(at, key), (one) =>
      readPositive(one, key.endsWith("Feet") ? "feet" : "amperes"),
    );
    return value === undefined ? [] : [[key, value] as const];
  });
  const location = optional(member(at, "location"), (one) => readName(one, "the location"));
  return { ...Object.fromEntries(numbers), ...(location && { location }) };
}
