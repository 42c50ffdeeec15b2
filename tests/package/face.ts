/**
 * What a user writes, compiled against the packed tarball: the type of every answer, what fits and what does not. It is not run.
 */
import {
  type amend,
  ampacityOf,
  type areaOf,
  assumedConductors,
  type Check,
  type Code,
  type ConductorAmpacity,
  type ConductorSize,
  type CurrentCarrying,
  cableTrayAsEquipmentGroundingConductor,
  type candidatesDocument,
  type candidatesOf,
  type checkDocument,
  checkOf,
  compare,
  compareInstallation,
  type compareSizes,
  type correspondingSum,
  type currentCarryingConductors,
  type DeviceAnswer,
  type Document,
  type Drawing,
  type DrawingOptions,
  type DwellingConductor,
  type deviceFor,
  type drawingAsSvg,
  type drawingOf,
  type dwellingConductor,
  type EditionComparison,
  type effects,
  equipmentGroundingConductor,
  type explain,
  type feederTap,
  type fingerprintOf,
  type formatArea,
  groundedConductor,
  type Input,
  InputError,
  type Installation,
  type Issue,
  installationSchema,
  intersystemBondingConductor,
  isConductorSize,
  type issuesSoFar,
  type largestDevice,
  largestSupply,
  mainBondingJumper,
  type metalMass,
  type nextSizeUp,
  type Prepared,
  type parseSize,
  prepare,
  type RacewayFill,
  type ReadingComparison,
  type RequiredByLoad,
  type Result,
  racewayFill,
  type readInstallation,
  rectangularBarsFor,
  type render,
  type reportDocument,
  type requiredByLoad,
  type requireEvidence,
  type reserveOf,
  type resultDocument,
  roles,
  type Schedule,
  type StandardSize,
  type Supply,
  type SupplyCandidates,
  type scheduleDocument,
  scheduleOf,
  shortTimeWithstand,
  size,
  type smallestConductorFor,
  type standardSizeFor,
  type sumOfLargest,
  type supplyCandidates,
  sweep,
  tableAmpacity,
  type toSquareInches,
  type tradeOffAsSvg,
  type transformerCurrent,
  type transformerSecondary,
  type VoltageDrop,
  version,
  voltageDrop,
  type waterPipingBondingJumper,
} from "bondmil";

type Equal<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/** Compiles if the two types are one. */
function same<A, B>(_is: Equal<A, B>): void {}

const code = { year: "2023" } as const;
const supply = { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] } as const;
const conductor = { material: "copper" } as const;

const jumper = size(mainBondingJumper, { code, supply, conductor });
same<typeof jumper, Result<typeof mainBondingJumper>>(true);
same<typeof jumper.role, "main-bonding-jumper">(true);
same<typeof jumper.outcome.kind, "conductor" | "area-only">(true);
const grounded = size(groundedConductor, { code, system: "service", supply, conductor });
same<typeof grounded.outcome.kind, "conductor" | "area-only" | "not-required">(true);
if (jumper.outcome.kind === "conductor") same<typeof jumper.outcome.size, StandardSize>(true);
same<ReturnType<typeof explain>, string>(true);

// @ts-expect-error a role does not take what belongs to another
size(mainBondingJumper, { code, supply, conductor, termination: "apart" });
// @ts-expect-error an edition is named by its year, and there is none of 2018
size(mainBondingJumper, { code: { year: "2018" }, supply, conductor });
// @ts-expect-error there is no default edition
size(mainBondingJumper, { supply, conductor });
// @ts-expect-error a system by an impedance goes by no supply
prepare(intersystemBondingConductor, { code, supplyMaterial: "copper", conductor });
// @ts-expect-error only one system of two words
const wrong: Input<typeof waterPipingBondingJumper> = { code, system: "tower", supply, conductor };

same<Input<typeof mainBondingJumper>["supply"], Supply>(true);
const prepared = prepare(mainBondingJumper, { code, supplyMaterial: "copper", conductor });
same<typeof prepared, Prepared>(true);
same<ReturnType<ReturnType<typeof prepareByRating>["requiredArea"]>, number>(true);
function prepareByRating() {
  return prepare(equipmentGroundingConductor, { code, conductor });
}
const largest = largestSupply(mainBondingJumper, {
  code,
  conductor: { size: "4/0 AWG", material: "copper" },
  supplyMaterial: "copper",
});
same<typeof largest.largest, number | null>(true);
same<ReturnType<typeof largestDevice>["amperes"], number | null>(true);
const editions = compare(mainBondingJumper, { over: "editions", input: { supply, conductor } });
same<typeof editions, EditionComparison<Result<typeof mainBondingJumper>>>(true);
const readings = compare(mainBondingJumper, { over: "readings", input: { code, supply, conductor } });
same<typeof readings, ReadingComparison<Result<typeof mainBondingJumper>>>(true);
const rows = sweep(mainBondingJumper, { supplyMaterial: "copper", material: "copper" });
same<(typeof rows)[number]["supplyArea"], number>(true);
const rated = sweep(equipmentGroundingConductor, { material: "copper" });
same<(typeof rated)[number]["amperes"], number>(true);
same<ReturnType<typeof requireEvidence<typeof jumper>>, typeof jumper>(true);
same<ReturnType<typeof reserveOf>["meets"], boolean>(true);
same<ReturnType<typeof amend>, Code>(true);
same<ReturnType<typeof effects>["grid"][number]["larger"], number>(true);
size(cableTrayAsEquipmentGroundingConductor, { code, amperes: 225, metal: "steel" }).outcome.kind;
for (const role of Object.values(roles))
  same<typeof role.facts.purpose, "fault-path" | "electrode-system" | "equalizing" | "load">(true);

const installation = {
  format: 1,
  title: "Kiosk",
  code,
  materials: {
    bondingJumpers: "copper",
    groundedConductors: "copper",
    electrodeConductors: "copper",
    equipmentGrounding: "copper",
  },
  services: [
    {
      id: "S1",
      grounding: "solidly-grounded",
      connection: "three-phase-wye",
      utility: { id: "U1", outdoorTransformer: false },
      runs: [{ id: "R1", from: "U1", to: "D1", supply, raceways: { count: 1, kind: "nonmetallic" } }],
      disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 400 }],
      housing: "separate-enclosures",
    },
  ],
} as const;
const read: Installation = installation;
same<ReturnType<typeof readInstallation>, Installation>(true);
same<ReturnType<typeof scheduleOf>, Schedule>(true);
const unmarked = scheduleOf(installation, { fingerprint: false });
same<typeof unmarked, Omit<Schedule, "installationFingerprint" | "fingerprint">>(true);
same<ReturnType<typeof checkOf>, Check>(true);
same<ReturnType<typeof drawingOf>, Drawing>(true);
scheduleOf(installation).conductors.map(({ role }) => role);
checkOf(read);
compareInstallation({ over: "editions", installation: read });
// @ts-expect-error a title is spelled so
scheduleOf({ ...installation, titel: "x" });
// @ts-expect-error an installation is no text; readInstallation reads one
scheduleOf("{}");
// @ts-expect-error a set is uniform or has phases, never both
const both: Supply = { sets: [{ count: 1, size: "4 AWG", material: "copper", phases: [null] }] };
same<ReturnType<typeof issuesSoFar>, readonly Issue[]>(true);
const validated = installationSchema["~standard"].validate({});
if (validated.issues === undefined) same<typeof validated.value, Installation>(true);
const formed = mainBondingJumper["~standard"].validate({});
if (formed.issues === undefined) same<typeof formed.value, Input<typeof mainBondingJumper>>(true);

same<ReturnType<typeof scheduleDocument>, Document>(true);
same<ReturnType<typeof checkDocument>, Document>(true);
same<ReturnType<typeof reportDocument>, Document>(true);
same<ReturnType<typeof resultDocument>, Document>(true);
same<ReturnType<typeof render>, string>(true);
same<ReturnType<typeof drawingAsSvg>, string>(true);
same<Parameters<typeof drawingAsSvg>[1], DrawingOptions | undefined>(true);
same<ReturnType<typeof fingerprintOf>, string>(true);

same<ReturnType<typeof areaOf>, number>(true);
same<ReturnType<typeof parseSize>, ConductorSize>(true);
same<ReturnType<typeof nextSizeUp>, StandardSize | null>(true);
same<ReturnType<typeof standardSizeFor>, StandardSize | null>(true);
same<ReturnType<typeof compareSizes>, number>(true);
same<ReturnType<typeof formatArea>, string>(true);
same<ReturnType<typeof toSquareInches>, number>(true);
const text: string = "4/0 AWG";
if (isConductorSize(text)) same<typeof text, ConductorSize>(true);
tableAmpacity({ edition: "2023", size: "500 kcmil", material: "copper", temperature: 75 }).amperes;
ampacityOf({
  edition: "2023",
  conductor: { size: "8 AWG", material: "copper", insulation: "THHN" },
  place: { location: "dry", ambient: { celsius: 35 } },
  terminations: { marked: 75 },
}).amperes;
ampacityOf({
  edition: "2023",
  conductor: { size: "8 AWG", material: "copper", insulation: "THHN" },
  // @ts-expect-error a temperature is in one unit
  place: { location: "dry", ambient: { celsius: 35, fahrenheit: 95 } },
  terminations: { marked: 75 },
});
same<ReturnType<typeof ampacityOf>, ConductorAmpacity>(true);
same<ReturnType<typeof currentCarryingConductors>, CurrentCarrying>(true);
same<ReturnType<typeof deviceFor>, DeviceAnswer>(true);
same<ReturnType<typeof dwellingConductor>, DwellingConductor>(true);
same<ReturnType<typeof requiredByLoad>, RequiredByLoad>(true);
same<ReturnType<typeof smallestConductorFor>, StandardSize | null>(true);
same<ReturnType<typeof feederTap>["amperes"], number | null>(true);
same<ReturnType<typeof transformerSecondary>["amperes"], number | null>(true);
same<ReturnType<typeof supplyCandidates>, SupplyCandidates>(true);
same<ReturnType<typeof candidatesDocument>, Document>(true);
same<ReturnType<typeof candidatesOf>["runs"][number]["candidates"], SupplyCandidates>(true);
same<ReturnType<typeof tradeOffAsSvg>, string>(true);
same<SupplyCandidates["candidates"][number]["supply"], Supply>(true);
same<ReturnType<typeof correspondingSum>, number>(true);
same<ReturnType<typeof sumOfLargest>, number>(true);
same<ReturnType<typeof transformerCurrent>, number>(true);
assumedConductors({ edition: "2023", supply, material: "aluminum", temperature: 75 }).length;
rectangularBarsFor(375000).length;
same<ReturnType<typeof racewayFill>, RacewayFill>(true);
racewayFill({
  edition: "2023",
  raceway: "rigid-metal",
  conductors: [
    { count: 3, size: "4/0 AWG", insulation: "THWN-2" },
    { count: 1, size: "6 AWG", bare: "stranded" },
  ],
}).smallestTradeSize;
same<ReturnType<typeof voltageDrop>, VoltageDrop>(true);
voltageDrop({
  edition: "2023",
  current: "direct",
  volts: 48,
  amperes: 20,
  feet: 100,
  conductors: { size: "6 AWG", material: "copper" },
  impedance: { from: "table-8" },
}).sufficient;
same<ReturnType<typeof metalMass>["copper"], number>(true);
shortTimeWithstand({
  conductor: { size: "4/0 AWG", material: "copper" },
  temperatures: { initial: 75, final: 150 },
  fault: { amperes: 5000, seconds: 0.25 },
}).steps;
const issues: readonly Issue[] = new InputError([]).issues;

export { both, issues, version, wrong };
