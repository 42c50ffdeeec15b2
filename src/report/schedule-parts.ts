import { citeAmendment, overruledReadings, type Readings } from "../edition/index.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import type { DocumentFact, DocumentPart } from "./document.js";
import { amendmentsFact, listed } from "./frame.js";
import { cautionSentence } from "./words/caution-words.js";
import { openSentences } from "./words/open-words.js";
import { readingSizes } from "./words/reading-sizes.js";
import { alternativeWords, readingPhrase } from "./words/reading-words.js";
import { placedCautions } from "./words/schedule-words.js";

/** What stands in the title block of everything that is made from a schedule. */
export function scheduleFacts({ code, fingerprint }: Schedule): readonly DocumentFact[] {
  const { amendments = [], readings = {} } = code;
  const overruled = new Map<string, string>(
    overruledReadings(code).map(({ id, by }) => [
      id,
      ` (overruled by ${citeAmendment(by)}: "${alternativeWords(id, by.alternative)}")`,
    ]),
  );
  const chosen = Object.entries(readings).map(
    ([id, alternative]) => `${readingPhrase(id as keyof Readings, alternative)}${overruled.get(id) ?? ""}`,
  );
  return [
    amendmentsFact(amendments),
    { name: "Readings", text: chosen.join("; ") || "the defaults" },
    { name: "Fingerprint", text: fingerprint },
  ];
}

/** Each caution of a schedule and of its conductors once, with its places. */
export function cautionParts(schedule: Schedule): readonly DocumentPart[] {
  return listed(
    "Cautions",
    placedCautions(schedule).map(({ at, ...caution }) => `${cautionSentence(caution)} At: ${at.join("; ")}`),
  );
}

/**
 * What the installation leaves open, then the open readings that change a size: each with every size that it may come to. Conductors go by their
 * names, or as they are named here.
 */
export function openParts(
  { conductors }: Pick<Schedule, "conductors">,
  named?: {
    readonly one: (conductor: ScheduledConductor) => string;
    readonly several: (conductors: readonly ScheduledConductor[]) => string;
  },
): readonly DocumentPart[] {
  return [
    ...listed("Not decided", openSentences(conductors, named?.one)),
    ...listed("Open readings", readingSizes(conductors, named?.several)),
  ];
}
