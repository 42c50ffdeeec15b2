import type { Installation } from "bondmil";
import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/drawing/drawing.js";
import type { Group } from "../../src/drawing/group.js";
import { groupsOf } from "../../src/drawing/groups.js";
import { MOST_HEIGHT } from "../../src/drawing/parts.js";
import { sheetsOf, wholeSheetsOf } from "../../src/drawing/sheets.js";
import { demo, demoNames } from "../installation/installations.js";
import { keptInstallation, keptNames } from "../kept/installations.js";
import { built } from "../laws/installations/built.js";
import { diceOf } from "../laws/installations/dice.js";
import { drawInstallation } from "../laws/installations/drawn/installation.js";
import { connectionsOf, metal, neutral } from "../laws/installations/laws/connections.js";
import { crossed, lyingOn, outside, overlapping, traced } from "./geometry.js";

/** The demo installations, those whose drawings are kept, and two hundred as the dice fall. */
const cases: readonly (readonly [string, Installation])[] = [
  ...demoNames.map((name) => [name, demo(name)] as const),
  ...keptNames.map((name) => [`kept ${name}`, keptInstallation(name)] as const),
  ...Array.from({ length: 200 }, (_, i) => [`seed ${i + 1}`, drawInstallation(diceOf(i + 1))] as const),
];

interface Drawn {
  readonly name: string;
  readonly installation: Installation;
  readonly groups: readonly Group[];
  readonly sheets: readonly Sheet[];
}

const drawn: readonly Drawn[] = cases.map(([name, installation]) => {
  const groups = groupsOf(installation, built(installation).schedule);
  return { name, installation, groups, sheets: sheetsOf(groups) };
});

/** Everything that breaks a law, with the installation that does. */
function breaches(law: (one: Drawn) => readonly string[]): readonly string[] {
  return drawn.flatMap((one) => law(one).map((what) => `${one.name}: ${what}`));
}

describe("the drawings of the demos and of 200 installations", () => {
  it("keep labels apart from one another, from symbols and from every line", () => {
    expect(breaches(({ sheets }) => sheets.flatMap(overlapping))).toEqual([]);
    expect(breaches(({ sheets }) => sheets.flatMap(crossed))).toEqual([]);
  });

  it("lay no line on another", () => {
    expect(breaches(({ sheets }) => sheets.flatMap(lyingOn))).toEqual([]);
  });

  it("fit on a page of letter paper with text of 7 points", () => {
    expect(breaches(({ sheets }) => sheets.flatMap(outside))).toEqual([]);
    expect(
      breaches(({ sheets }) =>
        sheets.filter(({ width, height }) => width > 900 || height > MOST_HEIGHT).map(({ title }) => title),
      ),
    ).toEqual([]);
  });

  it("draw each conductor of the schedule once, or name it in a table", () => {
    expect(breaches(notOnce)).toEqual([]);
  });

  it("let a finger follow metal to its source wherever the schedule connects them, and nowhere else", () => {
    expect(breaches(otherwiseTraced)).toEqual([]);
  });

  it("are the same when they are drawn again", () => {
    for (const { installation, sheets } of drawn.slice(0, 20))
      expect(sheetsOf(groupsOf(installation, built(installation).schedule))).toEqual(sheets);
  });
});

/** Conductors that are drawn otherwise than once on a whole sheet; one without a line stands in a table or is not required. */
function notOnce({ installation, groups }: Drawn): readonly string[] {
  const whole = groups.flatMap((group) => wholeSheetsOf(group));
  const isInTable = (sheet: Sheet, id: string): boolean =>
    sheet.labels.some(
      ({ conductor, x, y }) =>
        conductor === id &&
        sheet.outlines.some(
          ({ kind, points: [a, , c] }) => kind === "elsewhere" && a && c && x > a.x && y > a.y && y < c.y,
        ),
    );
  return built(installation).schedule.conductors.flatMap(({ id, quantity, result }) => {
    const lines = whole.map((sheet) => sheet.lines.filter(({ conductor }) => conductor === id).length);
    const labels = whole.filter((sheet) => sheet.labels.some(({ conductor }) => conductor === id));
    if (labels.length === 0) return [`${id} has no label`];
    const most = Math.max(...lines);
    if (result.outcome.kind === "not-required") return most === 0 ? [] : [`${id} is not required, and drawn`];
    if (quantity === 0) return [`${id} is none`];
    if (most === 1 || (most === 0 && labels.some((sheet) => isInTable(sheet, id)))) return [];
    return [`${id} is drawn ${most} times`];
  });
}

/** Metal that is connected with the source of its system in the drawing and not by the schedule, or the other way round. */
function otherwiseTraced({ installation, groups }: Drawn): readonly string[] {
  const one = built(installation);
  const isOdd = one.schedule.violations.some(({ code }) =>
    ["jumper-not-permitted-here", "electrode-conductor-not-at-jumper"].includes(code),
  );
  const systems = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])];
  return groups.flatMap((group) => {
    const system = systems.find(({ id }) => id === group.id);
    const sheets = wholeSheetsOf(group);
    const [sheet] = sheets;
    if (system === undefined || sheet === undefined || sheets.length > 1 || isOdd) return [];
    if (system.grounding !== "solidly-grounded" && system.grounding !== "grounded-phase") return [];
    const alternative = group.title.includes("in each enclosure")
      ? "jumper-in-each-enclosure"
      : "jumper-at-source";
    const source = "utility" in system ? system.utility.id : system.source.id;
    const connected = connectionsOf(one, alternative).from(neutral(source), (node) =>
      node.startsWith("electrodes"),
    );
    const tracing = traced(sheet);
    const reached = new Set(tracing.sources.flatMap((start) => [...tracing.from(start)]));
    if (tracing.sources.length === 0) return [`${group.title} has no source`];
    // The law of the schedule knows neither terminations nor fittings, and what bonds the utility's own enclosure is the utility's.
    const known = new Set(
      [
        ...("utility" in system ? [...(system.boxes ?? []), ...(system.buses ?? [])] : [system.source]),
        ...system.disconnects,
        ...(installation.circuits ?? []).map(({ to }) => ({ id: to })),
        ...(installation.buildings ?? []),
        ...(installation.piping ?? []),
        ...(installation.structuralMetal ?? []),
      ].map(({ id }) => id),
    );
    return tracing.metal.flatMap((node) => {
      const [, kind = "", name = ""] = /^(\w+) (.*)$/s.exec(tracing.names[node] ?? "") ?? [];
      if ((kind !== "enclosure" && kind !== "part") || !known.has(name)) return [];
      const isReached = reached.has(node);
      const isMeant = connected.has(metal(name));
      return isReached === isMeant
        ? []
        : [`${name} is ${isReached ? "" : "not "}connected on ${group.title}`];
    });
  });
}
