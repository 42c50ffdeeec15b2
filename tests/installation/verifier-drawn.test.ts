import { type Amendment, type Installation, scheduleOf } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyInstallation, demo, demoNames, installation, service, setsOf } from "./installations.js";
import { callVerifier, type Pair, python, tables, verifyDrawn } from "./verifier.js";
import { faults, signed } from "./verifier-faults.js";

const citation = { jurisdiction: "Example County", section: "Sec. 12-3" };
const amendments: readonly Amendment[] = [
  { kind: "floor", role: "grounding-electrode-conductor", copper: "3 AWG", citation },
  {
    kind: "floor",
    role: "equipment-grounding-conductor",
    copper: "8 AWG",
    when: { lengthFromFeet: 60 },
    citation,
  },
  { kind: "material", role: "every-role", material: "aluminum", allowedFrom: "1 AWG", citation },
  { kind: "material", role: "grounding-electrode-conductor", material: "copper-clad aluminum", citation },
  { kind: "basis", role: "water-piping-bonding-jumper", use: "equipment-grounding-table", citation },
  { kind: "cell", table: "electrode-conductor", row: "2 AWG", column: "copper", size: "6 AWG", citation },
  { kind: "cell", table: "equipment-grounding", row: 400, column: "copper", size: "2 AWG", citation },
];

const pairOf = (drawn: Installation): Pair => ({ installation: drawn, schedule: scheduleOf(drawn) });

const amended = (one: Installation): Installation => ({
  ...one,
  code: { year: one.code.year, circumstances: { serviceAmperes: 400 }, amendments },
});

/** A service that has what a draw seldom has: seven disconnects, thin conductors in parallel, and a load beside them. */
const crowded = installation({
  title: "Seven",
  services: [
    service({
      disconnects: [1, 2, 3, 4, 5, 6, 7].map((i) => ({
        id: `D${i}`,
        designation: "service-disconnect",
        amperes: 100,
      })),
      runs: [1, 2, 3, 4, 5, 6, 7].map((i) => ({
        id: `R${i}`,
        from: "U1",
        to: `D${i}`,
        supply: i === 1 ? setsOf(2, "2 AWG") : setsOf(1, i === 2 ? "500 kcmil" : "1 AWG"),
        load: { amperes: 40, circuitAmperes: 200 },
        lengthFeet: 10 * i,
        raceways: { count: 1, kind: "nonmetallic" },
      })),
      electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }],
    }),
  ],
});

const drawn = [...demoNames.map(demo), crowded, ...fc.sample(anyInstallation, { numRuns: 40, seed: 20_140 })];
const honest = [...drawn, ...drawn.map(amended)].map(pairOf);

describe.skipIf(python.isMissing)(`the verifier beside installations${python.because}`, () => {
  it("refuses no honest schedule, with amendments and without", () => {
    expect(verifyDrawn(honest)).toEqual({ status: 0, lines: [] });
  });

  it.each(Object.entries(faults))("notices %s", (_, plant) => {
    const planted = honest.flatMap(({ schedule, installation: of }) =>
      plant(schedule, of).map((one) => ({ ...one, installation: of })),
    );
    expect(planted.length).toBeGreaterThan(2);
    const step = Math.max(1, Math.floor(planted.length / 60));
    const some = planted.filter((__, i) => i % step === 0);
    const { lines } = verifyDrawn(
      some.map((one, i) => ({
        installation: one.installation,
        schedule: signed({ ...one.schedule, title: `#${i}` }),
      })),
    );
    const refuted = new Set(lines.map((line) => Number(line.slice(1, line.indexOf(":")))));
    expect(some.filter((__, i) => !refuted.has(i)).map(({ what }) => what)).toEqual([]);
  });

  it("counts what it does not know, and goes on", () => {
    const { installation: known, schedule } = pairOf(crowded);
    const more = { ...known, roofs: [{ id: "X" }] };
    const { stdout, status } = callVerifier([tables], JSON.stringify({ installation: more, schedule }));
    expect(status).toBe(1);
    expect(stdout).toContain("installationFingerprint is not that of the installation");
    expect(stdout).toMatch(
      /confirmed: \d+ conductors, \d+ steps; not confirmed: .*1 x roofs of the installation/,
    );
  });

  it("teaches what it takes, and what was wrong with a call", () => {
    const help = callVerifier(["--help"]);
    expect([help.status, help.stderr]).toEqual([0, ""]);
    expect(help.stdout).toContain("usage: verify.py TABLES [--installation FILE] [FILE ...]");
    const calls: readonly (readonly [readonly string[], string, string])[] = [
      [[], "", "name the folder of the tables"],
      [["--strem", tables], "", "--strem is no option"],
      [["nowhere"], "{}", "nowhere holds no tables"],
      [[tables, "nowhere.json"], "", "nowhere.json cannot be read"],
      [[tables, "--installation"], "", "--installation requires a file"],
      [[tables], "not json", "no JSON of schedules"],
      [[tables], "[1]", "no JSON of schedules"],
      [[tables], "{}", "no schedule"],
      [[tables], "[]", "no schedule was read"],
    ];
    for (const [words, input, message] of calls) {
      const { status, stderr, stdout } = callVerifier(words, input);
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr).toContain(`verify.py: ${stderr === "" ? message : ""}`);
      expect(stderr).toContain(message);
      expect(stderr).toContain("usage:");
      expect(stderr).not.toContain("Traceback");
    }
  });
});
