import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { installationSchema, readInstallation } from "bondmil";
import fc from "fast-check";
import * as v from "valibot";
import { describe, expect, it } from "vitest";
import { installation as definition } from "../../src/installation/shape.js";
import { anyInstallation, demo, demoNames, installation, refused, service } from "./installations.js";

const text = readFileSync(new URL("../../docs/schema/installation.schema.json", import.meta.url), "utf8");
const schema = JSON.parse(text) as { readonly $schema: string; readonly description: string };
const ajv = new Ajv2020({ strict: true, strictTypes: false, strictTuples: false });
const accepts = ajv.compile(schema);

/** What the definition in code accepts: everything but ids, references and the like. */
function isShaped(data: unknown): boolean {
  return v.safeParse(definition, data).success;
}

type Path = readonly (string | number)[];

function places(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== "object" || value === null) return [path];
  const inner = Object.entries(value).flatMap(([key, one]) =>
    places(one, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return [path, ...inner];
}

/** Data with something else at a place; with `undefined`, without it. */
function replaced(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value)) {
    return value.flatMap((one: unknown, i): readonly unknown[] => {
      if (i !== key) return [one];
      const made = replaced(one, rest, by);
      return made === undefined ? [] : [made];
    });
  }
  const { [String(key)]: old, ...others } = value as Readonly<Record<string, unknown>>;
  const made = replaced(old, rest, by);
  return made === undefined ? others : { ...others, [key]: made };
}

const junk = fc.oneof(
  fc.constant(undefined),
  fc.constantFrom(null, true, false, "", " ", "x", " x ", "copper", "4 AWG", "4", [], {}, [[]], [{}], [null]),
  fc.constantFrom(0, -1, 1, 2, 0.5, 100, 101, 1000, 1e9, -1e-9, 1e308),
  fc.constantFrom({ sets: [] }, { size: "4 AWG", material: "copper" }, { amperes: 20 }, { forLoad: {} }),
  fc.jsonValue({ maxDepth: 2 }),
);

/** Drawings of which some places are changed, left out or added to. */
const brokenInstallation: fc.Arbitrary<unknown> = fc
  .tuple(
    anyInstallation,
    fc.array(fc.record({ place: fc.nat(), junk, added: fc.boolean() }), { maxLength: 2 }),
  )
  .map(([whole, changes]) =>
    changes.reduce<unknown>((so, { place, junk: by, added }) => {
      const all = places(so);
      const path = all[place % all.length] ?? [];
      return replaced(so, added ? [...path.slice(0, -1), "extra"] : path, by);
    }, whole),
  )
  .map((data) => JSON.parse(JSON.stringify(data ?? null)) as unknown);

/** Whether the schema refuses what it was last given for a list where an object belongs. */
function isListForObject(data: unknown): boolean {
  return (accepts.errors ?? []).some(({ keyword, params, instancePath }) => {
    const keys = instancePath.split("/").slice(1);
    const there = keys.reduce<unknown>((so, key) => (so as Readonly<Record<string, unknown>>)[key], data);
    return keyword === "type" && params["type"] === "object" && Array.isArray(there);
  });
}

describe("the published schema of installations", () => {
  it("is of draft 2020-12 and tells what reading checks beyond it", () => {
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    for (const word of ["given twice", "references", "circles", "share evenly", "impedance", "ring"])
      expect(schema.description).toContain(word);
  });

  it.each(demoNames)("accepts the demo drawing %s", (name) => {
    expect(accepts(demo(name))).toBe(true);
    expect(refused(demo(name))).toEqual([]);
  });

  it("accepts what can be read", () => {
    fc.assert(
      fc.property(anyInstallation, (data) => {
        expect(accepts(data)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  it("accepts and refuses the same documents as the definition", () => {
    let shaped = 0;
    fc.assert(
      fc.property(brokenInstallation, (data) => {
        const isAccepted = accepts(data);
        // The definition takes an empty list for an object that may be empty; neither the schema nor reading does.
        if (isAccepted || !isListForObject(data)) expect([data, isAccepted]).toEqual([data, isShaped(data)]);
        if (isAccepted) shaped += 1;
        else expect(refused(data).length).toBeGreaterThan(0);
      }),
      { numRuns: 600 },
    );
    expect(shaped).toBeGreaterThan(50);
  });
});

describe("the Standard Schema interface", () => {
  it("returns the installation that reading returns", () => {
    const data = demo("cold-store");
    const { "~standard": standard } = installationSchema;
    expect([standard.version, standard.vendor]).toEqual([1, "bondmil"]);
    expect(standard.validate(data)).toEqual({ value: readInstallation(data) });
  });

  it("returns what reading throws, with the steps to each place", () => {
    const run = {
      id: "R1",
      from: "U1",
      to: "D2",
      supply: { sets: [] },
      raceways: { count: 1, kind: "nonmetallic" },
    };
    const { issues } = installationSchema["~standard"].validate({
      ...installation({ services: [service({ runs: [run] as never })] }),
      "a.b[0]": 1,
    }) as { readonly issues: readonly { readonly path: Path; readonly message: string }[] };
    expect(issues.map(({ path }) => path)).toEqual([
      ["a.b[0]"],
      ["services", 0, "runs", 0, "supply", "sets"],
    ]);
    const dangling = installationSchema["~standard"].validate(
      installation({ services: [service({ electrodes: [{ id: "E1", kind: "rod", from: "D9" }] })] }),
    );
    expect(dangling.issues).toMatchObject([
      { path: ["services", 0, "electrodes", 0, "from"], message: expect.stringContaining('"D9"') },
    ]);
    const reading = { ...installation({}), code: { year: "2023", readings: { "no.such": "x" } } };
    expect(installationSchema["~standard"].validate(reading).issues?.map(({ path }) => path)).toEqual([
      ["code", "readings", "no.such"],
    ]);
  });
});
