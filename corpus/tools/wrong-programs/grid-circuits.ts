import type { ProtectedCircuit, Supply } from "../../../src/index.js";
import { aluminum, copper, phasedCopper } from "./grid-supplies.js";

type Sets = Supply["sets"];

/** A circuit with a device. */
export const circuit = (amperes: number, more: Omit<ProtectedCircuit, "device"> = {}): ProtectedCircuit => ({
  device: { amperes },
  ...more,
});

const increased = (
  amperes: number,
  to: Sets[number],
  from: Sets[number],
  reason: "voltage-drop" | "temperature-or-number" = "voltage-drop",
): ProtectedCircuit =>
  circuit(amperes, {
    conductors: { sets: [to] },
    increasedFrom: { conductors: { sets: [from] }, reason },
  });

/** Circuits with increases, taps, motors, limits, and several on one conductor. */
export const circuitLists: readonly (readonly ProtectedCircuit[])[] = [
  [increased(40, copper("4 AWG"), copper("8 AWG"))],
  [increased(125, copper("1/0 AWG"), copper("1 AWG"))],
  [increased(200, copper("350 kcmil"), copper("3/0 AWG"))],
  [increased(200, copper("350 kcmil"), copper("3/0 AWG"), "temperature-or-number")],
  [increased(400, copper("600 kcmil", 2), copper("3/0 AWG", 2))],
  [increased(800, copper("500 kcmil", 5), copper("500 kcmil", 2))],
  [increased(100, aluminum("4/0 AWG"), aluminum("1/0 AWG"))],
  [increased(100, copper("3/0 AWG"), copper("1 AWG"))],
  [increased(60, copper("6 AWG"), copper("4 AWG"))],
  [increased(30, copper("8 AWG"), copper("10 AWG"))],
  [circuit(4000, { conductors: { sets: [copper("500 kcmil")] } })],
  [circuit(2000, { conductors: { sets: [copper("1/0 AWG", 2)] } })],
  [circuit(1200, { conductors: { sets: [aluminum("4/0 AWG", 1)] } })],
  [circuit(400, { conductors: { sets: [copper("3/0 AWG", 2)] } })],
  [circuit(15), circuit(60), circuit(200)],
  [circuit(100), circuit(30)],
  [circuit(30), circuit(100)],
  [
    circuit(20, { conductors: { sets: [copper("12 AWG")] } }),
    increased(60, copper("2 AWG"), copper("6 AWG")),
  ],
  [circuit(100), increased(60, copper("1/0 AWG"), copper("6 AWG"))],
  [circuit(350)],
  [circuit(450)],
  [circuit(110)],
  [circuit(6000)],
  [circuit(7000)],
  [
    {
      device: { aheadOfFeeder: { amperes: 800 } },
      conductors: { sets: [copper("3/0 AWG")] },
    },
  ],
  [
    {
      device: { motor: { kind: "inverse-time-or-fuse", deviceAmperes: 150 } },
      conductors: { sets: [copper("8 AWG")] },
    },
  ],
  [circuit(10)],
  [increased(400, phasedCopper("600 kcmil", "350 kcmil"), copper("350 kcmil"))],
  [increased(400, phasedCopper("350 kcmil", "600 kcmil"), copper("350 kcmil"))],
  [{ device: { amperes: 400 }, conductors: { sets: [copper("3/0 AWG"), copper("4/0 AWG")] } }],
  [
    {
      device: { amperes: 400 },
      conductors: { sets: [copper("3/0 AWG"), copper("350 kcmil")] },
      increasedFrom: { conductors: { sets: [copper("3/0 AWG", 2)] }, reason: "voltage-drop" },
    },
  ],
  [{ device: { amperes: 20 }, conductors: { sets: [copper("14 AWG")] } }],
];
