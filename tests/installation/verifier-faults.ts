import { fingerprintOf, type Installation, type Schedule, type ScheduledConductor } from "bondmil";

/** A schedule with one fault, signed anew, and what the fault is. */
export interface Planted {
  readonly what: string;
  readonly schedule: Schedule;
}

type Lines = readonly ScheduledConductor[];

/** Signs a schedule, its totals made to fit, so that only its content can tell on it. */
export function signed({ fingerprint: _, ...schedule }: Schedule): Schedule {
  const feet = new Map<string, Schedule["totals"][number]>();
  for (const { result, quantity, lengthFeet, alternative } of schedule.conductors) {
    const { outcome, material } = result;
    if (lengthFeet === undefined || alternative !== undefined || outcome.kind !== "conductor") continue;
    const key = `${material} ${outcome.size}`;
    const before = feet.get(key)?.feet ?? 0;
    feet.set(key, { size: outcome.size, material, feet: before + quantity * lengthFeet });
  }
  const unsigned = { ...schedule, totals: [...feet.values()] };
  return { ...unsigned, fingerprint: fingerprintOf(unsigned) };
}

const withLines = (schedule: Schedule, conductors: Lines): Schedule => signed({ ...schedule, conductors });

function withLine(schedule: Schedule, old: ScheduledConductor, line: ScheduledConductor): Schedule {
  return withLines(
    schedule,
    schedule.conductors.map((one) => (one === old ? line : one)),
  );
}

const isWire = ({ result }: ScheduledConductor): boolean => result.outcome.kind !== "not-required";

/** Cautions of a result that its own steps require. */
const recomputed = [
  "assumed-conductors",
  "no-single-conductor-of-equal-ampacity",
  "mixed-supply-materials",
  "conductors-required-for-load",
];

/** Roles of which the verifier does not follow yet which of several conductors in the installation decide. */
const notFollowed = [
  "electrode-raceway-bonding-jumper",
  "impedance-bonding-jumper",
  "water-piping-bonding-jumper",
  "structural-metal-bonding-jumper",
  "grounding-electrode-conductor",
  "electrode-bonding-jumper",
  "other-piping-bonding-jumper",
  "impedance-grounding-conductor",
];

/**
 * A box may be bonded by the conductors that pass it in more than one way, of which the largest decide; the verifier only sees that they all
 * pass it.
 */
function isOfBox({ role, subject, to }: ScheduledConductor): boolean {
  return role === "supply-side-bonding-jumper" && to.kind === "place" && to.id === subject;
}

/** The result of a smaller conductor of the same role, in this place. */
function smallerResults(schedule: Schedule): readonly Planted[] {
  const followed = schedule.conductors.filter((one) => isWire(one) && !notFollowed.includes(one.role));
  return followed.flatMap((line) =>
    schedule.conductors
      .filter((other) => isWire(other) && other.role === line.role && other.part === line.part)
      .filter(({ alternative }) => alternative === line.alternative)
      .filter(({ result }) => result.requiredArea < line.result.requiredArea)
      .filter(({ result }) => result.material === line.result.material)
      .flatMap((other) =>
        (isOfBox(line) ? [line.by] : [line.by, other.by]).map((by) => ({
          what: `${line.id} with the result of ${other.id}, by ${by.join()}`,
          schedule: withLine(schedule, line, { ...line, by, result: other.result }),
        })),
      ),
  );
}

function quantities(schedule: Schedule): readonly Planted[] {
  return schedule.conductors.filter(isWire).map((line) => ({
    what: `${line.id}, twice as many`,
    schedule: withLine(schedule, line, { ...line, quantity: line.quantity * 2 }),
  }));
}

const along = ["grounded-conductor", "supply-side-bonding-jumper", "equipment-grounding-conductor"];

function places(schedule: Schedule): readonly Planted[] {
  const elsewhere = { kind: "place", id: "elsewhere" } as const;
  return schedule.conductors
    .filter(({ role, part }) => along.includes(role) && part === undefined)
    .map((line) => ({
      what: `${line.id}, ending elsewhere`,
      schedule: withLine(schedule, line, { ...line, from: elsewhere, to: elsewhere }),
    }));
}

function deletedLines(schedule: Schedule, installation: Installation): readonly Planted[] {
  const answered = [
    ...(installation.circuits ?? []),
    ...(installation.piping ?? []),
    ...(installation.structuralMetal ?? []),
    ...(installation.intersystem ?? []),
    ...(installation.generators ?? []),
    ...(installation.services ?? []).flatMap(({ electrodes = [] }) => electrodes),
  ].map(({ id }) => id);
  const isGrounded = (line: ScheduledConductor): boolean => line.role === "grounded-conductor";
  return schedule.conductors
    .filter((line) => isGrounded(line) || answered.includes(line.subject))
    .filter((line) => !line.role.startsWith("electrode-raceway"))
    .map((line) => ({
      what: `${line.id}, deleted`,
      schedule: withLines(
        schedule,
        schedule.conductors.filter(({ role, subject }) => role !== line.role || subject !== line.subject),
      ),
    }));
}

function deletedCautions(schedule: Schedule): readonly Planted[] {
  const ofResults = schedule.conductors.flatMap((line) =>
    line.result.cautions
      .filter(({ code }) => recomputed.includes(code))
      .map(({ code }) => {
        const cautions = line.result.cautions.filter((one) => one.code !== code);
        return {
          what: `${line.id}, without its caution ${code}`,
          schedule: withLine(schedule, line, { ...line, result: { ...line.result, cautions } }),
        };
      }),
  );
  const ofPlaces = schedule.cautions
    .filter(({ code }) => code === "parallel-below-1-0")
    .map((gone) => ({
      what: `without the caution ${gone.code} at ${gone.at}`,
      schedule: signed({ ...schedule, cautions: schedule.cautions.filter((one) => one !== gone) }),
    }));
  return [...ofResults, ...ofPlaces];
}

function deletedViolations(schedule: Schedule): readonly Planted[] {
  return schedule.violations
    .filter(({ code }) => code === "more-than-six-disconnects" || code === "material-forbidden")
    .map((gone) => ({
      what: `without the violation ${gone.code}`,
      schedule: signed({ ...schedule, violations: schedule.violations.filter((one) => one !== gone) }),
    }));
}

/** Without the step of a load that decides nothing, so that every number still fits. */
function deletedLoads(schedule: Schedule, installation: Installation): readonly Planted[] {
  const solid = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])]
    .filter(({ grounding }) => grounding === "solidly-grounded")
    .flatMap(({ runs }) => runs.map(({ id }) => id));
  return schedule.conductors
    .filter(({ subject, result }) => solid.includes(subject) && result.governs !== "load")
    .filter(({ result }) => result.steps.some(({ kind }) => kind === "load"))
    .map((line) => {
      const steps = line.result.steps.filter(({ kind }) => kind !== "load");
      return {
        what: `${line.id}, without its load`,
        schedule: withLine(schedule, line, { ...line, result: { ...line.result, steps } }),
      };
    });
}

function contradictedReadings(schedule: Schedule): readonly Planted[] {
  return schedule.conductors.flatMap((line) =>
    line.result.readings.flatMap((reading) => {
      const [other] = reading.otherwise;
      if (other === undefined) return [];
      const readings = line.result.readings.map((one) =>
        one === reading ? { ...one, chosen: other.alternative } : one,
      );
      return [
        {
          what: `${line.id}, reading ${reading.id} said to be ${other.alternative}`,
          schedule: withLine(schedule, line, { ...line, result: { ...line.result, readings } }),
        },
      ];
    }),
  );
}

function lengths(schedule: Schedule): readonly Planted[] {
  return schedule.conductors
    .filter((line) => isWire(line) && line.lengthFeet !== undefined && along.includes(line.role))
    .map((line) => ({
      what: `${line.id}, longer`,
      schedule: withLine(schedule, line, { ...line, lengthFeet: (line.lengthFeet ?? 0) + 5 }),
    }));
}

function inputs(schedule: Schedule): readonly Planted[] {
  return [
    {
      what: "the fingerprint of another installation",
      schedule: signed({ ...schedule, installationFingerprint: "0000-0000-0000-0000" }),
    },
  ];
}

/** Every kind of fault that the verifier notices beside the installation, and what plants it wherever it can be. */
export const faults: Readonly<
  Record<string, (schedule: Schedule, installation: Installation) => readonly Planted[]>
> = {
  "a smaller result in another's place": smallerResults,
  "another number": quantities,
  "another place": places,
  "another length": lengths,
  "a deleted line": deletedLines,
  "a deleted caution": deletedCautions,
  "a deleted violation": deletedViolations,
  "a deleted load": deletedLoads,
  "a reading that the code contradicts": contradictedReadings,
  "another input": inputs,
};
