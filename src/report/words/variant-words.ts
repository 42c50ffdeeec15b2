import { isOfRules } from "../../comparison/changes.js";
import type { Material } from "../../conductor/index.js";
import { conductorWords } from "../../installation/conductor-words.js";
import type {
  ComparedEntry,
  InstallationComparison,
  InstallationVariant,
  VariantChange,
} from "../../installation/installation-comparison.js";
import type { ScheduledConductor } from "../../installation/schedule.js";
import { writtenArea } from "../../units/area.js";
import { changePhrase } from "./change-words.js";
import { alternativeWords, readingAbout } from "./reading-words.js";

/** What a comparison is called. */
export const comparedWords: Readonly<Record<InstallationComparison["over"], string>> = {
  editions: "editions",
  amendments: "as printed and as amended",
  readings: "open readings",
  arrangements: "arrangements",
};

/** How the marks behind a size are read. */
export function markWords({ against }: Pick<InstallationComparison, "against">): string {
  const other = against === "before" ? "the column before" : "the first column";
  return `Marks: + more metal in all conductors of the line than in ${other}, - less, ! another outcome.`;
}

/** What a column is. */
export function variantWords(change: VariantChange): string {
  switch (change.kind) {
    case "edition":
      return `NFPA 70-${change.year}`;
    case "as-printed":
      return "as printed";
    case "as-amended":
      return "as amended";
    case "as-read":
      return "read as in the installation";
    case "reading":
      return readOtherwise(change);
    case "as-drawn":
      return change.takenAtSource.length === 0
        ? "as drawn"
        : `as drawn, with the open jumper of ${change.takenAtSource.join(", ")} at the source`;
    case "system-jumper":
      return `system bonding jumper of ${change.of}: ${placeWords[change.at]}`;
    case "raceway-jumpers":
      return `raceways of ${change.of}: ${racewayWords[change.as]}`;
    case "housing":
      return `service disconnects of ${change.of}: ${housingWords[change.as]}`;
  }
}

function readOtherwise({
  reading,
  chosen,
  alternative,
}: Extract<VariantChange, { readonly kind: "reading" }>): string {
  const [now, before] = [alternative, chosen].map((one) => `"${alternativeWords(reading, one)}"`);
  return `${readingAbout(reading)}: read as ${now} instead of ${before}`;
}

/** One conductor in one column, in short, with its mark. */
export function entryWords({ conductor, effect }: ComparedEntry, { refused }: InstallationVariant): string {
  if (refused !== undefined) return "refused";
  if (conductor === null) return `none${marks[effect]}`;
  return `${shortSize(conductor)}${marks[effect]}`;
}

/** Quantity where there are several, size, and the symbol of the metal. */
export function shortSize({
  quantity,
  result: { outcome, material },
}: Pick<ScheduledConductor, "quantity" | "result">): string {
  if (outcome.kind === "not-required") return "not required";
  const times = quantity === 1 ? "" : `${quantity} x `;
  const size = outcome.kind === "conductor" ? outcome.size : `at least ${writtenArea(outcome.requiredArea)}`;
  return `${times}${size} ${metalSymbols[material]}`;
}

/** Why a conductor is larger, smaller or another in a column; nothing where its area is the same. */
export function whyPhrases({ effect, changes }: ComparedEntry): readonly string[] {
  if (effect === "same" || effect === "first") return [];
  return changes.filter((one) => isOfRules(one) || one.kind === "reading").map(changePhrase);
}

/** One conductor in one column with the reasons why it is another there. */
export interface Reasons {
  readonly name: string;
  readonly key: string;
  readonly phrases: readonly string[];
}

/** The reasons of every difference. */
export function reasonsIn({ variants, conductors }: InstallationComparison): readonly Reasons[] {
  return conductors.flatMap((conductor) =>
    conductor.entries.flatMap((entry, i) => {
      const phrases = whyPhrases(entry);
      const key = variants[i]?.key ?? "";
      return phrases.length === 0 ? [] : [{ name: conductorWords(conductor), key, phrases }];
    }),
  );
}

const metalSymbols: Readonly<Record<Material, string>> = {
  copper: "Cu",
  aluminum: "Al",
  "copper-clad aluminum": "Cu-clad Al",
};

const marks: Readonly<Record<ComparedEntry["effect"], string>> = {
  first: "",
  same: "",
  larger: " +",
  smaller: " -",
  "other-outcome": " !",
};

const placeWords = {
  source: "at the source",
  disconnects: "in each disconnect enclosure",
  "both-ends": "at the source and at the disconnect",
} as const;

const racewayWords = {
  "per-raceway": "a jumper in each",
  common: "one jumper for all",
  "fittings-instead": "bonded by fittings",
} as const;

const housingWords = {
  "separate-enclosures": "in enclosures of their own",
  "listed-assembly": "in one listed assembly",
} as const;
