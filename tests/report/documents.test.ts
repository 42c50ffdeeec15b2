import {
  arrangementsDocument,
  arrangementsOf,
  checkDocument,
  checkOf,
  compare,
  compareInstallation,
  comparisonDocument,
  type Document,
  type DocumentOptions,
  InputError,
  mainBondingJumper,
  render,
  reportDocument,
  resultDocument,
  rowsDocument,
  scheduleDocument,
  scheduleOf,
  shortTimeWithstand,
  size,
  version,
} from "bondmil";
import { describe, expect, it } from "vitest";
import manifest from "../../package.json" with { type: "json" };
import { installation, service } from "../installation/installations.js";
import { otherResults } from "./other-results.js";

const code = { year: "2017" } as const;
const supply = { sets: [{ count: 1, size: "10 AWG", material: "copper" }] } as const;
const conductor = { material: "copper" } as const;
const amended = {
  ...code,
  amendments: [
    {
      kind: "floor",
      role: "main-bonding-jumper",
      copper: "4 AWG",
      citation: { jurisdiction: "Town", section: "7" },
    },
  ],
} as const;

const drawn = installation({ code, services: [service()] });
const sized = size(mainBondingJumper, { code, supply, conductor });

const makers: Readonly<Record<string, (options?: DocumentOptions) => Document>> = {
  schedule: (options) => scheduleDocument(scheduleOf(drawn), options),
  check: (options) => checkDocument(checkOf(drawn), options),
  report: (options) => reportDocument(drawn, options),
  "comparison of installations": (options) =>
    comparisonDocument(
      compareInstallation({ over: "editions", editions: ["2017"], installation: drawn }),
      options,
    ),
  "comparison of editions": (options) =>
    comparisonDocument(
      compare(mainBondingJumper, { over: "editions", input: { supply, conductor }, editions: ["2017"] }),
      options,
    ),
  "comparison of readings": (options) =>
    comparisonDocument(
      compare(mainBondingJumper, { over: "readings", input: { code, supply, conductor } }),
      options,
    ),
  "comparison of amendments": (options) =>
    comparisonDocument(
      compare(mainBondingJumper, { over: "amendments", input: { code: amended, supply, conductor } }),
      options,
    ),
  arrangements: (options) =>
    arrangementsDocument(
      arrangementsOf(mainBondingJumper, { code, enclosures: [{ id: "D1", supply }], conductor }),
      options,
    ),
  "sized conductor": (options) => resultDocument(sized, options),
  ...Object.fromEntries(
    Object.entries(otherResults).map(([of, result]) => [
      of,
      (options?: DocumentOptions) => resultDocument(result, options),
    ]),
  ),
  rows: (options) => rowsDocument([{ edition: "2017", size: "4 AWG" }], options),
};

const formats = ["text", "markdown", "html", "csv"] as const;

describe("the version", () => {
  it("is that of the package", () => expect(version).toBe(manifest.version));
});

describe.each(Object.entries(makers))("the document of a %s", (_, make) => {
  it.each(formats)("names library, version, edition, preparer and date as %s", (as) => {
    const written = render(make({ preparedBy: "J. Doe & Co", date: "31 January 2026" }), { as });
    expect(written).toContain(`bondmil ${version.replaceAll(".", as === "markdown" ? "." : ".")}`);
    expect(written).toContain(as === "csv" ? "2017" : "NFPA 70-2017");
    expect(written).toMatch(/J`?\.`? Doe &(?:amp;)? Co/);
    expect(written).toContain("31 January 2026");
  });

  it("is plain JSON, the same each time, and has rows and notes", () => {
    const document = make();
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    expect(make()).toEqual(document);
    expect(document.rows.length).toBeGreaterThan(0);
    expect(render(document, { as: "text" })).toContain("authority having jurisdiction decide");
    const names = document.facts.map(({ name }) => name);
    expect(names).not.toContain("Date");
    expect(names).not.toContain("Prepared by");
  });

  it("takes another title and refuses options that are none", () => {
    expect(make({ title: "Depot" }).title).toBe("Depot");
    for (const wrong of [{ titel: "x" }, { title: 7 }, { date: " " }, { preparedBy: null }, null])
      expect(() => make(wrong as never)).toThrow(InputError);
  });
});

describe("what stands beside the code", () => {
  it("says that it has no edition", () => {
    const withstand = shortTimeWithstand({
      conductor: { size: "4 AWG", material: "copper" },
      temperatures: { initial: 75, final: 150 },
      fault: { amperes: 5000, seconds: 0.25 },
    });
    expect(resultDocument(withstand).facts[0]?.text).toMatch(/^none/);
  });
});

describe("amendments", () => {
  it("stand in the title block of what they act in", () => {
    const documents = [
      scheduleDocument(scheduleOf({ ...drawn, code: amended })),
      reportDocument({ ...drawn, code: amended }),
      resultDocument(size(mainBondingJumper, { code: amended, supply, conductor })),
    ];
    for (const { facts } of documents)
      expect(facts.find(({ name }) => name === "Amendments")?.text).toContain("Town");
  });
});

describe("render", () => {
  const document = resultDocument(sized);

  it.each([
    [document, undefined],
    [document, {}],
    [document, { as: "pdf" }],
    [document, { as: "text", width: 19 }],
    [document, { as: "text", columns: 80 }],
    [{ ...document, parts: "none" }, { as: "text" }],
    [{ ...document, parts: [{ kind: "list" }] }, { as: "html" }],
    [undefined, { as: "csv" }],
  ])("refuses what is no document or no option (%#)", (one, options) => {
    expect(() => render(one as never, options as never)).toThrow(InputError);
  });
});
