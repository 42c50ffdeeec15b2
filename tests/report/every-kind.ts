import {
  arrangementsDocument,
  arrangementsOf,
  candidatesDocument,
  checkDocument,
  checkOf,
  compare,
  compareInstallation,
  comparisonDocument,
  type Document,
  equipmentGroundingConductor,
  groundingElectrodeConductor,
  intersystemBondingConductor,
  mainBondingJumper,
  reportDocument,
  resultDocument,
  rowsDocument,
  scheduleDocument,
  scheduleOf,
  supplyCandidates,
  supplySideBondingJumper,
  sweep,
  systemBondingJumper,
  type Violation,
} from "bondmil";
import { demo, demoNames } from "../installation/installations.js";
import { diceOf } from "../laws/installations/dice.js";
import { drawInstallation } from "../laws/installations/drawn/installation.js";
import { corpusResults } from "./corpus-results.js";
import { otherResults } from "./other-results.js";

/** A document, and what is forbidden in what it is about. */
export interface Kind {
  readonly document: Document;
  readonly violations: readonly Violation[];
  /** Whether a person reads a choice and CSV has all of it, as the document says. */
  readonly isMoreInCsv?: true;
}

const amendments = [
  {
    kind: "floor",
    role: "main-bonding-jumper",
    copper: "500 kcmil",
    citation: { jurisdiction: "Town", section: "7" },
  },
] as const;
const code = { year: "2017" } as const;
const supply = { sets: [{ count: 2, size: "1 AWG", material: "copper" }] } as const;
const conductor = { material: "copper" } as const;
const enclosures = ["A", "B"].map((id) => ({ id, supply }));

/** The demos, and installations at random, for what is forbidden in some of them. */
const installations = () => [
  ...demoNames.map(demo),
  ...Array.from({ length: 12 }, (_, i) => drawInstallation(diceOf(i + 1))),
];

const plain = (...documents: readonly Document[]): readonly Kind[] =>
  documents.map((document) => ({ document, violations: [] }));

const compared = (over: "editions" | "readings" | "arrangements" | "amendments") => (): readonly Kind[] =>
  demoNames.map((name) => {
    const installation = demo(name);
    const comparison = compareInstallation(
      over === "amendments" ? { over, amendments, installation } : { over, installation },
    );
    return {
      document: comparisonDocument(comparison),
      violations: comparison.variants.flatMap((one) => (one.refused === undefined ? one.newViolations : [])),
    };
  });

/** Every kind of document, by its name. */
export const kinds: Readonly<Record<string, () => readonly Kind[]>> = {
  schedule: () =>
    installations().map((one) => {
      const schedule = scheduleOf(one);
      return { document: scheduleDocument(schedule), violations: schedule.violations };
    }),
  check: () =>
    installations().map((one) => {
      const check = checkOf(one);
      return { document: checkDocument(check), violations: check.schedule.violations };
    }),
  report: () =>
    installations().map((one) => ({
      document: reportDocument(one, { place: "Yard 4", preparedBy: "J. Doe", date: "31 January 2026" }),
      violations: scheduleOf(one).violations,
    })),
  "comparison of installations over editions": compared("editions"),
  "comparison of installations over readings": compared("readings"),
  "comparison of installations over arrangements": compared("arrangements"),
  "comparison of installations over amendments": compared("amendments"),
  "comparison of editions": () =>
    plain(
      comparisonDocument(compare(mainBondingJumper, { over: "editions", input: { supply, conductor } })),
      comparisonDocument(
        compare(intersystemBondingConductor, { over: "editions", input: { termination: "busbar" } }),
      ),
    ),
  "comparison of readings": () =>
    plain(
      comparisonDocument(
        compare(mainBondingJumper, {
          over: "readings",
          input: {
            code: { year: "2014" },
            supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
            conductor,
          },
        }),
      ),
    ),
  "comparison of amendments": () =>
    plain(
      comparisonDocument(
        compare(mainBondingJumper, {
          over: "amendments",
          input: {
            code: {
              ...code,
              amendments: [
                ...amendments,
                ...(["2 AWG", "1/0 AWG"] as const).map((row, i) => ({
                  kind: "cell" as const,
                  table: "bonding-conductor" as const,
                  row,
                  column: "copper" as const,
                  size: "4 AWG" as const,
                  citation: { jurisdiction: "Nowhere", section: `Sec. ${i}` },
                })),
              ],
            },
            supply,
            conductor,
          },
        }),
      ),
    ),
  "comparison of arrangements": () =>
    [
      arrangementsOf(mainBondingJumper, { code, enclosures, conductor: { material: "aluminum" } }),
      arrangementsOf(mainBondingJumper, { code, enclosures: enclosures.slice(1), conductor }),
      arrangementsOf(systemBondingJumper, {
        code: { year: "2023" },
        source: { id: "T1", outdoors: true },
        enclosures,
        conductor: { material: "copper", form: "bus" },
      }),
      arrangementsOf(supplySideBondingJumper, {
        code,
        raceways: enclosures,
        conductor,
      }),
      arrangementsOf(groundingElectrodeConductor, {
        code,
        system: "service",
        enclosures,
        electrodes: [{ kind: "rod" }],
        conductor,
      }),
    ].map((comparison) => ({
      document: arrangementsDocument(comparison),
      violations: comparison.arrangements.flatMap(({ violations }) => violations),
    })),
  "document of candidates": () =>
    plain(
      candidatesDocument(
        supplyCandidates({
          code: { year: "2023" },
          system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
          load: { continuous: 0, other: 250 },
          conductor: { insulation: "THWN-2", materials: ["copper"] },
          place: { location: "dry" },
          limits: { mostSets: 2 },
          bonding: { material: "copper" },
        }),
      ),
    ).map((one) => ({ ...one, isMoreInCsv: true })),
  "sized conductor": () =>
    plain(...corpusResults.filter((_, i) => i % 40 === 0).map((one) => resultDocument(one))),
  "result of another kind": () => plain(...Object.values(otherResults).map((one) => resultDocument(one))),
  "table of rows": () =>
    plain(
      rowsDocument([
        ...sweep(equipmentGroundingConductor, { editions: ["2011", "2023"], material: "copper" } as never),
      ]),
    ),
};
