import { type EditionYear, type FoundConductor, type Installation, parseSize } from "bondmil";
import { describe, expect, it } from "vitest";
import { inEveryCase } from "../../src/installation/installed/open-question.js";
import { checkFound, checkRest, findings, piece, verdict } from "./found.js";
import { derived, installation, service, setsOf } from "./installations.js";

const metal = (racewayJumpers: string | undefined, year: EditionYear = "2017") => {
  const raceways = { count: 3, kind: "nonflexible-metal" as const };
  const how = racewayJumpers === undefined ? {} : { racewayJumpers };
  const runs = [{ ...service().runs[0], supply: setsOf(3, "500 kcmil"), raceways, ...how }];
  return installation({ services: [service({ runs: runs as never, electrodes: [] })] }, year);
};
const along = "supply-side-bonding-jumper R1";
const instead = (role: string, of: string, what: string) => ({ role, of, instead: what }) as FoundConductor;

describe("what serves in place of a conductor", () => {
  it("is a bonding fitting at a service raceway, unless an amendment requires a wire", () => {
    const fittings = instead("supply-side-bonding-jumper", "R1", "bonding-fittings");
    const check = checkRest(metal(undefined), [fittings]);
    expect([findings(check), verdict(check, along)]).toEqual([[], ["as-required", null]]);
    const citation = { jurisdiction: "Example County", section: "1" };
    const amendments = [
      { kind: "always-wire" as const, role: "supply-side-bonding-jumper" as const, citation },
    ];
    const strict = { ...metal(undefined), code: { year: "2017" as const, amendments: amendments as never } };
    expect(findings(checkRest(strict, [fittings]))).toEqual([[along, "cannot-serve"]]);
  });

  it("is the grounded conductor in a box of the service, and nothing of the kind elsewhere", () => {
    const box = { id: "M1", kind: "meter" as const, bondedBy: "jumper" as const };
    const run = (id: string, from: string, to: string) => ({
      id,
      from,
      to,
      supply: setsOf(1, "500 kcmil"),
      raceways: { count: 1, kind: "nonmetallic" },
    });
    const runs = [run("R1", "U1", "M1"), run("R2", "M1", "D1")];
    const data = installation(
      { services: [service({ boxes: [box], runs: runs as never, electrodes: [] })] },
      "2017",
    );
    const neutral = (role: string, of: string) =>
      findings(checkRest(data, [instead(role, of, "grounded-conductor")]));
    expect(neutral("supply-side-bonding-jumper", "M1")).toEqual([]);
    expect(neutral("main-bonding-jumper", "D1")).toEqual([["main-bonding-jumper D1", "cannot-serve"]]);
  });

  it("is a metal raceway as equipment grounding conductor, not a tray", () => {
    const data = (wiring: "raceway" | "tray-cable") =>
      installation(
        {
          existing: [{ id: "P1" }],
          circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring }],
        },
        "2023",
      );
    const found = [instead("equipment-grounding-conductor", "C1", "nonflexible-metal-raceway")];
    const check = checkRest(data("raceway"), found);
    expect(findings(check)).toEqual([]);
    expect(findings(checkRest(data("tray-cable"), found))).toEqual([
      ["equipment-grounding-conductor C1", "cannot-serve"],
    ]);
  });

  it("is offered where a conductor is missing", () => {
    const remedies = (data: Installation) => {
      const { findings: all } = checkFound(data, [piece("main-bonding-jumper D1", "250 kcmil")]);
      return all.find(({ id }) => id === along)?.remedies.map((one) => ("by" in one ? one.by : one.do));
    };
    expect(remedies(metal(undefined))).toEqual(["install", "bonding-fittings"]);
  });
});

describe("several conductors in place of one", () => {
  it("may be one jumper in each raceway for one in common, or the other way round", () => {
    const each = piece(along, "1/0 AWG", { quantity: 3 });
    expect(findings(checkRest(metal("common"), [each]))).toEqual([]);
    expect(findings(checkRest(metal("common"), [{ ...each, size: "1 AWG" as never }]))).not.toEqual([]);
    expect(findings(checkRest(metal("common"), [{ ...each, quantity: 2 }]))).not.toEqual([]);
    const one = piece(along, "3/0 AWG");
    expect(findings(checkRest(metal("per-raceway"), [{ ...one, size: "250 kcmil" as never }]))).toEqual([]);
  });

  it("may be grounded conductors in parallel of 1/0 AWG and larger, together large enough", () => {
    const runs = [{ ...service().runs[0], supply: setsOf(1, "1000 kcmil") }];
    const data = installation({ services: [service({ runs: runs as never, electrodes: [] })] }, "2017");
    const id = "grounded-conductor R1";
    const found = (...all: FoundConductor[]) => checkRest(data, all);
    expect(findings(found(piece(id, "1/0 AWG")))).toEqual([[id, "short", 27_500]]);
    const two = found(piece(id, "1/0 AWG", { quantity: 2 }));
    expect([findings(two), verdict(two, id)]).toEqual([[], ["as-required", 2 * 105_600 - 133_100]]);
    expect(findings(found(piece(id, "1/0 AWG"), piece(id, "1/0 AWG")))).toEqual([]);
    expect(findings(found(piece(id, "1 AWG", { quantity: 4 })))).toEqual([[id, "short", 49_410]]);
    expect(findings(found(piece(id, "1/0 AWG"), piece(id, "1 AWG")))).toHaveLength(2);
  });

  it("are not known to be permitted of a bonding jumper, whose sum of areas then says nothing", () => {
    const id = "main-bonding-jumper D1";
    const check = checkRest(metal(undefined), [piece(id, "4/0 AWG", { quantity: 4 })]);
    expect(findings(check)).toEqual([]);
    expect(findings(checkRest(metal(undefined), [piece(id, "1/0 AWG", { quantity: 4 })]))).toEqual([
      [id, "short", 187_500 - 105_600],
    ]);
  });
});

describe("a conductor that serves two purposes", () => {
  const data = installation(
    {
      services: [service({ electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }] })],
      circuits: ["C1", "C2"].map((id, i) => ({
        id,
        from: "D1",
        to: `load ${i}`,
        device: { amperes: i === 0 ? 100 : 200 },
        wiring: "raceway" as const,
      })),
      piping: [
        { id: "cold water", of: "S1", kind: "water" },
        { id: "gas", kind: "other", deviceAmperes: 100 },
      ],
    },
    "2017",
  );
  const both = (name: string, size: string, role: string, of: string) =>
    checkRest(data, [piece(name, size, { servesAlso: [{ role, of }] })]);

  it("is judged by each of them", () => {
    const pipe = "other-piping-bonding-jumper gas";
    const circuit = both("equipment-grounding-conductor C1", "8 AWG", "other-piping-bonding-jumper", "gas");
    expect([findings(circuit), verdict(circuit, pipe)]).toEqual([[], ["as-required", 0]]);
    expect(
      findings(both("equipment-grounding-conductor C1", "8 AWG", "equipment-grounding-conductor", "C2")),
    ).toEqual([["equipment-grounding-conductor C2", "short", 26_240 - 16_510]]);
    // Along a plastic raceway no jumper is required, so that only the other purpose counts.
    const alsoNeedless = both(
      "equipment-grounding-conductor C1",
      "8 AWG",
      "supply-side-bonding-jumper",
      "R1",
    );
    expect(verdict(alsoNeedless, "equipment-grounding-conductor C1")).toEqual(["as-required", 0]);
    const water = ["water-piping-bonding-jumper", "cold water"] as const;
    expect(findings(both("grounding-electrode-conductor E1", "1/0 AWG", ...water))).toEqual([]);
  });

  it("is found where that is forbidden, and open where nothing is known to permit it", () => {
    const electrode = ["grounding-electrode-conductor", "E1"] as const;
    const forbidden = both("equipment-grounding-conductor C1", "1/0 AWG", ...electrode);
    expect(forbidden.findings).toMatchObject([{ kind: "not-permitted", citation: { section: "250.121" } }]);
    const open = both("main-bonding-jumper D1", "1/0 AWG", "water-piping-bonding-jumper", "cold water");
    expect(open.findings).toMatchObject([{ kind: "open", todo: "settle", remedies: [{ do: "ask" }] }]);
  });
});

describe("the edition that something was built under", () => {
  const data = installation(
    {
      services: [
        service({
          electrodes: [
            { id: "E1", kind: "rod", from: "D1" },
            { id: "E2", kind: "rod", from: "E1" },
          ],
        }),
      ],
    },
    "2014",
  );
  const id = "grounding-electrode-conductor E1";

  it("judges it, as printed, and says so; else that of the installation does", () => {
    // The limit for rods holds for the sole connection through 2014, for several rods from 2017.
    const own = checkRest(data, [piece(id, "6 AWG")]);
    const built = checkRest(data, [piece(id, "6 AWG", { edition: "2017" })]);
    const judgedBy = (check: typeof own) => check.conductors.find((one) => one.id === id)?.judgedBy;
    expect(judgedBy(own)).toEqual({ edition: "2014", of: "installation" });
    expect(judgedBy(built)).toEqual({ edition: "2017", of: "conductor" });
    expect(findings(built)).toEqual([]);
  });

  it("may not require what this one does", () => {
    const disconnects = [
      { id: "D1", designation: "service-disconnect" as const, amperes: 400 },
      { id: "PV", designation: "supply-side-source" as const, amperes: 60, bondedBy: "jumper" as const },
    ];
    const runs = ["D1", "PV"].map((to) => ({
      id: `R ${to}`,
      from: "U1",
      to,
      supply: setsOf(1, "3/0 AWG"),
      raceways: { count: 1, kind: "nonmetallic" },
    }));
    const solar = installation(
      { services: [service({ disconnects, runs: runs as never, electrodes: [] })] },
      "2020",
    );
    const small = piece("main-bonding-jumper PV", "8 AWG");
    expect(findings(checkRest(solar, [small]))).toEqual([["main-bonding-jumper PV", "short", 25_230]]);
    const old = checkRest(solar, [{ ...small, edition: "2017" }]);
    expect([findings(old), verdict(old, "main-bonding-jumper PV")[0]]).toEqual([[], "not-required"]);
    // The 4 AWG was installed under the edition that requires it.
    const both = checkRest(solar, [{ ...small, edition: "2017" }, piece("main-bonding-jumper PV", "4 AWG")]);
    expect([findings(both), verdict(both, "main-bonding-jumper PV")[0]]).toEqual([[], "as-required"]);
  });
});

describe("an open question", () => {
  it("is a finding only where not every outcome is met, and then says that it is open", () => {
    const open = () => "open";
    expect(inEveryCase([[], []], open)).toEqual([]);
    expect(inEveryCase([["short"], []], open)).toEqual(["open"]);
    expect(inEveryCase([["short"], ["short", "too few"]], open)).toEqual(["short", "too few"]);
    expect(inEveryCase([["short"]], open)).toEqual(["short"]);
  });
});

describe("a derived system with jumpers at both ends", () => {
  it("is to be drawn so where the edition may permit it", () => {
    const source = { id: "T1", kind: "transformer" as const, outdoors: true };
    const data = installation(
      { derivedSystems: [derived({ source, jumperAt: "source", electrodes: [] })] },
      "2017",
    );
    const second = {
      role: "system-bonding-jumper",
      at: "P1",
      size: parseSize("1/0 AWG"),
      material: "copper",
    } as const;
    expect(checkRest(data, [second]).findings).toMatchObject([
      {
        kind: "open",
        citation: { section: "250.30(A)(1) Exception No. 2" },
        remedies: [{ do: "draw" }, { do: "remove" }],
      },
    ]);
  });
});
