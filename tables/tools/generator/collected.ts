import type { NamedSizes, Placements, Policies, Roles, Sections } from "./by-edition.js";
import type { ChannelsFile } from "./channels.js";
import type { Registered } from "./extracts.js";
import type { ReadingsFile, TableFile } from "./model.js";
import type { WithstandFile } from "./withstand-file.js";
import type { WithstandLevels } from "./withstand-levels.js";

/** Everything that the modules, the pages and the list of debts are made from; the tables with what witnesses confirmed. */
export interface Collected {
  readonly tables: readonly TableFile[];
  readonly policies: Policies;
  readonly ratingPolicies: Policies;
  readonly sections: Sections;
  readonly namedSizes: NamedSizes;
  readonly placements: Placements;
  /** What was read of all of these, passage by passage. */
  readonly passages: readonly Registered[];
  readonly readings: ReadingsFile;
  readonly roles: Roles;
  readonly withstand: WithstandFile;
  readonly withstandLevels: WithstandLevels;
  readonly channels: ChannelsFile;
}
