import {
  conductorName,
  drawingOf,
  InputError,
  type Installation,
  readInstallation,
  type ScheduledConductor,
  scheduleOf,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service, setsOf } from "./installations.js";

/** What each conductor of some roles comes to, by its id: its size, or why none is required and by which section. */
function lines(drawn: Installation, ...roles: readonly ScheduledConductor["role"][]) {
  const chosen = scheduleOf(drawn).conductors.filter(({ role }) => roles.includes(role));
  return Object.fromEntries(
    chosen.map(({ id, result: { outcome } }) => [
      id,
      outcome.kind === "conductor"
        ? outcome.size
        : outcome.kind === "not-required"
          ? `${outcome.why} ${outcome.citation.section}`
          : outcome.kind,
    ]),
  );
}

function messageOf(source: unknown): string {
  try {
    readInstallation(source);
    return "";
  } catch (error) {
    return error instanceof InputError ? error.message : "";
  }
}

const electrode = "grounding-electrode-conductor";
const water = "water-piping-bonding-jumper";
const frame = "structural-metal-bonding-jumper";

describe("an electrode of several systems", () => {
  const drawn = installation({
    services: [service()],
    derivedSystems: [derived({ electrodes: [{ electrode: "E1", from: "T1", ferrousRaceway: true }] })],
  });

  it("stands in the document once, with a conductor from each", () => {
    expect(lines(drawn, electrode)).toEqual({
      "grounding-electrode-conductor E1": "4 AWG",
      "grounding-electrode-conductor E1 from T1": "4 AWG",
    });
    const [own] = scheduleOf(drawn).conductors.filter(({ id }) => id.endsWith("E1 from T1"));
    expect(own).toMatchObject({ subject: "E1", place: "T1", system: "X1" });
  });

  it("has every name once", () => {
    const { conductors } = scheduleOf(drawn);
    expect(new Set(conductors.map(conductorName)).size).toBe(conductors.length);
  });

  it("is on the sheet of each system, with the conductors of that system alone", () => {
    const { sheets } = drawingOf(drawn);
    const onSheets = sheets.map((sheet) => JSON.stringify(sheet).match(/electrode-conductor E1[^"]*/g) ?? []);
    expect(sheets.map(({ title }) => title.split(",")[0])).toEqual(["Service S1", "Derived system X1"]);
    expect(onSheets.map((names) => names.some((name) => name.includes("from T1")))).toEqual([false, true]);
  });

  it("has several conductors from one service too, each by the conductors at its place", () => {
    const two = service({
      runs: [
        {
          id: "R1",
          from: "U1",
          to: "D1",
          supply: setsOf(1, "500 kcmil"),
          raceways: { count: 1, kind: "nonmetallic" },
        },
        {
          id: "R2",
          from: "U1",
          to: "D2",
          supply: setsOf(1, "2/0 AWG"),
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: ["D1", "D2"].map((id) => ({ id, designation: "service-disconnect", amperes: 200 })),
      electrodes: [
        { id: "E1", kind: "metal-water-pipe", from: "D1" },
        { electrode: "E1", from: "D2" },
      ],
    });
    expect(lines(installation({ services: [two] }), electrode)).toEqual({
      "grounding-electrode-conductor E1": "1/0 AWG",
      "grounding-electrode-conductor E1 from D2": "4 AWG",
    });
  });

  it("loses its limit where another system ties an electrode to it that has none", () => {
    const chained = installation({
      services: [service()],
      derivedSystems: [
        derived({
          electrodes: [
            { electrode: "E1", from: "T1" },
            { id: "G2", kind: "structural-metal", from: "E1" },
          ],
        }),
      ],
    });
    expect(lines(chained, electrode, "electrode-bonding-jumper")).toEqual({
      "grounding-electrode-conductor E1": "1/0 AWG",
      "grounding-electrode-conductor E1 from T1": "1/0 AWG",
      "electrode-bonding-jumper G2": "1/0 AWG",
    });
  });

  it("is refused where it is named nowhere, named twice, or reached twice from one place", () => {
    const wrong = (entry: object) => ({
      ...drawn,
      derivedSystems: [derived({ electrodes: [entry as never] })],
    });
    expect(refused(wrong({ electrode: "E9", from: "T1" }))).toEqual([
      ["dangling-reference", "derivedSystems[0].electrodes[0].electrode"],
    ]);
    expect(messageOf(wrong({ electrode: "E9", from: "T1" }))).toContain('"E1"');
    const twice = wrong({ id: "E1", kind: "rod", from: "T1" });
    expect(refused(twice)).toEqual([["duplicate-id", "derivedSystems[0].electrodes[0].id"]]);
    expect(messageOf(twice)).toContain("services[0].electrodes[0].id has it already");
    expect(messageOf(twice)).toContain('{ "electrode": "E1" }');
    const same = {
      ...drawn,
      derivedSystems: [
        derived({
          electrodes: [
            { electrode: "E1", from: "T1" },
            { electrode: "E1", from: "T1" },
          ],
        }),
      ],
    };
    expect(refused(same)).toEqual([["duplicate-id", "derivedSystems[0].electrodes[1].from"]]);
    expect(messageOf(same)).toContain("derivedSystems[0].electrodes[0] is that conductor already");
  });

  it("is refused in a circle over the lists of several systems, once", () => {
    const circle = installation({
      services: [
        service({
          electrodes: [
            { id: "E1", kind: "rod", from: "D1" },
            { electrode: "G1", from: "E1" },
          ],
        }),
      ],
      derivedSystems: [
        derived({
          electrodes: [
            { id: "G1", kind: "rod", from: "T1" },
            { electrode: "E1", from: "G1" },
          ],
        }),
      ],
    });
    expect(refused(circle)).toEqual([["cycle", "services[0].electrodes[1].from"]]);
    expect(messageOf(circle)).toContain('"G1", then "E1", then "G1"');
  });
});

describe("metal of several systems", () => {
  const parts = {
    services: [service()],
    derivedSystems: [derived({ electrodes: [{ electrode: "M1", from: "T1" }] })],
  };

  it("is bonded to each, in a place where a wire can land, and needs no jumper where it is the electrode", () => {
    const drawn = installation({
      ...parts,
      piping: [{ id: "W1", of: ["S1", "X1"], kind: "water" }],
      structuralMetal: [{ id: "M1", of: ["S1", "X1"] }],
    });
    expect(lines(drawn, water, frame)).toEqual({
      "water-piping-bonding-jumper W1 from S1": "1/0 AWG",
      "water-piping-bonding-jumper W1 from X1": "1/0 AWG",
      "structural-metal-bonding-jumper M1 from S1": "1/0 AWG",
      "structural-metal-bonding-jumper M1 from X1": "part-is-the-electrode 250.104(D)(2)",
    });
    const ends = scheduleOf(drawn).conductors.filter(({ role }) => role === water);
    expect(ends.map(({ to }) => to)).toEqual([
      { kind: "place", id: "D1" },
      { kind: "place", id: "T1", on: "neutral-terminal" },
    ]);
  });

  it("needs no jumper of a derived system where it is bonded to the frame that is the electrode", () => {
    const drawn = installation({
      ...parts,
      piping: [{ id: "W1", of: ["S1", "X1"], kind: "water", bondedTo: "M1" }],
      structuralMetal: [{ id: "M1", of: "S1" }],
    });
    expect(lines(drawn, water)).toEqual({
      "water-piping-bonding-jumper W1 from S1": "1/0 AWG",
      "water-piping-bonding-jumper W1 from X1": "bonded-by-another-part 250.104(D)(1) Exception No. 2",
    });
    const odd = { ...drawn, derivedSystems: [derived()] };
    expect(refused(odd)).toEqual([["unknown-value", "piping[0].bondedTo"]]);
  });

  it("needs none where it is bonded to the common conductor, or serves as one", () => {
    const common = { id: "M1" };
    const drawn = installation({
      services: [service()],
      derivedSystems: [
        derived({
          commonElectrodeConductor: common,
          electrodes: [{ id: "G1", kind: "concrete-encased", from: "M1" }],
        }),
        derived({
          id: "X2",
          source: { id: "T2", kind: "transformer", outdoors: false },
          runs: [
            {
              id: "Y2",
              from: "T2",
              to: "P2",
              supply: setsOf(1, "3/0 AWG"),
              raceways: { count: 1, kind: "nonmetallic" },
            },
          ],
          disconnects: [{ id: "P2", amperes: 200 }],
          commonElectrodeConductor: common,
          electrodes: [],
        }),
      ],
      piping: [{ id: "W1", of: ["X1", "X2"], kind: "water", bondedTo: "M1" }],
      structuralMetal: [{ id: "M1", of: ["S1", "X1", "X2"] }],
    });
    expect(lines(drawn, electrode, "electrode-bonding-jumper", water, frame)).toEqual({
      "grounding-electrode-conductor E1": "4 AWG",
      "grounding-electrode-conductor M1": "part-serves-as-electrode-conductor 250.30(A)(6)",
      "electrode-bonding-jumper G1": "4 AWG",
      "grounding-electrode-tap T1": "4 AWG",
      "grounding-electrode-tap T2": "4 AWG",
      "water-piping-bonding-jumper W1 from X1": "bonded-by-another-part 250.104(D)(3) Exception",
      "water-piping-bonding-jumper W1 from X2": "bonded-by-another-part 250.104(D)(3) Exception",
      "structural-metal-bonding-jumper M1 from S1": "1/0 AWG",
      "structural-metal-bonding-jumper M1 from X1": "part-serves-as-electrode-conductor 250.104(D)(2)",
      "structural-metal-bonding-jumper M1 from X2": "part-serves-as-electrode-conductor 250.104(D)(2)",
    });
    expect(() => drawingOf(drawn)).not.toThrow();
  });

  it("is an electrode of a service: a frame always, a pipe as far as its electrode conductor is as large as the jumper", () => {
    const with500 = (sets: number, year: "2014" | "2017" | "2020") =>
      installation(
        {
          services: [
            service({
              runs: [
                {
                  id: "R1",
                  from: "U1",
                  to: "D1",
                  supply: setsOf(sets, "500 kcmil"),
                  raceways: { count: 1, kind: "nonmetallic" },
                },
              ],
              electrodes: [
                { electrode: "W1", from: "D1" },
                { electrode: "M1", from: "D1" },
              ],
            }),
          ],
          piping: [{ id: "W1", of: "S1", kind: "water" }],
          structuralMetal: [{ id: "M1", of: "S1" }],
        },
        year,
      );
    const excused = "part-is-the-electrode 250.104(A)(1)";
    const id = "water-piping-bonding-jumper W1";
    expect(lines(with500(1, "2017"), water)).toEqual({ [id]: excused });
    expect(lines(with500(4, "2014"), water)).toEqual({ [id]: excused });
    // 12.5 percent of 2000 kcmil, where 2017 names no limit; the electrode conductor stops at 3/0 AWG.
    expect(lines(with500(4, "2017"), water)).toEqual({ [id]: "250 kcmil" });
    expect(lines(with500(4, "2020"), water)).toEqual({ [id]: excused });
    expect(lines(with500(4, "2017"), frame, electrode)).toEqual({
      "grounding-electrode-conductor W1 from D1": "3/0 AWG",
      "grounding-electrode-conductor M1 from D1": "3/0 AWG",
      "structural-metal-bonding-jumper M1": "part-is-the-electrode 250.104(C)",
    });
  });

  it("is refused with an owner twice, one that is not there, or a word against its electrode conductor", () => {
    const wrong = (part: object) => ({ ...installation(parts), structuralMetal: [{ id: "M1", ...part }] });
    expect(refused(wrong({ of: ["S1", "S1"] }))).toEqual([["duplicate-id", "structuralMetal[0].of[1]"]]);
    expect(refused(wrong({ of: ["S1", "X9"] }))).toEqual([
      ["dangling-reference", "structuralMetal[0].of[1]"],
    ]);
    expect(refused(wrong({ of: [] }))).toContainEqual(["empty-list", "structuralMetal[0].of"]);
    const against = wrong({ of: "X1", isElectrode: false });
    expect(refused(against)).toEqual([["unknown-value", "structuralMetal[0].isElectrode"]]);
    expect(messageOf(against)).toContain('"X1" has "M1" among its electrodes');
  });
});

describe("where electrode conductors start", () => {
  it("is any accessible place of a service from the drop, a run among them", () => {
    const along = service({
      electrodes: [
        { id: "E1", kind: "metal-water-pipe", from: "R1" },
        { id: "E2", kind: "structural-metal", from: "E1" },
      ],
    });
    const [line] = scheduleOf(installation({ services: [along] })).conductors.filter(
      ({ role }) => role === electrode,
    );
    expect(line).toMatchObject({
      from: { kind: "place", id: "R1" },
      result: { outcome: { size: "1/0 AWG" } },
    });
    expect(scheduleOf(installation({ services: [along] })).violations).toEqual([]);
  });

  it("is a common conductor of several jumpers of one derived system, by its conductors and not by those of several", () => {
    const one = (parts: object = {}, year: "2008" | "2023" = "2023", readings = {}) => ({
      ...installation(
        {
          derivedSystems: [
            derived({
              runs: [
                {
                  id: "Y1",
                  from: "T1",
                  to: "P1",
                  supply: setsOf(1, "3/0 AWG"),
                  raceways: { count: 1, kind: "nonmetallic" },
                },
                {
                  id: "Y2",
                  from: "T1",
                  to: "P2",
                  supply: setsOf(1, "2 AWG"),
                  raceways: { count: 1, kind: "nonmetallic" },
                },
              ],
              disconnects: [
                { id: "P1", amperes: 200 },
                { id: "P2", amperes: 100 },
              ],
              jumperAt: "disconnects",
              commonElectrodeConductor: { id: "CG" },
              electrodes: [{ id: "G1", kind: "structural-metal", from: "CG" }],
              ...parts,
            }),
          ],
        },
        year,
      ),
      code: { year, readings },
    });
    expect(lines(one(), electrode)).toEqual({
      "grounding-electrode-conductor G1": "2 AWG",
      "grounding-electrode-tap P1": "4 AWG",
      "grounding-electrode-tap P2": "8 AWG",
    });
    const [common] = scheduleOf(one()).conductors.filter(({ id }) => id.endsWith("conductor G1"));
    expect(common?.result).toMatchObject({ evidence: "memory", citation: { section: "250.30(A)(5), (6)" } });
    expect(common?.result.cautions.map(({ code }) => code)).toContain("common-conductor-inferred");
    expect(common?.result.readings).toEqual([
      {
        id: "common-conductor-of-one-derived-system",
        chosen: "by-its-conductors",
        otherwise: [{ alternative: "as-of-several-systems", requiredArea: 167800 }],
      },
    ]);
    const fixed = one({}, "2023", { "common-conductor-of-one-derived-system": "as-of-several-systems" });
    expect(lines(fixed, electrode)["grounding-electrode-conductor G1"]).toBe("3/0 AWG");
    expect(lines(one({ jumperAt: "source" }), electrode)["grounding-electrode-conductor G1"]).toBe("3/0 AWG");
    expect(lines(one({ jumperAt: "compare" }), electrode)).toMatchObject({
      "grounding-electrode-conductor G1 (jumper-at-source)": "3/0 AWG",
      "grounding-electrode-conductor G1 (jumper-in-each-enclosure)": "2 AWG",
    });
    expect(drawingOf(one({ jumperAt: "compare" })).sheets.map(({ title }) => title)).toContain(
      "Common electrode conductor CG: a jumper in each enclosure",
    );
  });
});
