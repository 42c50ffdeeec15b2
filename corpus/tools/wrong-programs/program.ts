import {
  type AnyRole,
  areaOf,
  type Conductor,
  type ConductorSize,
  type EditionYear,
  type Electrode,
  type Material,
  type ProtectedCircuit,
  type Role,
  roles,
  type SizingResult,
  type Supply,
  size,
  standardSizeFor,
} from "../../../src/index.js";
import type { CheckInput } from "../runner/check-input.js";

/** What the inputs of all roles have between them; each program looks at what is there. */
export interface AnyInput {
  readonly supply?: Supply;
  readonly conductor?: { readonly material: Material; readonly form?: "wire" | "bus" };
  readonly temperature?: 60 | 75 | 90;
  readonly circuits?: readonly ProtectedCircuit[];
  readonly run?: { readonly kind: string; readonly conductor?: string };
  readonly electrodes?: readonly Electrode[];
  readonly enclosed?: readonly Conductor[];
  readonly ferrous?: boolean;
  readonly system?: string;
  readonly part?: string;
  readonly scope?: string;
  readonly fromDrop?: boolean;
  readonly supplemental?: boolean;
  readonly controlTransformer?: boolean;
  readonly onSingleBranchCircuit?: boolean;
  readonly isElectrode?: boolean;
  readonly instead?: string;
  readonly jumperAt?: string;
  readonly grounded?: string;
  readonly load?: {
    readonly amperes: number;
    readonly circuitAmperes: number;
    readonly listedFor75?: boolean;
  };
  readonly deviceAmperes?: number;
  readonly feederDeviceAmperes?: number;
  readonly rebondedAtBuildingWithDevice?: number;
  readonly impedanceAmperes?: number;
  readonly impedanceConductor?: ConductorSize;
  readonly electrodeConductorAt?: string;
  readonly termination?: string;
  readonly electrodeConductorOnBusbar?: ConductorSize;
  readonly communicationsUnlikely?: boolean;
}

/** A question as a program gets it. */
export interface Asked {
  readonly role: Role;
  readonly year: EditionYear;
  readonly input: AnyInput;
}

/** As much of a result as a wrong program changes or looks at. */
export type Decided = Pick<SizingResult, "outcome" | "requiredArea" | "governs" | "steps">;

/** A program: it decides, or throws an `InputError`. */
export type Program = (asked: Asked) => Decided;

/** A mistake: it makes a wrong program of a right one. */
export type Wrong = (right: Program) => Program;

/** The library. */
export const rightProgram: Program = ({ role, year, input }) => {
  // The compiler cannot see that the role and its input belong together.
  const asked: AnyRole = roles[role];
  return size(asked, { ...input, code: { year } });
};

/** The input of a check, or of a grid, as a program gets it. */
export function anyInput(input: CheckInput | object): AnyInput {
  return input;
}

/** Another edition, role or input is decided instead. */
export function onAsked(change: (asked: Asked) => Asked): Wrong {
  return (right) => (asked) => right(change(asked));
}

/** Another input is decided instead. */
export function onInput(change: (input: AnyInput, asked: Asked) => AnyInput): Wrong {
  return onAsked((asked) => ({ ...asked, input: change(asked.input, asked) }));
}

/** What is decided is changed. */
export function onDecided(change: (decided: Decided, asked: Asked) => Decided): Wrong {
  return (right) => (asked) => change(right(asked), asked);
}

/** One mistake made on top of another. */
export function both(...wrongs: readonly Wrong[]): Wrong {
  return (right) => wrongs.reduce((so, wrong) => wrong(so), right);
}

/** A conductor of a size, whatever was decided; a size that is not standard gives the next that is. */
export function withSize(size: ConductorSize): Decided {
  return {
    outcome: { kind: "conductor", size: standardSizeFor(areaOf(size)) ?? "2000 kcmil", quantity: 1 },
    requiredArea: areaOf(size),
    governs: "named-size",
    steps: [],
  };
}

/** A required area in place of the one that was decided; what is no conductor stays what it is. */
export function withArea(decided: Decided, area: number): Decided {
  if (decided.outcome.kind === "not-required") return decided;
  const requiredArea = Math.max(1, Math.ceil(area));
  const standard = standardSizeFor(requiredArea);
  const isSized = decided.outcome.kind === "conductor" && standard !== null;
  return {
    ...decided,
    requiredArea,
    outcome: isSized
      ? { kind: "conductor", size: standard, quantity: 1 }
      : { kind: "area-only", requiredArea, why: "bus" },
  };
}
