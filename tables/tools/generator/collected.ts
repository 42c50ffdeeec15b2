import type { ByEdition, NamedSizes, Placements, Policies, Roles, Sections } from "./by-edition.js";
import type { ChannelsFile } from "./channels.js";
import type { ReadingsFile, TableFile } from "./model.js";
import type { WithstandFile } from "./withstand-file.js";

/** Everything that the modules, the pages and the list of debts are made from; the tables with what witnesses confirmed. */
export interface Collected {
  readonly tables: readonly TableFile[];
  readonly policies: Policies;
  readonly ratingPolicies: Policies;
  readonly sections: Sections;
  /** Sources in which each edition was read. */
  readonly readThrough: ByEdition<{ readonly sources: readonly string[] }>;
  readonly namedSizes: NamedSizes;
  readonly placements: Placements;
  readonly readings: ReadingsFile;
  readonly roles: Roles;
  readonly withstand: WithstandFile;
  readonly channels: ChannelsFile;
}
