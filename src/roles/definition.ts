import type { ConductorSize, Material } from "../conductor/index.js";
import type { Code, PolicySet, RatingPolicy, Role, RoleFacts } from "../edition/index.js";
import type { Reader } from "../input/reader.js";
import type { StandardSchema } from "../input/standard-schema.js";
import type { SizingResult } from "../rules/result.js";
import type { Supply } from "../supply/index.js";

/** What a question in its plainest form may hang on; each role takes from it what decides its size. */
export interface PlainQuestion {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Ungrounded conductors. */
  readonly supply: Supply;
  /** Amperes of a device, or of an impedance. */
  readonly amperes: number;
  /** Size of a conductor that is there. */
  readonly size: ConductorSize;
}

/** What every role has, whatever decides its size. `I` is its input, `R` its result. */
interface RoleBase<
  Id extends Role,
  I extends {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  },
  R extends SizingResult,
> {
  /** The id of the role. */
  readonly id: Id;
  /** Its purpose, and its name in each edition. */
  readonly facts: RoleFacts<Id>;
  /** The check of an input as a Standard Schema, for a form that validates while it is filled in. */
  readonly "~standard": StandardSchema<I>;
  /** Checks an input; everything wrong is noted. */
  read(at: Reader): I | undefined;
  /** Sizes the conductor, the input being checked. */
  decide(input: I): R;
  /** The input of the plainest question: everything else as the default has it. */
  plainest(question: PlainQuestion): I;
}

/** A role that is sized from the ungrounded conductors of its supply. */
export interface RoleBySupply<
  Id extends Role = Role,
  I extends {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  } = {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  },
  R extends SizingResult = SizingResult,
> extends RoleBase<Id, I, R> {
  /** Sized by the ungrounded conductors. */
  readonly by: "supply";
  /** The policies of its plainest question. */
  readonly policies: PolicySet;
}

/** A role that is sized from the rating of an overcurrent device. */
export interface RoleByRating<
  Id extends Role = Role,
  I extends {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  } = {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  },
  R extends SizingResult = SizingResult,
> extends RoleBase<Id, I, R> {
  /** Sized by the rating of an overcurrent device. */
  readonly by: "rating";
  /** The policies of its plainest question; `null` for a role that takes the row of the table as it is. */
  readonly policies: PolicySet<RatingPolicy> | null;
}

/** A role that is sized from the current of an impedance, from another conductor, or by a size that the code names. */
export interface RoleByOther<
  Id extends Role = Role,
  I extends {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  } = {
    /** The code that it is held under: an edition, its amendments and readings. */
    readonly code: Code;
  },
  R extends SizingResult = SizingResult,
> extends RoleBase<Id, I, R> {
  /** Sized by a current, by another conductor, or by a size that the code names. */
  readonly by: "current" | "conductor" | "named-size";
}

/** A role of any kind. */
export type AnyRole<Id extends Role = Role> = RoleBySupply<Id> | RoleByRating<Id> | RoleByOther<Id>;

/** The input of a role. */
export type Input<R extends AnyRole> = Parameters<R["decide"]>[0];

/** The result of a role. */
export type Result<R extends AnyRole> = ReturnType<R["decide"]>;
