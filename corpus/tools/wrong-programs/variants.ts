import type { Electrode, Material, Role, Supply } from "../../../src/index.js";
import { circuit, circuitLists } from "./grid-circuits.js";
import { copper, few, type Sized, supplies } from "./grid-supplies.js";
import type { AnyInput } from "./program.js";

const materials: readonly Material[] = ["copper", "aluminum", "copper-clad aluminum"];

const cross = (
  some: readonly Supply[],
  wanted: readonly Material[],
  ...members: readonly AnyInput[]
): readonly AnyInput[] =>
  members.flatMap((own) =>
    some.flatMap((supply) => wanted.map((material) => ({ ...own, supply, conductor: { material } }))),
  );

const metals: readonly Material[] = ["copper", "aluminum"];
const electrodesOf = (...kinds: readonly Exclude<Electrode["kind"], "ring">[]): readonly Electrode[] =>
  kinds.map((kind) => ({ kind }));
const electrodes: readonly (readonly Electrode[])[] = [
  electrodesOf("rod"),
  electrodesOf("plate"),
  electrodesOf("pipe"),
  electrodesOf("concrete-encased"),
  electrodesOf("rod", "concrete-encased"),
  electrodesOf("concrete-encased", "rod"),
  electrodesOf("rod", "metal-water-pipe"),
  electrodesOf("metal-water-pipe", "concrete-encased"),
  electrodesOf("rod", "rod"),
  [{ kind: "ring", conductor: "2 AWG" }],
  [{ kind: "ring", conductor: "4 AWG" }],
  [{ kind: "rod" }, { kind: "ring", conductor: "1/0 AWG" }],
];
const water = electrodesOf("metal-water-pipe");
const reached = (member: AnyInput): readonly AnyInput[] =>
  electrodes.map((own) => ({ ...member, electrodes: own }));

const bySupply = (): readonly AnyInput[] => [
  ...cross(supplies, materials, {}),
  ...supplies.map((supply): AnyInput => ({ supply, conductor: { material: "copper", form: "bus" } })),
  // No area, no conductor: what has to be refused.
  { supply: { sets: [] }, conductor: { material: "copper" } },
];

const rated = (): readonly AnyInput[] =>
  circuitLists.flatMap((circuits) => materials.map((material) => ({ circuits, conductor: { material } })));

const deviceAmperes = [15, 90, 110, 200, 225, 350, 450, 4000, 7000];

const byRole: Readonly<Record<Role, () => readonly AnyInput[]>> = {
  "main-bonding-jumper": bySupply,
  "system-bonding-jumper": () => [
    ...bySupply(),
    ...cross([{ sets: [copper("14 AWG")] }, { sets: [copper("18 AWG")] }], metals, {
      controlTransformer: true,
    }),
  ],
  "supply-side-bonding-jumper": () => [
    ...bySupply(),
    ...cross(
      few,
      metals,
      ...(["service", "separately-derived"] as const).flatMap((system) =>
        (["raceway", "single-raceway", "all"] as const).map((scope) => ({ system, scope })),
      ),
    ),
    ...cross(few.slice(0, 2), ["copper"], { instead: "bonding-fittings" }, { instead: "grounded-conductor" }),
  ],
  "grounded-conductor": () => [
    ...cross(
      supplies,
      metals,
      { system: "service" },
      { system: "service", scope: "raceway" },
      { system: "separately-derived", jumperAt: "enclosure", scope: "raceway" },
    ),
    ...supplies.map(
      (supply): AnyInput => ({ system: "service", supply, conductor: { material: "copper", form: "bus" } }),
    ),
    ...cross(
      few.slice(0, 8),
      metals,
      { system: "service", grounded: "phase" },
      { system: "separately-derived", jumperAt: "source" },
      { system: "separately-derived", jumperAt: "enclosure" },
      { system: "separately-derived", jumperAt: "source", load: { amperes: 80, circuitAmperes: 100 } },
      { system: "service", load: { amperes: 110, circuitAmperes: 225 } },
      { system: "service", load: { amperes: 80, circuitAmperes: 100 } },
      { system: "service", load: { amperes: 12, circuitAmperes: 30 } },
      { system: "separately-derived", jumperAt: "source", load: { amperes: 12, circuitAmperes: 30 } },
      { system: "service", feederDeviceAmperes: 400 },
      { system: "service", feederDeviceAmperes: 350, scope: "raceway" },
      { system: "service", rebondedAtBuildingWithDevice: 225 },
      { system: "service", feederDeviceAmperes: 2000 },
      { system: "separately-derived" },
    ),
  ],
  "impedance-grounding-conductor": () =>
    [5, 10, 30, 50, 58, 80, 100, 140, 400, 2000].flatMap((impedanceAmperes) =>
      materials.flatMap((material) => [
        { impedanceAmperes, conductor: { material } },
        { impedanceAmperes, conductor: { material }, temperature: 75 as const },
      ]),
    ),
  "impedance-bonding-jumper": () => [
    ...cross(supplies, materials, { electrodeConductorAt: "impedance" }),
    ...(["14 AWG", "8 AWG", "4 AWG", "1/0 AWG"] as const).flatMap((impedanceConductor) =>
      metals.map((material) => ({
        electrodeConductorAt: "first-disconnect",
        impedanceConductor,
        conductor: { material },
      })),
    ),
    { electrodeConductorAt: "impedance", supply: { sets: [] }, conductor: { material: "copper" } },
  ],
  "equipment-grounding-conductor": () => [
    ...rated(),
    ...circuitLists.slice(13, 14).map(
      (circuits): AnyInput => ({
        circuits,
        conductor: { material: "copper" },
        run: { kind: "parallel-raceways" },
      }),
    ),
    {
      circuits: [circuit(60)],
      conductor: { material: "copper" },
      run: { kind: "tray", conductor: "single" },
    },
    {
      circuits: [circuit(200, { conductors: { sets: [copper("3/0 AWG", 2)] } })],
      conductor: { material: "copper" },
      run: { kind: "parallel-raceways" },
    },
  ],
  "equipment-bonding-jumper": rated,
  "water-piping-bonding-jumper": () => [
    ...cross(
      supplies,
      metals,
      { system: "service" },
      { system: "separately-derived" },
      { system: "building" },
    ),
    ...cross(supplies.slice(0, 3), ["copper"], { system: "separately-derived", isElectrode: true }),
    ...deviceAmperes.flatMap((amperes) => [
      ...cross(few.slice(0, 5), metals, { system: "building", deviceAmperes: amperes }),
      ...materials.map((material) => ({
        system: "occupancy",
        deviceAmperes: amperes,
        conductor: { material },
      })),
    ]),
  ],
  "other-piping-bonding-jumper": () =>
    deviceAmperes.flatMap((amperes) =>
      materials.map((material) => ({ deviceAmperes: amperes, conductor: { material } })),
    ),
  "structural-metal-bonding-jumper": () => [
    ...cross(supplies, metals, { system: "service" }, { system: "separately-derived" }),
    ...cross(few.slice(0, 2), ["copper"], { system: "separately-derived", isElectrode: true }),
    { system: "service", supply: { sets: [] }, conductor: { material: "copper" } },
  ],
  "grounding-electrode-conductor": () => [
    ...cross(supplies, materials, { system: "service", electrodes: water }),
    ...cross(few.slice(0, 4), metals, ...reached({ system: "service" })),
    ...cross(few.slice(0, 3), metals, ...reached({ system: "service", part: "common" })),
    ...cross(few, metals, { system: "separately-derived", electrodes: water }),
    ...cross(supplies, metals, { system: "service", part: "common", electrodes: water }),
    ...cross(supplies, metals, { system: "service", part: "common", fromDrop: true, electrodes: water }),
    ...cross(few, metals, { system: "separately-derived", part: "tap", electrodes: water }),
    ...cross([{ sets: [copper("14 AWG")] }], ["copper"], {
      system: "separately-derived",
      controlTransformer: true,
      electrodes: water,
    }),
    ...cross([{ sets: [copper("10 AWG")] }], ["copper"], {
      system: "building",
      onSingleBranchCircuit: true,
      electrodes: water,
    }),
    ...metals.flatMap((material) =>
      [water, ...electrodes].map(
        (own): AnyInput => ({
          system: "separately-derived",
          part: "common",
          electrodes: own,
          conductor: { material },
        }),
      ),
    ),
  ],
  "electrode-bonding-jumper": () => [
    ...cross(supplies, materials, { electrodes: water }),
    ...cross(few.slice(0, 4), metals, ...reached({}), {
      electrodes: electrodesOf("rod"),
      supplemental: true,
    }),
  ],
  "electrode-raceway-bonding-jumper": () =>
    materials.flatMap((material) => [
      { ferrous: true, conductor: { material }, enclosed: [copper1("4 AWG"), copper1("1/0 AWG")] },
      { ferrous: true, conductor: { material }, enclosed: [copper1("1/0 AWG"), copper1("4 AWG")] },
      { ferrous: true, conductor: { material }, enclosed: [copper1("4 AWG")] },
      { ferrous: false, conductor: { material }, enclosed: [copper1("4 AWG")] },
    ]),
  "intersystem-bonding-conductor": () => [
    { termination: "apart" },
    { termination: "on-enclosure" },
    { termination: "busbar" },
    { termination: "busbar", electrodeConductorOnBusbar: "2/0 AWG" },
    { termination: "apart", communicationsUnlikely: true },
    { termination: "apart", electrodeConductorOnBusbar: "2/0 AWG" },
  ],
};

function copper1(size: Sized): { readonly size: Sized; readonly material: "copper" } {
  return { size, material: "copper" };
}

/** Inputs of a role beside its own grid: one for each thing that a mistake can be about. */
export function variantsOf(role: Role): readonly AnyInput[] {
  return byRole[role]();
}
