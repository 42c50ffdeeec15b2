import {
  type EditionYear,
  InputError,
  type StandardSize,
  supplyCandidates,
  type TemperatureColumn,
} from "bondmil";
import { expect, it } from "vitest";
import { openDatabase, rowsOf, type SqlRow } from "../../corpus/tools/sql/database.js";

/** The whole grid is asked in `npm run proof`; in `npm test` every so manieth question, coprime to whatever is asked. */
const isWhole = process.env["WHOLE_GRID"] === "true";
const everyNth = isWhole ? 1 : 83;
const database = await openDatabase([]);

/** A question of the grid, as the table has it. */
type Asked = readonly [
  id: number,
  edition: EditionYear,
  continuous: number,
  other: number,
  listed: 0 | 1,
  device: number | null,
  system: "service" | "feeder" | "separately-derived",
  smallest: StandardSize | null,
  largest: StandardSize | null,
  terminations: TemperatureColumn | null,
  mostSetsInRaceway: number,
  ambient: number,
  insulation: "THW" | "THHN",
];

/** Conductors of a set, and where they have their protection, by the system of a question. */
const systems = {
  service: { system: { kind: "service", ungrounded: 3 }, protection: "at-supply" },
  feeder: {
    system: { kind: "feeder", ungrounded: 3, grounded: { currentCarrying: true } },
    protection: "at-supply",
  },
  "separately-derived": { system: { kind: "separately-derived", ungrounded: 2 }, protection: "at-end" },
} as const;

it("list the same conductors for a load as the library, with the same ampacity", () => {
  const wrong: object[] = [];
  let asked = 0;
  let found = 0;
  let refused = 0;
  const questions = `select id, edition, continuous, other, listed, given, system, smallest, largest, terminations, mostInRaceway, ambient,
    insulation from candidate_question where id % ${everyNth} = 0`;
  for (const row of rowsOf(database, questions)) {
    const question = row as unknown as Asked;
    const lawful = [...rowsOf(database, `select * from candidate_answer where id = ${question[0]}`)]
      .map(lineOf)
      .sort();
    const library = [...listedBy(question)].sort();
    asked += 1;
    found += lawful.length;
    if (lawful.length === 0) refused += 1;
    if (lawful.join("\n") === library.join("\n")) continue;
    const onlySql = lawful.filter((line) => !library.includes(line));
    const onlyLibrary = library.filter((line) => !lawful.includes(line));
    wrong.push({ question, onlySql: onlySql.slice(0, 3), onlyLibrary: onlyLibrary.slice(0, 3) });
  }
  expect(wrong.slice(0, 3)).toEqual([]);
  expect(asked).toBe(Math.floor((7 * 15 * 3 * 3 * 5 * 2) / everyNth));
  expect(found).toBeGreaterThan(asked * 10);
  expect(refused).toBeGreaterThan(0);
}, 1_200_000);

function lineOf([, metal, sets, inRaceway, size, tenThousandths, nextRating]: SqlRow): string {
  return [metal, sets, inRaceway, size, Number(tenThousandths) / 10_000, nextRating === 1].join(", ");
}

/** What the library lists; nothing where it refuses a load because no conductors within the limits are lawful. */
function listedBy(question: Asked): readonly string[] {
  const [, edition, continuous, other, listed, device, kind, smallest, largest, ...rest] = question;
  const [terminations, mostSetsInRaceway, celsius, insulation] = rest;
  try {
    const { candidates, more } = supplyCandidates({
      code: { year: edition },
      ...systems[kind],
      load: { continuous, other, listedForAll: listed === 1 },
      ...(device === null ? {} : { device }),
      conductor: {
        insulation,
        materials: ["copper", "aluminum"],
        ...(smallest === null ? {} : { smallest }),
        ...(largest === null ? {} : { largest }),
      },
      place: { location: "dry", ambient: { celsius } },
      ...(terminations === null ? {} : { terminations }),
      limits: { mostSets: 6, mostSetsInRaceway },
      bonding: { material: "copper" },
    });
    expect(more).toBe(0);
    return candidates.map(({ material, sets, setsInRaceway, size, ampacity: { amperes, nextRating } }) =>
      // Ten-thousandths are whole: what is rounded here is the remainder of a floating product.
      [material, sets, setsInRaceway, size, Math.round(amperes * 10_000) / 10_000, nextRating].join(", "),
    );
  } catch (error) {
    if (error instanceof InputError && isBeyondLimits(error)) return [];
    throw error;
  }
}

function isBeyondLimits({ issues }: InputError): boolean {
  return issues.length === 1 && issues[0]?.code === "out-of-range" && issues[0].path === "limits.mostSets";
}
