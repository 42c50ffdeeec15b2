import { mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";
import {
  type Arrangement,
  type Connection,
  compareArrangements,
} from "../../../src/installation/arrangements/arrangement.js";
import { scheduled } from "../../../src/installation/scheduled.js";

const citation = { section: "an invented section", evidence: "memory" } as const;
const jumper = (count: number) =>
  size(mainBondingJumper, {
    code: { year: "2023" },
    supply: { sets: [{ count, size: "500 kcmil", material: "copper" }] },
    conductor: { material: "copper" },
  });
const connected = (kind: Connection["kind"], at: string): Connection => ({
  kind,
  status: "required",
  at: [at],
  note: "at-the-jumper",
  citation,
});

const placed = (subject: string, count: number) =>
  scheduled({ subject }, { kind: "grounded-conductor" }, subject, jumper(count));

const plain: Arrangement = {
  id: "jumper-in-each-enclosure",
  status: "permitted",
  citation,
  conductors: [placed("A", 1)],
  totalArea: 105_600,
  connections: [connected("grounded-conductor", "A"), connected("grounding-electrode-conductor", "A")],
  violations: [],
  cautions: [],
};
const differences = (change: Partial<Arrangement>) =>
  compareArrangements("2023", [plain, { ...plain, ...change }]).differences;

describe("what differs between two arrangements", () => {
  it("is nothing where they are alike", () => {
    expect(differences({ id: "jumper-at-source" })).toEqual([]);
  });

  it("is the sizes where a conductor is at another place or of another size", () => {
    expect(differences({ conductors: [placed("B", 1)] })).toEqual(["sizes"]);
    expect(differences({ conductors: [placed("A", 3)] })).toEqual(["sizes"]);
  });

  it.each(["grounded-conductor", "grounding-electrode-conductor"] as const)("is the %s alone", (kind) => {
    const connections = plain.connections.map((one) => (one.kind === kind ? { ...one, at: ["B"] } : one));
    expect(differences({ connections })).toEqual([kind]);
  });

  it("is a second connection, whichever it is", () => {
    const connections = [...plain.connections, connected("second-connection-load-side", "A")];
    expect(differences({ connections })).toEqual(["second-connections"]);
  });

  it("is the metal in all", () => {
    expect(differences({ totalArea: 1 })).toEqual(["total-metal"]);
  });
});
