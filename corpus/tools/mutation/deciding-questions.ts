import {
  type AnyRole,
  ampacityOf,
  assumedConductors,
  type Code,
  type EditionYear,
  InputError,
  type Material,
  type Role,
  roles,
  size,
  standardSizes,
  supplyCandidates,
  type TemperatureColumn,
  tableAmpacity,
} from "../../../src/index.js";

/** What reads an ampacity on the way to a size. */
export const deciders = [
  "conductors of another material",
  "load of a grounded conductor",
  "current of an impedance",
  "candidates for a load",
] as const;

/** One of {@link deciders}. */
export type Decider = (typeof deciders)[number];

/** A question whose answer is a size, or a list of them. */
export interface DecidingQuestion {
  readonly by: Decider;
  ask(): string;
  /** What is found sooner than the answer; only where it changes is the question put anew. */
  hangsOn?(): string;
}

const metals = ["copper", "aluminum"] as const;
const temperatures = [60, 75, 90] as const;
const counts = [1, 2, 3, 4, 5, 6, 8] as const;

/** Roles that differ in when they replace conductors of another material. */
const replacing = ["main-bonding-jumper", "supply-side-bonding-jumper", "grounded-conductor"] as const;

/** The questions of an edition whose answers an ampacity can decide: at each ampacity that its table has, and one ampere above. */
export function decidingQuestions(year: EditionYear): readonly DecidingQuestion[] {
  return [...ofImpedances(year), ...ofLoads(year), ...ofCandidates(year), ...ofOtherMaterial(year)];
}

function ofOtherMaterial(edition: EditionYear): readonly DecidingQuestion[] {
  return metals.flatMap((material) =>
    temperatures.flatMap((temperature) =>
      standardSizes.map((installed) => {
        const supplyOf = (count: number) => ({
          sets: [{ count, size: installed, material: otherThan(material) }],
        });
        return {
          by: "conductors of another material",
          hangsOn: () =>
            answer(() =>
              assumedConductors({ edition, supply: supplyOf(1), material, temperature }).map(
                ({ area }) => area,
              ),
            ),
          ask: () =>
            replacing
              .flatMap((role) =>
                counts.map((count) =>
                  sizeOf(role, {
                    code: { year: edition },
                    supply: supplyOf(count),
                    conductor: { material },
                    temperature,
                    ...(role === "grounded-conductor" && { system: "service" }),
                  }),
                ),
              )
              .join(),
        };
      }),
    ),
  );
}

function ofImpedances(year: EditionYear): readonly DecidingQuestion[] {
  return metals.flatMap((material) =>
    temperatures.flatMap((temperature) =>
      edgesOf(year, material, temperature).map((impedanceAmperes) => ({
        by: "current of an impedance" as const,
        ask: () =>
          sizeOf("impedance-grounding-conductor", {
            code: { year },
            impedanceAmperes,
            conductor: { material },
            temperature,
          }),
      })),
    ),
  );
}

/** The terminations of a circuit decide the column: 60 C through 100 A, 75 C above. */
function ofLoads(year: EditionYear): readonly DecidingQuestion[] {
  return metals.flatMap((material) =>
    ([60, 75] as const).flatMap((temperature) =>
      edgesOf(year, material, temperature).map((amperes) => ({
        by: "load of a grounded conductor" as const,
        ask: () =>
          sizeOf("grounded-conductor", {
            code: { year },
            system: "separately-derived",
            jumperAt: "source",
            supply: { sets: [{ count: 1, size: "2000 kcmil", material }] },
            conductor: { material },
            load: { amperes, circuitAmperes: temperature === 60 ? 100 : 1000 },
          }),
      })),
    ),
  );
}

/** Insulation of each column, with terminations that let it count; in a hot place that of 90 C decides. The loads are what each conductor carries there, and one ampere more. */
function ofCandidates(edition: EditionYear): readonly DecidingQuestion[] {
  const places = [
    { insulation: "TW", celsius: 30, marked: 60 },
    { insulation: "THW", celsius: 30, marked: 75 },
    { insulation: "THHN", celsius: 50, marked: 75 },
  ] as const;
  return places.flatMap(({ insulation, celsius, marked }) =>
    metals.flatMap((material) =>
      standardSizes.flatMap((conductor) => {
        const carried = () =>
          carriedBy({
            edition,
            conductor: { size: conductor, material, insulation },
            place: { location: "dry", ambient: { celsius } },
            terminations: { marked },
          });
        const now = carried();
        if (now === null) return [];
        return [Math.floor(now), Math.floor(now) + 1].map(
          (amperes): DecidingQuestion => ({
            by: "candidates for a load",
            hangsOn: () => String(carried()),
            ask: () =>
              answer(() =>
                supplyCandidates({
                  code: { year: edition },
                  system: { kind: "feeder", ungrounded: 3 },
                  load: { continuous: 0, other: amperes },
                  conductor: { insulation, materials: [material] },
                  place: { location: "dry", ambient: { celsius } },
                  terminations: marked,
                  limits: { mostSets: 1 },
                  bonding: { material: "copper" },
                }).candidates.map(({ sets, size: own }) => ({ sets, own })),
              ),
          }),
        );
      }),
    ),
  );
}

/** Amperes of a conductor in its place; `null` where the table has no value for it. */
function carriedBy(question: Parameters<typeof ampacityOf>[0]): number | null {
  try {
    return ampacityOf(question).amperes;
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

function edgesOf(
  edition: EditionYear,
  material: Material,
  temperature: TemperatureColumn,
): readonly number[] {
  return standardSizes.flatMap((one) => {
    const { amperes } = tableAmpacity({ edition, size: one, material, temperature });
    return amperes === null ? [] : [amperes, amperes + 1];
  });
}

function otherThan(material: Material): Material {
  return material === "copper" ? "aluminum" : "copper";
}

function sizeOf(id: Role, input: Readonly<Record<string, unknown>> & { readonly code: Code }): string {
  // The compiler cannot see that the role and its input belong together.
  const asked: AnyRole = roles[id];
  return answer(() => size(asked, input).outcome);
}

function answer(ask: () => unknown): string {
  try {
    return JSON.stringify(ask());
  } catch (error) {
    if (error instanceof InputError) return JSON.stringify(error.issues.map(({ code }) => code));
    throw error;
  }
}
