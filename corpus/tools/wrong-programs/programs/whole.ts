import {
  areaOf,
  type ConductorSize,
  InputError,
  isConductorSize,
  nextSizeDown,
  nextSizeUp,
  standardSizes,
} from "../../../../src/index.js";
import { type AnyInput, type Decided, onDecided, onInput, type Wrong, withSize } from "../program.js";
import { mapConductors, mapSupplies } from "../supplies.js";
import { naive } from "./naive.js";

/** The size of a conductor becomes another, where there is one. */
const onSize = (change: (size: ConductorSize, decided: Decided) => ConductorSize | null): Wrong =>
  onDecided((decided) => {
    const { outcome } = decided;
    const size = outcome.kind === "conductor" ? change(outcome.size, decided) : null;
    if (size === null || outcome.kind !== "conductor") return decided;
    const { outcome: other } = withSize(size);
    return {
      ...decided,
      outcome: { ...outcome, ...other, quantity: outcome.quantity },
      requiredArea: areaOf(size),
    };
  });

const withoutAught = <S extends ConductorSize>(size: S): ConductorSize => {
  const dropped = size.replace("/0", "");
  return isConductorSize(dropped) ? dropped : size;
};

const aughtDropped = (input: AnyInput): AnyInput => ({
  ...mapSupplies(input, (supply) =>
    mapConductors(supply, (one) => ({ ...one, size: withoutAught(one.size) })),
  ),
  ...(input.enclosed && {
    enclosed: input.enclosed.map((one) => ({ ...one, size: withoutAught(one.size) })),
  }),
  ...(input.impedanceConductor && { impedanceConductor: withoutAught(input.impedanceConductor) }),
});

const nearest = (area: number): ConductorSize =>
  standardSizes.reduce((so, one) => (Math.abs(areaOf(one) - area) < Math.abs(areaOf(so) - area) ? one : so));

const isWorkedOut = ({ governs }: Decided) =>
  governs === "one-eighth" || governs === "increase" || governs === "cap";

/** Programs that go wrong whatever they are about. */
export const ofWhole: Readonly<Record<string, Wrong>> = {
  "naive-twelve-lines": naive,
  "refusals-swallowed": (right) => (asked) => {
    try {
      return right(asked);
    } catch (error) {
      if (error instanceof InputError) return withSize("14 AWG");
      throw error;
    }
  },
  "next-size-down": onSize((size, { requiredArea }) =>
    areaOf(size) > requiredArea ? nextSizeDown(size) : null,
  ),
  "nearest-size": onSize((_size, { requiredArea }) => nearest(requiredArea)),
  "exact-landing-goes-up": onSize((size, decided) =>
    isWorkedOut(decided) && areaOf(size) === decided.requiredArea ? nextSizeUp(size) : null,
  ),
  "one-size-too-large": onSize((size) => nextSizeUp(size)),
  "one-size-too-small": onSize((size) => nextSizeDown(size)),
  "aught-dropped": onInput(aughtDropped),
  "aught-dropped-in-answer": onSize((size) => withoutAught(size)),
  "largest-size-for-an-area": onDecided((decided) =>
    decided.outcome.kind === "area-only" && decided.outcome.why === "above-largest-standard-size"
      ? withSize("2000 kcmil")
      : decided,
  ),
  "bus-as-wire": onInput(({ conductor, ...input }) => ({
    ...input,
    ...(conductor && { conductor: { material: conductor.material } }),
  })),
};
