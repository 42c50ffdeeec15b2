import type { Citation } from "../../edition/index.js";
import { idsOfEnd } from "../conductor-identity.js";
import { lawfulPlaces, requiredAt } from "../lawful-places.js";
import type { ScheduledConductor } from "../schedule.js";
import { type Context, jumperPlaceIn } from "./context.js";
import type { FindingKind, Remedy, RequiredConductor } from "./finding.js";
import { maySubstitute } from "./instead.js";
import { otherwise } from "./otherwise.js";
import { areaFound, type Purposed } from "./purposed.js";
import { requiredOf } from "./required.js";

/** Something wrong, before it is said of what. */
export interface Fault {
  readonly kind: FindingKind;
  readonly citation: Citation | null;
  readonly required: RequiredConductor | null;
  readonly shortBy: number | null;
  readonly more: number | null;
  readonly remedies: readonly Remedy[];
}

/** One found conductor against one of the schedule. */
export interface Judgement {
  readonly faults: readonly Fault[];
  /** Circular mils above what is required of one; `null` where that says nothing. */
  readonly reserve: number | null;
  /** Circular mils required of one of this material at this place. */
  readonly required: RequiredConductor | null;
  readonly citation: Citation;
}

/** Holds one found conductor against what is required: its place, its material, its area; each on its own. */
export function judge(context: Context, line: ScheduledConductor, purpose: Purposed): Judgement {
  const { found, at } = purpose;
  const { result } = line;
  const own = requiredOf(line, result);
  const fault = faultMaker(own, result.citation);
  const notHere = isWhereDrawn(line, at) ? context.forbidden(line) : undefined;
  const misplaced = notHere === undefined ? [] : [placeFault(context, fault, line, notHere)];
  if (line.quantity === 0)
    return { faults: misplaced, reserve: null, required: null, citation: result.citation };
  const area = areaFound(found);
  if (area === null || found.material === undefined) {
    const { instead = "bonding-fittings" } = found;
    const why = maySubstitute(context, line, instead);
    const remedies: readonly Remedy[] = own === null ? [] : [{ do: "install", conductor: own }];
    const faults = why === null ? [fault("cannot-serve", { remedies })] : [];
    return {
      faults: [...misplaced, ...faults],
      reserve: null,
      required: own,
      citation: why ?? result.citation,
    };
  }
  const requirement = context.requirementOf(line, found.material);
  const refusal = requirement?.conductor.result.cautions.find(({ code }) => code === "material-forbidden");
  const isOfMaterial = requirement !== null && refusal === undefined;
  const drawn = requirement?.conductor ?? line;
  const there =
    requirement === null || at === undefined || notHere !== undefined
      ? drawn.result
      : requiredAt(requirement.installation, context.schedule.code, drawn, at);
  const by = there ?? drawn.result;
  const required = requiredOf(line, isOfMaterial ? by : result);
  const wanted = required === null ? [] : [{ do: "replace", conductor: required } as const];
  const asDrawn = own === null || isSame(own, required) ? [] : [{ do: "replace", conductor: own } as const];
  const remedies: readonly Remedy[] = isOfMaterial
    ? [...wanted, ...asDrawn]
    : [...asDrawn, ...wanted].slice(0, 1);
  const { evidence } = result.citation;
  const section = refusal?.section ?? result.citation.section;
  const isShort = area < by.requiredArea;
  return {
    faults: [
      ...misplaced,
      ...(there === null ? [fault("wrong-place", { remedies: movesToLawful(context, line) })] : []),
      ...(isOfMaterial ? [] : [fault("wrong-material", { citation: { section, evidence }, remedies })]),
      ...(isShort
        ? [
            fault("short", {
              required,
              citation: by.citation,
              shortBy: by.requiredArea - area,
              remedies: [...remedies, ...otherwise(context, line)],
            }),
          ]
        : []),
    ],
    reserve: area - by.requiredArea,
    required,
    citation: by.citation,
  };
}

/** Makes faults of one conductor, which have in common what is required and by which section. */
export function faultMaker(
  required: RequiredConductor | null,
  citation: Citation | null,
): (kind: FindingKind, parts: Partial<Fault>) => Fault {
  return (kind, parts) => ({ kind, citation, required, shortBy: null, more: null, remedies: [], ...parts });
}

type FaultMaker = ReturnType<typeof faultMaker>;

function placeFault(
  context: Context,
  fault: FaultMaker,
  line: ScheduledConductor,
  { kind, citation }: NonNullable<ReturnType<Context["forbidden"]>>,
): Fault {
  return kind === "not-permitted"
    ? fault(kind, { citation, required: null, remedies: [{ do: "remove" }] })
    : fault(kind, { citation, remedies: movesToJumper(context, line) });
}

/** A further jumper where the system has its own: it is a fault, however large it is. */
export function secondJumper(context: Context): Fault {
  return faultMaker(null, jumperPlaceIn(context))("not-permitted", { remedies: [{ do: "remove" }] });
}

/** Where a conductor may be besides where it is drawn. */
function movesToLawful({ installation, schedule }: Context, line: ScheduledConductor): readonly Remedy[] {
  const places = lawfulPlaces(installation, schedule.code, line);
  return places.length === 0
    ? movesTo(line)
    : [{ do: "move", to: places.map((id) => ({ kind: "place", id })) }];
}

/** The named ends of a conductor. */
export function movesTo({ from, to }: ScheduledConductor): readonly Remedy[] {
  const places = [from, to].filter(({ kind }) =>
    ["place", "assembly", "neutral-point", "pipe-side"].includes(kind),
  );
  return places.length === 0 ? [] : [{ do: "move", to: places }];
}

/** Where the jumper of the same system is. */
function movesToJumper(context: Context, line: ScheduledConductor): readonly Remedy[] {
  const { schedule } = context;
  const { system } = line;
  const jumpers = schedule.conductors.filter(
    (one) => one.role === "system-bonding-jumper" && one.system === system && one.quantity > 0,
  );
  return jumpers.length === 0
    ? movesToLawful(context, line)
    : [{ do: "move", to: jumpers.map(({ to }) => to) }];
}

function isWhereDrawn({ from, to }: ScheduledConductor, at: string | undefined): boolean {
  return at === undefined || [from, to].some((end) => idsOfEnd(end).includes(at));
}

function isSame(one: RequiredConductor, other: RequiredConductor | null): boolean {
  return one.material === other?.material && one.requiredArea === other.requiredArea;
}
