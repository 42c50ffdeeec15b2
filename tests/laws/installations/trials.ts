import { InputError, type Installation } from "bondmil";
import { type Built, built } from "./built.js";
import { enlargements } from "./changes/enlarge.js";
import { type InstalledChange, lawfulChanges, worsenings } from "./changes/installed.js";
import { type Dice, diceOf } from "./dice.js";
import { lawsOfOne, lawsOfRedrawing } from "./laws/every.js";
import { fingerprintChanges } from "./laws/fingerprint.js";
import { isFound, isNotFound, toBeChanged } from "./laws/installed.js";
import { neverSmaller } from "./laws/monotony.js";
import { smallest } from "./smallest.js";

/** A law that an installation broke, with what broke it in words. */
export interface Breach {
  readonly law: string;
  readonly words: string;
}

/** One thing to be tried of an installation: a law of it as it is, or of one change. */
interface Trial {
  readonly law: string;
  readonly run: () => readonly string[];
}

/** Holds an installation against the laws, with so many changes that the dice choose, or with every change. */
export function breachesOf(
  installation: Installation,
  seed: number,
  changes: number | "every",
): readonly Breach[] {
  return attempted({
    law: "every installation has a schedule",
    run: () => triedAll(installation, seed, changes),
  });

  function triedAll(of: Installation, from: number, many: number | "every"): readonly string[] {
    const one = built(of);
    const trials = [...asItIs(one, from), ...changed(one, diceOf(from), many)];
    return trials.flatMap(attempted).map(({ law, words }) => `${law}\n${words}`);
  }
}

/** The smallest installation that breaks the same law. */
export function smallestBreaking(installation: Installation, seed: number, { law }: Breach): Installation {
  const breaks = (one: Installation, changes: 0 | "every"): boolean =>
    breachesOf(one, seed, changes).some((breach) => breach.law === law);
  const changes = breaks(installation, 0) ? 0 : "every";
  return smallest(installation, (one) => breaks(one, changes));
}

/** What a trial finds. A refusal of what was drawn to be valid is a breach too, as is any other error. */
function attempted({ law, run }: Trial): readonly Breach[] {
  try {
    return run().map((words) => {
      const [inner, ...rest] = words.split("\n");
      return rest.length > 0 ? { law: inner ?? law, words: rest.join("\n") } : { law, words };
    });
  } catch (error) {
    const words = error instanceof InputError ? `refused: ${error.message}` : `threw ${String(error)}`;
    return [{ law, words }];
  }
}

function asItIs(one: Built, seed: number): readonly Trial[] {
  return lawsOfOne.map((law) => ({ law: law.name, run: () => law.breaches(one, diceOf(seed)) }));
}

/** Changes of each kind in equal parts, or all of them. */
function changed(one: Built, dice: Dice, many: number | "every"): readonly Trial[] {
  const installed = toBeChanged(one);
  const kinds: readonly (() => readonly Trial[])[] = [
    () => enlarged(one, dice),
    () =>
      worsenings(one, installed).map((change) => ofInstalled(one, change, "what is worse is found", isFound)),
    () =>
      lawfulChanges(one, installed).map((change) =>
        ofInstalled(one, change, "what is lawful is not found", isNotFound),
      ),
    () => lawsOfRedrawing.map((law) => ({ law: law.name, run: () => law.breaches(one, dice) })),
  ];
  if (many === "every") return kinds.flatMap((kind) => kind());
  return Array.from({ length: many }, () => dice.pick(kinds)()).flatMap((trials) =>
    trials.length === 0 ? [] : [dice.pick(trials)],
  );
}

function enlarged(one: Built, dice: Dice): readonly Trial[] {
  return enlargements(one.installation, dice).map(({ what, installation }) => ({
    law: "a larger installation makes no conductor smaller, and its fingerprint another one",
    run: () => {
      const after = built(installation);
      return [...neverSmaller(one, after), ...fingerprintChanges(one, after)].map(
        (words) => `${what}: ${words}`,
      );
    },
  }));
}

function ofInstalled(one: Built, change: InstalledChange, law: string, breaches: typeof isFound): Trial {
  return { law, run: () => breaches(one, change) };
}
