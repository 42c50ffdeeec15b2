import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { anyOf, byHand, name, positive, says } from "../input/define.js";
import { editionYears } from "./edition-year.js";
import { electrodeKinds } from "./electrode-kinds.js";
import { roleIds } from "./tables/roles.generated.js";

export const editionYear = v.pipe(
  v.picklist(editionYears),
  says("Edition of NFPA 70 that the jurisdiction enforces."),
  byHand({ type: ["EditionYear", "edition/edition-year"] }),
);

const role = v.pipe(
  v.picklist(roleIds),
  says("What the conductor is there for."),
  byHand({ type: ["Role", "edition/tables/roles.generated"] }),
);

const column = v.pipe(v.picklist(["copper", "aluminum"]), says("Column of the table."));

export const amendmentCitation = v.pipe(
  v.strictObject({
    jurisdiction: v.pipe(name("the jurisdiction"), says("Who enforces it, for example a city or a state.")),
    section: v.pipe(name("the section or ordinance"), says("Section or ordinance.")),
    url: v.optional(v.pipe(name("the address"), says("Address of the text, if there is one."))),
  }),
  says("Where an amendment stands."),
);

export const amendmentCondition = v.pipe(
  v.strictObject({
    lengthBelowFeet: v.optional(
      v.pipe(positive("feet"), says("Length of the circuit or run in feet below which it applies.")),
    ),
    lengthFromFeet: v.optional(v.pipe(positive("feet"), says("Length in feet from which it applies."))),
    location: v.optional(v.pipe(name("the location"), says("Location to which it is limited."))),
    serviceFromAmperes: v.optional(
      v.pipe(positive("amperes"), says("Rating of the service in amperes from which it applies.")),
    ),
    serviceThroughAmperes: v.optional(
      v.pipe(positive("amperes"), says("Rating of the service in amperes through which it applies.")),
    ),
  }),
  says("When an amendment applies; without a condition always. Every member that is given must hold."),
);

const common = {
  citation: v.pipe(amendmentCitation, says("Where the amendment stands.")),
  when: v.optional(v.pipe(amendmentCondition, says("When it applies; always by default."))),
};

const kind = <const K extends string>(word: K) => v.pipe(v.literal(word), says("Kind of amendment."));

export const cellAmendment = v.pipe(
  v.strictObject({
    kind: kind("cell"),
    table: v.pipe(
      v.picklist(["electrode-conductor", "bonding-conductor", "equipment-grounding"]),
      says("Table of which a cell is amended."),
    ),
    row: v.pipe(
      v.union([v.string(), v.number()]),
      says(
        "The row: its largest copper supply size, its device rating in amperes, or last for the open last row.",
      ),
      byHand({ read: ["readRow", "edition/read-row"] }),
    ),
    column,
    size: conductorSize,
    ...common,
  }),
  says("Another value in a cell of a table."),
);

export const floorAmendment = v.pipe(
  v.strictObject({
    kind: kind("floor"),
    role,
    copper: v.optional(v.pipe(conductorSize, says("Minimum size in copper."))),
    aluminum: v.optional(v.pipe(conductorSize, says("Minimum size in aluminum or copper-clad aluminum."))),
    ...common,
  }),
  says("A size below which a role may not fall. A material without a size of its own is not concerned."),
);

export const basisAmendment = v.pipe(
  v.strictObject({
    kind: kind("basis"),
    role,
    use: v.pipe(
      v.picklist(["no-increase", "no-electrode-ceiling", "equipment-grounding-table"]),
      says("The other basis."),
    ),
    electrode: v.optional(
      v.pipe(
        v.picklist(electrodeKinds),
        says(
          "For no-electrode-ceiling, the kind of electrode whose ceiling is lifted; every kind by default.",
        ),
        byHand({ type: ["ElectrodeKind", "edition/electrode-kinds"] }),
      ),
    ),
    ...common,
  }),
  says(
    "Another basis for a role: no increase in proportion (of equipment grounding conductors, which takes the load-side jumpers along, or of those jumpers alone), no ceiling for particular electrodes (of electrode conductors, which takes the jumpers to electrodes along, or of those jumpers alone), or the table of equipment grounding conductors by the service's rating in place of the role's own table of supply areas.",
  ),
);

export const readingAmendment = v.pipe(
  v.strictObject({
    kind: kind("reading"),
    reading: v.pipe(
      v.string(),
      says("Id of the reading."),
      byHand({
        type: ["Readings", "edition/tables/readings.generated", "keyof Readings"],
        read: ["readReadingId", "edition/read-readings"],
      }),
    ),
    alternative: v.pipe(name("the alternative"), says("The alternative that is enforced.")),
    ...common,
  }),
  says("A reading that the jurisdiction enforces."),
);

export const materialAmendment = v.pipe(
  v.strictObject({
    kind: kind("material"),
    role: v.pipe(
      v.picklist([...roleIds, "every-role"]),
      says("The role that is concerned, or every role."),
      byHand({ type: ["Role", "edition/tables/roles.generated", 'Role | "every-role"'] }),
    ),
    material,
    allowedFrom: v.optional(
      v.pipe(conductorSize, says("Smallest size of this material that is allowed; none is by default.")),
    ),
    ...common,
  }),
  says("A material that may not be used, for a role or for all, at any size or below one."),
);

export const alwaysWireAmendment = v.pipe(
  v.strictObject({ kind: kind("always-wire"), role, ...common }),
  says("A wire-type conductor is always required where the code would let something else serve."),
);

export const amendment = v.pipe(
  v.variant("kind", [
    cellAmendment,
    floorAmendment,
    basisAmendment,
    readingAmendment,
    materialAmendment,
    alwaysWireAmendment,
  ]),
  says(
    "A change that a jurisdiction makes to an edition, or that a proposal would make. Plain JSON, of a closed set of kinds.",
  ),
);

export const circumstances = v.pipe(
  v.strictObject({
    lengthFeet: v.optional(v.pipe(positive("feet"), says("Length of the circuit or run in feet."))),
    location: v.optional(v.pipe(name("the location"), says("Location of the building."))),
    serviceAmperes: v.optional(v.pipe(positive("amperes"), says("Rating of the service in amperes."))),
  }),
  says("What is known of the place and the run, for amendments under a condition."),
);

export const code = v.pipe(
  v.strictObject({
    year: editionYear,
    readings: v.optional(
      v.pipe(
        v.record(v.string(), v.string()),
        says(
          "Readings that differ from the defaults. One that an amendment in force enforces otherwise is overruled, and that is said.",
        ),
        byHand({
          type: ["Readings", "edition/tables/readings.generated", "Partial<Readings>"],
          read: ["readReadings", "edition/read-readings"],
        }),
      ),
    ),
    amendments: v.optional(
      v.pipe(
        anyOf(amendment, 100),
        says("Local amendments, or proposals for the next edition, in the order in which they were made."),
      ),
    ),
    circumstances: v.optional(
      v.pipe(
        circumstances,
        says("What is known of the place and the run, for amendments under a condition."),
      ),
    ),
  }),
  says(
    "The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted.",
  ),
  byHand({ read: ["readCode", "edition/read-code"] }),
);
