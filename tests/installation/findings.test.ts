import {
  compareInstallation,
  comparisonDocument,
  drawingAsSvg,
  drawingOf,
  type Installation,
  render,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { overlapping } from "../drawing/geometry.js";
import { derived, installation, refused, service, setsOf } from "./installations.js";

type Service = NonNullable<Installation["services"]>[number];

const of = (parts: Partial<Service>) => installation({ services: [service(parts)] });
const run = (parts: Partial<Service["runs"][number]>, more: Partial<Service> = {}) =>
  of({
    runs: [
      {
        id: "R1",
        from: "U1",
        to: "D1",
        supply: setsOf(2, "500 kcmil"),
        raceways: { count: 2, kind: "nonmetallic" },
        ...parts,
      },
    ],
    ...more,
  });

describe("what is found on site", () => {
  it.each<readonly [string, Installation, readonly (readonly [string, string])[]]>([
    [
      "the inside of an assembly that is none",
      of({ assembly: { compartments: "shared" } }),
      [["unknown-key", "services[0].assembly"]],
    ],
    [
      "steel of a rod that cannot be reached",
      of({ electrodesNotConnected: [{ id: "X", kind: "rod", steelNotAccessible: true }] }),
      [["unknown-value", "services[0].electrodesNotConnected[0].steelNotAccessible"]],
    ],
    [
      "the resistance of a footing",
      of({ electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1", ohms: 3 }] }),
      [["unknown-key", "services[0].electrodes[0].ohms"]],
    ],
    [
      "PVC within a ferrous raceway",
      of({
        electrodes: [
          {
            id: "E1",
            kind: "concrete-encased",
            from: "D1",
            ferrousRaceway: true,
            route: { protection: "pvc-schedule-80" },
          },
        ],
      }),
      [["unknown-value", "services[0].electrodes[0].route.protection"]],
    ],
    [
      "grounded conductors without a grounded conductor",
      run(
        { groundedConductors: { size: "1/0 AWG" } },
        { grounding: "ungrounded", connection: "three-phase-delta" },
      ),
      [["unknown-key", "services[0].runs[0].groundedConductors"]],
    ],
    [
      "an exception for neutrals of a phase",
      run(
        { groundedConductors: { size: "2 AWG", existingUnderSupervision: true } },
        { grounding: "grounded-phase", connection: "three-phase-delta" },
      ),
      [["unknown-value", "services[0].runs[0].groundedConductors.existingUnderSupervision"]],
    ],
    [
      "locknuts of a nonmetallic raceway",
      run({ raceways: { count: 2, kind: "nonmetallic" }, racewayJumpers: "locknuts" }),
      [["unknown-value", "services[0].runs[0].racewayJumpers"]],
    ],
    [
      "an id that an electrode has already",
      of({ electrodesNotConnected: [{ id: "E1", kind: "rod" }] }),
      [["duplicate-id", "services[0].electrodesNotConnected[0].id"]],
    ],
    [
      "a load-side connection nowhere",
      installation({ services: [service()], loadSideConnections: [{ id: "L1", at: "panel" }] }),
      [["dangling-reference", "loadSideConnections[0].at"]],
    ],
    [
      "a load-side connection where the system bonding jumper is",
      installation({
        derivedSystems: [
          derived({
            jumperAt: "disconnects",
            electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
          }),
        ],
        loadSideConnections: [{ id: "L1", at: "P1" }],
      }),
      [["unknown-value", "loadSideConnections[0].at"]],
    ],
  ])("is refused with its path: %s", (_, data, issues) => {
    expect(refused(data)).toEqual(issues);
  });

  const forbidden = installation({
    services: [
      service({
        runs: [
          {
            id: "R1",
            from: "U1",
            to: "D1",
            supply: setsOf(2, "1 AWG"),
            raceways: { count: 1, kind: "nonflexible-metal" },
            racewayJumpers: "locknuts",
          },
        ],
        electrodes: [
          { id: "E1", kind: "rod", from: "D1", route: { protection: "none", exposedToDamage: true } },
        ],
        electrodesNotConnected: [{ id: "footing", kind: "concrete-encased" }],
      }),
    ],
    circuits: [{ id: "F1", from: "D1", to: "panel", device: { amperes: 200 }, wiring: "raceway" }],
    loadSideConnections: [{ id: "L1", at: "panel" }],
  });

  it("is marked in the drawing with a number, and listed", () => {
    const { sheets } = drawingOf(forbidden);
    expect(
      sheets.map(({ violations = [] }) => violations.map(({ mark, violation }) => [mark, violation.code])),
    ).toEqual([
      [
        ["V1", "parallel-below-1-0"],
        ["V2", "bonded-by-locknuts"],
        ["V3", "grounded-conductor-bonded-on-load-side"],
        ["V4", "electrode-not-supplemented"],
        ["V5", "electrode-not-connected"],
        ["V6", "electrode-conductor-unprotected"],
      ],
    ]);
    const labels = sheets.flatMap((sheet) => sheet.labels);
    const marks = labels.filter(({ isViolation }) => isViolation);
    expect(marks.map(({ lines }) => lines.join(" ")).sort()).toEqual([
      "not permitted: V1, V2",
      "not permitted: V3",
      "not permitted: V4, V6",
    ]);
    // The mark stands right below the name of what it is about.
    const electrode = labels.find(({ lines }) => lines.join() === "E1");
    const mark = marks.find(({ lines }) => lines.join() === "not permitted: V4, V6");
    expect((mark?.y ?? 0) - (electrode?.y ?? 0)).toBeLessThan(20);
    expect(Math.abs((mark?.x ?? 0) - (electrode?.x ?? 0))).toBeLessThan(10);
    for (const sheet of sheets) expect(overlapping(sheet)).toEqual([]);
    const svg = drawingAsSvg({ title: "", sheets });
    expect(svg).toContain("V4. Not permitted: E1: A single rod without a supplemental electrode");
    // The list stands below everything that is drawn.
    const [, height = "0"] = /viewBox="0 0 \d+ ([\d.]+)"/.exec(svg) ?? [];
    const lowest = Math.max(
      ...[...svg.matchAll(/<tspan x="[\d.]+" y="([\d.]+)"/g)].map(([, y]) => Number(y)),
    );
    expect(lowest).toBeLessThan(Number(height));
  });

  it("moves the electrode conductor with the jumper where arrangements are compared, and names what is not permitted", () => {
    const comparison = compareInstallation({
      over: "arrangements",
      installation: installation({ derivedSystems: [derived()] }),
    });
    const said = comparison.variants.map((one) =>
      one.refused === undefined ? one.violations.map(({ code, section }) => [code, section]) : one.refused,
    );
    expect(said).toEqual([[], [], [["jumper-not-permitted-here", "250.30(A)(1)"]]]);
    const electrode = comparison.conductors.find(({ role }) => role === "grounding-electrode-conductor");
    expect(electrode?.entries.map(({ conductor }) => conductor?.from)).toEqual([
      { kind: "place", id: "T1", on: "neutral-terminal" },
      { kind: "place", id: "P1", on: "neutral-bar" },
      { kind: "place", id: "T1", on: "neutral-terminal" },
    ]);
    const text = render(comparisonDocument(comparison), { as: "text", width: 10_000 });
    expect(text).toContain("C, not permitted: system bonding jumper of X1");
    const [verdict, section, why] = ["C, not permitted", "\nNot permitted", "\nWhy"].map((one) =>
      text.indexOf(one),
    );
    expect([verdict, section, why]).toEqual([verdict, section, why].sort((a = 0, b = 0) => a - b));
    expect(verdict).toBeGreaterThan(0);
  });

  it("is placed lawfully in each of the arrangements that a drawing leaves open", () => {
    for (const from of ["T1", "P1"]) {
      const { sheets } = drawingOf(
        installation({
          derivedSystems: [
            derived({ jumperAt: "compare", electrodes: [{ id: "G1", kind: "structural-metal", from }] }),
          ],
        }),
      );
      expect(sheets.map(({ description }) => /From (\w+) to G1/.exec(description.join("\n"))?.[1])).toEqual([
        "T1",
        "P1",
      ]);
      expect(sheets.map(({ violations }) => violations)).toEqual([undefined, undefined]);
    }
  });
});
