import * as v from "valibot";
import { amendment, code, editionYear } from "../../edition/shape.js";
import { anyOf, byHand, flag, listOf, says } from "../../input/define.js";
import { installation } from "../shape.js";

/** Each column is a whole schedule, so that the cost of a comparison is that of the installation times the columns. */
const mostColumns = 100;
const mostInstallations = 100;

/** It is read for itself, from JSON text too. */
const given: v.GenericSchema = v.pipe(
  installation,
  says("The installation, as readInstallation takes it."),
  byHand({ read: ["readGiven", "installation/read-given"] }),
);
export const scheduleOptions = v.pipe(
  v.strictObject({
    fingerprint: v.optional(
      v.pipe(
        flag("whether the schedule has fingerprints"),
        says("Whether the schedule has its fingerprint and that of the installation; it has by default."),
      ),
    ),
  }),
  says("What a schedule is made with."),
);

const over = <const Over extends string>(word: Over) => v.pipe(v.literal(word), says("What is compared."));

export const installationOverEditions = v.pipe(
  v.strictObject({
    over: over("editions"),
    installation: given,
    editions: v.optional(
      v.pipe(
        listOf(editionYear, mostColumns),
        says("Editions in the order of the columns; all of them, oldest first, by default."),
      ),
    ),
  }),
  says("An installation under several editions; its own edition is put aside."),
);

export const installationOverAmendments = v.pipe(
  v.strictObject({
    over: over("amendments"),
    installation: given,
    amendments: v.optional(v.pipe(listOf(amendment, 100), says("Those of the installation by default."))),
  }),
  says("An installation under its edition as printed and as amended."),
);

export const installationOverReadings = v.pipe(
  v.strictObject({ over: over("readings"), installation: given }),
  says("An installation under each other alternative of the open readings that its schedule names."),
);

export const installationOverArrangements = v.pipe(
  v.strictObject({ over: over("arrangements"), installation: given }),
  says("An installation under each other arrangement that it could be drawn with, one changed at a time."),
);

export const installationComparisonRequest = v.pipe(
  v.variant("over", [
    installationOverEditions,
    installationOverAmendments,
    installationOverReadings,
    installationOverArrangements,
  ]),
  says("What an installation is held against."),
);

export const effectsInput = v.pipe(
  v.strictObject({
    code: v.pipe(code, says("The edition, with the amendments or the proposal.")),
    installations: v.optional(
      v.pipe(
        anyOf(given, mostInstallations),
        says("Installations on which they are tried; their own edition and amendments are put aside."),
      ),
    ),
  }),
  says("A code with the amendments, or the proposal for an edition, whose effects are to be found."),
);
