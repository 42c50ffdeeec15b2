// Generated from shape.ts by "npm run generate"; do not edit.
import type { EditionYear } from "../../edition/edition-year.js";
import { readCode } from "../../edition/read-code.js";
import type { Amendment, Code } from "../../edition/shape.generated.js";
import { amendmentShape } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import { readGiven } from "../read-given.js";
import type { Installation } from "../shape.generated.js";

/** A code with the amendments, or the proposal for an edition, whose effects are to be found. */
export interface EffectsInput {
  /** The edition, with the amendments or the proposal. */
  readonly code: Code;
  /** Installations on which they are tried; their own edition and amendments are put aside. */
  readonly installations?: readonly Installation[];
}

export const effectsInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    installations: { is: "list", of: { is: "checked", read: readGiven }, least: 0, most: 100 },
  },
  optional: ["installations"],
};

/** What an installation is held against. */
export type InstallationComparisonRequest =
  | InstallationOverEditions
  | InstallationOverAmendments
  | InstallationOverReadings
  | InstallationOverArrangements;

export const installationComparisonRequestShape: Shape = {
  is: "variants",
  by: "over",
  of: [
    {
      is: "object",
      members: {
        over: { is: "exactly", value: "editions" },
        installation: { is: "checked", read: readGiven },
        editions: {
          is: "list",
          of: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
          least: 1,
          most: 100,
        },
      },
      optional: ["editions"],
    },
    {
      is: "object",
      members: {
        over: { is: "exactly", value: "amendments" },
        installation: { is: "checked", read: readGiven },
        amendments: { is: "list", of: amendmentShape, least: 1, most: 100 },
      },
      optional: ["amendments"],
    },
    {
      is: "object",
      members: {
        over: { is: "exactly", value: "readings" },
        installation: { is: "checked", read: readGiven },
      },
    },
    {
      is: "object",
      members: {
        over: { is: "exactly", value: "arrangements" },
        installation: { is: "checked", read: readGiven },
      },
    },
  ],
};

/** An installation under its edition as printed and as amended. */
export interface InstallationOverAmendments {
  /** What is compared. */
  readonly over: "amendments";
  /** The installation, as readInstallation takes it. */
  readonly installation: Installation;
  /** Those of the installation by default. */
  readonly amendments?: readonly Amendment[];
}

export const installationOverAmendmentsShape: Shape = {
  is: "object",
  members: {
    over: { is: "exactly", value: "amendments" },
    installation: { is: "checked", read: readGiven },
    amendments: { is: "list", of: amendmentShape, least: 1, most: 100 },
  },
  optional: ["amendments"],
};

/** An installation under each other arrangement that it could be drawn with, one changed at a time. */
export interface InstallationOverArrangements {
  /** What is compared. */
  readonly over: "arrangements";
  /** The installation, as readInstallation takes it. */
  readonly installation: Installation;
}

export const installationOverArrangementsShape: Shape = {
  is: "object",
  members: {
    over: { is: "exactly", value: "arrangements" },
    installation: { is: "checked", read: readGiven },
  },
};

/** An installation under several editions; its own edition is put aside. */
export interface InstallationOverEditions {
  /** What is compared. */
  readonly over: "editions";
  /** The installation, as readInstallation takes it. */
  readonly installation: Installation;
  /** Editions in the order of the columns; all of them, oldest first, by default. */
  readonly editions?: readonly EditionYear[];
}

export const installationOverEditionsShape: Shape = {
  is: "object",
  members: {
    over: { is: "exactly", value: "editions" },
    installation: { is: "checked", read: readGiven },
    editions: {
      is: "list",
      of: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
      least: 1,
      most: 100,
    },
  },
  optional: ["editions"],
};

/** An installation under each other alternative of the open readings that its schedule names. */
export interface InstallationOverReadings {
  /** What is compared. */
  readonly over: "readings";
  /** The installation, as readInstallation takes it. */
  readonly installation: Installation;
}

export const installationOverReadingsShape: Shape = {
  is: "object",
  members: { over: { is: "exactly", value: "readings" }, installation: { is: "checked", read: readGiven } },
};

/** What a schedule is made with. */
export interface ScheduleOptions {
  /** Whether the schedule has its fingerprint and that of the installation; it has by default. */
  readonly fingerprint?: boolean;
}

export const scheduleOptionsShape: Shape = {
  is: "object",
  members: { fingerprint: { is: "flag", says: "whether the schedule has fingerprints" } },
  optional: ["fingerprint"],
};
