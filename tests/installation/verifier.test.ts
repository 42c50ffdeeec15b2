import { readFileSync } from "node:fs";
import {
  type ConductorSize,
  type EditionYear,
  editionYears,
  fingerprintOf,
  type Installation,
  type Material,
  materials,
  roleIds,
  type Schedule,
  type ScheduledConductor,
  scheduleOf,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyInstallation, demo, demoNames, derived, installation, service } from "./installations.js";
import { python, runVerifier, verify } from "./verifier.js";

function inEdition(name: (typeof demoNames)[number], year: EditionYear): Installation {
  const drawn = demo(name);
  // A busbar as termination came with the 2017 edition.
  const intersystem = (drawn.intersystem ?? []).filter(({ termination }) => termination !== "busbar");
  return { ...drawn, title: `${name} ${year}`, code: { year }, intersystem };
}

const every = editionYears.flatMap((year) => demoNames.map((name) => scheduleOf(inEdition(name, year))));

describe.skipIf(python.isMissing)(`the verifier${python.because}`, () => {
  it("has fewer than 400 lines and imports nothing beyond the standard library", () => {
    const text = readFileSync(new URL("../../corpus/tools/verifier/verify.py", import.meta.url), "utf8");
    expect(text.trimEnd().split("\n").length).toBeLessThan(400);
    const imported = text.match(/^(?:import|from) .*/gm);
    expect(imported).toEqual([
      "import csv, json, operator, os, sys",
      "from collections import Counter",
      "from decimal import Decimal",
      "from itertools import zip_longest",
    ]);
  });

  it("confirms the demo installations in every edition", () => {
    expect(verify(every)).toEqual({ status: 0, lines: [] });
  });

  it("confirms installations at random", () => {
    const installations = fc.sample(anyInstallation, { numRuns: 150, seed: 20_080 });
    expect(verify(installations.map((one) => scheduleOf(one)))).toEqual({ status: 0, lines: [] });
  });

  it("reads a file, a list and a stream alike", () => {
    const [one] = every;
    expect(runVerifier(JSON.stringify(one))).toEqual({ status: 0, lines: [] });
    expect(runVerifier(JSON.stringify(every.slice(0, 2)))).toEqual({ status: 0, lines: [] });
    const forged = { ...one, title: "Forged", fingerprint: "0000-0000-0000-0000" };
    const refused = { status: 1, lines: ["Forged: schedule: fingerprint is another"] };
    expect(runVerifier(JSON.stringify([one, forged]))).toEqual(refused);
    expect(runVerifier(`${JSON.stringify(one)}\n${JSON.stringify(forged)}\n`, "--stream")).toEqual(refused);
  });

  it("knows how numbers and texts are written for the fingerprint", () => {
    const numbers = [1e-7, 1.5e-7, 0.000001, 0.0001234, 123456.789, 1e9, 5e-300, 0.1 + 0.2];
    const lengths = numbers.map((lengthFeet, i) => ({
      id: `C${i}`,
      from: "P",
      to: 'a "quoted" \\ panel\u0001\u2028\ud800é😀',
      device: { amperes: 100 },
      wiring: "raceway" as const,
      lengthFeet,
    }));
    const schedule = scheduleOf(installation({ existing: [{ id: "P" }], circuits: lengths }));
    expect(verify([schedule])).toEqual({ status: 0, lines: [] });
  });
});

describe.skipIf(python.isMissing)(`the verifier over the grid${python.because}`, () => {
  const supplies: readonly (readonly [number, ConductorSize])[] = [
    [1, "14 AWG"],
    [1, "2 AWG"],
    [1, "350 kcmil"],
    [1, "1250 kcmil"],
    [3, "600 kcmil"],
    [8, "1000 kcmil"],
  ];

  function small(
    year: EditionYear,
    metal: Material,
    of: Material,
    [count, size]: (typeof supplies)[number],
  ): Installation {
    const supply = { sets: [{ count, size, material: of }] };
    const raceways = { count, kind: "flexible-metal" as const };
    const run = { supply, raceways, racewayJumpers: "per-raceway" as const };
    return {
      ...installation(
        {
          title: `${year} ${metal} for ${count} x ${size} ${of}`,
          services: [
            service({
              boxes: [{ id: "W1", kind: "wireway", bondedBy: "jumper" }],
              runs: [
                { id: "R0", from: "U1", to: "W1", ...run },
                { id: "R1", from: "W1", to: "D1", supply, raceways: { count: 1, kind: "nonmetallic" } },
              ],
              electrodes: [
                { id: "E1", kind: "structural-metal", from: "D1", ferrousRaceway: true },
                { id: "E2", kind: "rod", from: "E1" },
              ],
            }),
          ],
          derivedSystems: [
            derived({ runs: [{ id: "Y1", from: "T1", to: "P1", ...run }], jumperAt: "disconnects" }),
            derived({
              id: "X2",
              source: { id: "T2", kind: "transformer", outdoors: false },
              grounding: "impedance",
              connection: "three-phase-wye",
              impedance: { amperes: 30, electrodeConductorAt: "impedance" },
              runs: [{ id: "Y2", from: "T2", to: "P2", supply, raceways: { count: 1, kind: "nonmetallic" } }],
              disconnects: [{ id: "P2", amperes: 100 }],
              electrodes: [],
            }),
          ],
          circuits: [
            {
              id: "C1",
              from: "D1",
              to: "B1",
              device: { amperes: 400 },
              conductors: supply,
              increasedFrom: {
                conductors: { sets: [{ count: 1, size: "14 AWG", material: of }] },
                reason: "voltage-drop",
              },
              wiring: "raceway",
            },
          ],
          buildings: [{ id: "B1", circuit: "C1", onSingleBranchCircuit: false, electrodes: [] }],
          piping: [
            { id: "W", of: "S1", kind: "water" },
            { id: "V", of: "B1", kind: "water" },
            { id: "O", kind: "other", deviceAmperes: 60 },
          ],
          structuralMetal: [{ id: "M", of: "S1" }],
          intersystem: [{ id: "I", at: "D1", termination: "apart" }],
        },
        year,
      ),
      materials: {
        bondingJumpers: metal,
        groundedConductors: metal,
        electrodeConductors: metal,
        equipmentGrounding: metal,
      },
    };
  }

  const schedules = editionYears.flatMap((year) =>
    materials.flatMap((metal) =>
      materials.flatMap((of) => supplies.map((supply) => scheduleOf(small(year, metal, of, supply)))),
    ),
  );

  it("confirms every role in every edition and material", () => {
    expect(verify(schedules)).toEqual({ status: 0, lines: [] });
  });

  it("meets every role that an installation can hold", () => {
    const met = new Set(schedules.flatMap(({ conductors }) => conductors.map(({ role }) => role)));
    // Load-side jumpers are no part of an installation.
    expect(roleIds.filter((role) => !met.has(role))).toEqual(["equipment-bonding-jumper"]);
  });
});

/** A schedule of one conductor, signed. */
function alone(schedule: Schedule, conductor: ScheduledConductor, title: string): Schedule {
  const { lengthFeet: _, ...rest } = conductor;
  const { fingerprint: __, ...unsigned } = { ...schedule, title, conductors: [rest], totals: [] };
  return { ...unsigned, fingerprint: fingerprintOf(unsigned) };
}

type Path = readonly (string | number)[];

/** Every leaf of plain data with its path. */
function leaves(value: unknown, path: Path = []): readonly { readonly path: Path; readonly leaf: unknown }[] {
  if (typeof value !== "object" || value === null) return [{ path, leaf: value }];
  return Object.entries(value).flatMap(([key, one]) =>
    leaves(one, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

function changed(value: unknown, [key, ...rest]: Path, leaf: unknown): unknown {
  if (key === undefined) return leaf;
  if (Array.isArray(value)) return value.map((one, i) => (i === key ? changed(one, rest, leaf) : one));
  return { ...(value as object), [key]: changed((value as Record<string, unknown>)[key], rest, leaf) };
}

/** Another value of the kind that stands at a leaf; `undefined` where another would be as good, or is no claim of the steps. */
function forged(path: Path, leaf: unknown): unknown {
  const name = path.at(-1);
  const isInput = path.includes("supply") || path.includes("installed");
  if (path.includes("cautions") || path.includes("readings") || path.includes("circuits")) return undefined;
  if (name === "lengthFeet") return undefined;
  if (name === "section") return `${leaf}(Z)`;
  if (name === "evidence") return leaf === "carried" ? "single" : "carried";
  if (name === "governs") return leaf === "floor" ? "cap" : "floor";
  if (name === "size") return leaf === "4 AWG" ? "4/0 AWG" : "4 AWG";
  if (name === "amperes" || name === "installedAmperes") return Number(leaf) * 10;
  if (name === "quantity" && path.length === 1) return leaf === 0 ? 1 : 0;
  if (typeof leaf === "number" && !isInput) return 2 * leaf + 1;
  return undefined;
}

describe.skipIf(python.isMissing)(`the verifier against tampering${python.because}`, () => {
  const honest = demoNames.map((name) => scheduleOf(demo(name)));
  const forgeries = honest.flatMap((schedule) =>
    schedule.conductors.flatMap((conductor) =>
      leaves(conductor).flatMap(({ path, leaf }) => {
        const other = forged(path, leaf);
        if (other === undefined) return [];
        const what = `${schedule.title}, ${conductor.id}, ${path.join(".")}, ${leaf} made ${other}`;
        return [{ what, changed: changed(conductor, path, other) as ScheduledConductor, schedule }];
      }),
    ),
  );

  it("confirms each conductor alone", () => {
    const singles = honest.flatMap((schedule) =>
      schedule.conductors.map((one) => alone(schedule, one, schedule.title)),
    );
    expect(verify(singles)).toEqual({ status: 0, lines: [] });
  });

  it("refutes every forged number, size, section, evidence and governing step, though signed anew", () => {
    expect(forgeries.length).toBeGreaterThan(2000);
    const signed = forgeries.map((one, i) => alone(one.schedule, one.changed, `#${i}`));
    const { status, lines } = verify(signed);
    const refuted = new Set(lines.map((line) => Number(line.slice(1, line.indexOf(":")))));
    expect(status).toBe(1);
    expect(forgeries.filter((_, i) => !refuted.has(i)).map(({ what }) => what)).toEqual([]);
  });

  it("refutes a row of another edition, and one eighth below the threshold", () => {
    const [, store] = honest;
    const jumper = store?.conductors.find(({ id }) => id === "main-bonding-jumper D1");
    if (store === undefined || jumper === undefined) throw new Error("the cold store has a main jumper");
    const eighth = {
      ...jumper,
      result: {
        ...jumper.result,
        governs: "one-eighth" as const,
        requiredArea: 75_000,
        outcome: { kind: "conductor" as const, size: "1 AWG" as const, quantity: 1 },
        steps: jumper.result.steps.map((step) => {
          if (step.kind === "standard-size")
            return { ...step, requiredArea: 75_000, size: "1 AWG" as const, area: 83_690 };
          if (step.kind !== "row") return step;
          const { entered, area, citation } = step;
          const kind = "one-eighth" as const;
          return { kind, entered, area, threshold: 1_750_000, requiredArea: 75_000, citation };
        }),
      },
    };
    const { lines } = verify([alone(store, eighth, "Eighth")]);
    expect(lines).toEqual([
      expect.stringMatching(
        /^Eighth: main-bonding-jumper D1: step one-eighth: .* \(policy main-bonding-jumper\)$/,
      ),
    ]);
    const older = { ...store, edition: "2020" as const, code: { year: "2020" as const } };
    expect(verify([alone(older, jumper, "Older")]).status).toBe(1);
  });

  it.each([
    [
      "fingerprint",
      (one: Schedule): Schedule => ({ ...one, fingerprint: one.fingerprint.replace(/^./, "g") }),
    ],
    ["title", (one: Schedule): Schedule => ({ ...one, title: "Another" })],
    ["totals", (one: Schedule): Schedule => resigned({ ...one, totals: one.totals.slice(1) })],
    [
      "twice",
      (one: Schedule): Schedule => resigned({ ...one, conductors: [...one.conductors, ...one.conductors] }),
    ],
  ])("refutes a forged schedule: %s", (_, forge) => {
    for (const one of honest) expect(verify([forge(one)]).status).toBe(1);
  });
});

function resigned({ fingerprint: _, ...unsigned }: Schedule): Schedule {
  return { ...unsigned, fingerprint: fingerprintOf(unsigned) };
}
