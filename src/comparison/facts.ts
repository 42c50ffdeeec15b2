import type { Citation } from "../edition/index.js";
import type { CableTrayResult } from "../roles/equipment-grounding-conductor/cable-tray.js";
import type { SizingResult } from "../rules/result.js";
import type { Step } from "../sizing/index.js";
import type { ChangeSubject, ComparedResult } from "./comparison.js";

/** Something that a result says, in a form that can be held beside the same of another result. */
export interface Fact {
  readonly what: ChangeSubject;
  readonly of: string | null;
  /** What it means if the values differ. */
  readonly kind: "value" | "policy";
  readonly value: string | number | null;
  readonly cited: Citation;
  /** Values are comparable only where this is the same; otherwise their difference follows from an earlier one. */
  readonly under?: string;
  /** Whether the fact may be missing though its rule is there, because it would decide nothing. */
  readonly shownOnlyIf?: "it-limits" | "it-is-used";
  /** Whether a difference follows from another one, if there is another. */
  readonly follows?: boolean;
  /** Circular mils that it requires or limits at. */
  readonly area?: number;
}

/** Everything that decided a result, under keys by which two results are held side by side. */
export function factsOf(result: ComparedResult): ReadonlyMap<string, Fact> {
  const facts = "steps" in result ? factsOfSizing(result) : factsOfTray(result);
  const found = new Map<string, Fact>();
  for (const fact of facts) {
    const place = keyOf(fact);
    const alike = [...found.keys()].filter((key) => key.startsWith(`${place}#`)).length;
    found.set(`${place}#${alike}`, fact);
  }
  return found;
}

/** Name under which a fact is compared. */
function keyOf({ what, of }: Pick<Fact, "what" | "of">): string {
  return `${what} ${of ?? ""}`;
}

function factsOfSizing({ outcome, citation, governs, steps }: SizingResult): readonly Fact[] {
  const cited = citation;
  const quantity = outcome.kind === "conductor" ? outcome.quantity : 1;
  return [
    { what: "rule", of: null, kind: "policy", value: null, cited },
    { what: "quantity", of: null, kind: "policy", value: quantity, cited },
    ...steps.flatMap((step, place) => factsOfStep(step, place)),
    { what: "governs", of: null, kind: "policy", value: governs, cited, follows: true },
  ];
}

function factsOfTray({ outcome, citation: cited }: CableTrayResult): readonly Fact[] {
  const rule: Fact = { what: "rule", of: null, kind: "policy", value: null, cited };
  if (outcome.kind === "not-permitted") {
    return [rule, { what: "rating-row-end", of: null, kind: "value", value: outcome.largestAmperes, cited }];
  }
  const least = `${outcome.least.squareInches} in2`;
  return [
    rule,
    { what: "rating-row-end", of: null, kind: "value", value: outcome.through, cited },
    { what: "tray-area", of: null, kind: "value", value: least, cited },
  ];
}

function factsOfStep(step: Step, place: number): readonly Fact[] {
  const cited = step.citation;
  switch (step.kind) {
    case "sum": {
      const of = place === 0 ? null : step.column;
      return [{ what: "sum", of, kind: "policy", value: step.rule, cited, shownOnlyIf: "it-is-used" }];
    }
    case "assumed":
      return [
        { what: "assumed", of: null, kind: "policy", value: `at ${step.temperature} C`, cited },
        ...step.conductors.map(
          ({ installed, installedAmperes, assumed, area, citation }): Fact => ({
            what: "assumed-conductor",
            of: `${installed.size} ${installed.material}`,
            kind: "value",
            value: `${assumed ?? `${area} cmil`}, ${installedAmperes} A`,
            cited: citation,
            shownOnlyIf: "it-is-used",
          }),
        ),
      ];
    case "row": {
      const under = `${step.entered} ${step.read} ${step.area}`;
      const of = step.entered;
      return [
        {
          what: "row",
          of,
          kind: "value",
          value: step.size,
          cited,
          under,
          follows: true,
          area: step.requiredArea,
        },
        {
          what: "row-end",
          of,
          kind: "value",
          value: step.through,
          cited,
          under,
          shownOnlyIf: "it-is-used",
        },
      ];
    }
    case "one-eighth": {
      const of = step.entered;
      const { requiredArea: area, threshold } = step;
      const under = String(step.area);
      return [
        { what: "one-eighth", of, kind: "value", value: area, cited, under, follows: true, area },
        { what: "threshold", of, kind: "value", value: threshold, cited, shownOnlyIf: "it-is-used" },
      ];
    }
    case "rating-row": {
      const under = `${step.amperes} ${step.read}`;
      return [
        {
          what: "rating-row",
          of: null,
          kind: "value",
          value: step.size,
          cited,
          under,
          area: step.requiredArea,
        },
        {
          what: "rating-row-end",
          of: null,
          kind: "value",
          value: step.through,
          cited,
          under,
          shownOnlyIf: "it-is-used",
        },
      ];
    }
    case "increase": {
      const { requiredArea: area } = step;
      const under = String(step.area);
      return [{ what: "increase", of: null, kind: "value", value: area, cited, under, area }];
    }
    case "floor":
      return [
        { what: "floor", of: step.why, kind: "value", value: step.size, cited, area: step.requiredArea },
      ];
    case "cap": {
      const { requiredArea: area, why: of } = step;
      const kind = of === "electrode" || of === "largest-size" ? "value" : "policy";
      return [{ what: "cap", of, kind, value: area, cited, shownOnlyIf: "it-limits", area }];
    }
    case "shared":
      return [{ what: "shared", of: null, kind: "policy", value: step.decides, cited, follows: true }];
    case "load":
      return [{ what: "load", of: null, kind: "value", value: step.size, cited, area: step.requiredArea }];
    case "named-size": {
      const { requiredArea: area } = step;
      return [{ what: "named-size", of: step.from, kind: "value", value: step.size ?? area, cited, area }];
    }
    case "standard-size":
      return [
        {
          what: "standard-size",
          of: null,
          kind: "value",
          value: step.size,
          cited,
          under: String(step.requiredArea),
          shownOnlyIf: "it-is-used",
        },
      ];
  }
}
