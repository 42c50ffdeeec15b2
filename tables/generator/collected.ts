import type { ChannelsFile } from "./channels.js";
import type {
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableFile,
  WithstandFile,
} from "./model.js";

/** Everything that the pages and the list of debts are made from; the tables with what witnesses confirmed. */
export interface Collected {
  readonly tables: readonly TableFile[];
  readonly policies: PoliciesFile;
  readonly ratingPolicies: PoliciesFile;
  readonly sections: SectionsFile;
  readonly namedSizes: NamedSizesFile;
  readonly placements: PlacementsFile;
  readonly readings: ReadingsFile;
  readonly roles: RolesFile;
  readonly withstand: WithstandFile;
  readonly channels: ChannelsFile;
}
