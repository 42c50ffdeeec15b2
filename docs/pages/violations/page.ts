import { editionYears } from "../../../src/edition/edition-year.js";
import type { Citation } from "../../../src/edition/index.js";
import type { ByEdition } from "../../../src/edition/supply-area-table.js";
import { violationCodes } from "../../../src/installation/violation.js";
import { violationSections } from "../../../src/installation/violations/sections.js";
import { remedyWords } from "../../../src/report/words/remedy-words.js";
import { violationWords } from "../../../src/report/words/violation-words.js";
import { example } from "./example.js";

/** Every violation with what is wrong and its sections by edition, and how a document says its cause. */
export function violationsPage(): string {
  const entries = violationCodes.map((code) => {
    const sections = violationSections[code].map((one) => `- ${sectionsOf(one)}`);
    const own = sections.length === 0 ? ["- the ordinance that the amendment cites"] : sections;
    return [`### ${code}`, violationWords[code]({}), causes[code], own.join("\n")].join("\n\n");
  });
  const remedies = Object.entries(remedyWords).map(([code, words]) => `- \`${code}\`: ${words}`);
  return `${[head, example, "## Codes", ...entries, "## Remedies", remedies.join("\n")].join("\n\n")}\n`;
}

/** A section with the editions in which it has that number, and how surely it is known in each. */
function sectionsOf(topic: ByEdition<Citation>): string {
  const spans: { readonly section: string; readonly years: string[]; readonly sure: string[] }[] = [];
  for (const year of editionYears) {
    const { section, evidence } = topic[year];
    const last = spans.at(-1);
    const known = `${year} ${evidence}`;
    if (last?.section === section) {
      last.years.push(year);
      last.sure.push(known);
    } else spans.push({ section, years: [year], sure: [known] });
  }
  return spans.map(({ section, sure }) => `${section} (${sure.join(", ")})`).join("; ");
}

/** Which members of a document say the cause. */
const causes: Readonly<Record<(typeof violationCodes)[number], string>> = {
  "more-than-six-disconnects": "Said by `disconnects` of a service.",
  "disconnects-share-a-compartment":
    'Said by `assembly.compartments` of a service with `housing: "listed-assembly"`; a violation from 2020. From 2023 `assembly.existing` equipment may stay. Where the inside is not told, a caution remains.',
  "jumper-not-permitted-here":
    "Said by `jumperAt`, `source.outdoors` and the `raceways` of a derived system. The metal raceways that make a parallel path are named.",
  "grounded-conductor-bonded-on-load-side":
    "Said by `loadSideConnections`; an `exception` with all its conditions met takes the violation away. An existing building says it in `existingGroundedConductor`.",
  "electrode-conductor-not-at-jumper":
    "Said by `from` of an electrode. Where arrangements are compared, the electrode conductors move with the jumper, to the enclosure that requires the largest; to an electrode that an enclosure is connected to already, none does.",
  "electrode-conductor-missing":
    "Said by `from` of the electrodes and the enclosures that have none; and by a service, a derived system or a building without any electrode or common electrode conductor.",
  "parallel-below-1-0":
    "Said by the sets of a run, circuit or generator; `parallelException` takes it away, that of elevators in 2008 only. Sets that go through a wireway, gutter or pull box to several places may serve one load each: a caution remains there.",
  "grounded-conductors-below-1-0":
    "Said by `groundedConductors` of a run in several raceways, with `existingUnderSupervision` for the exception.",
  "unlike-conductors-in-parallel":
    "Said by sets between the same two places whose conductors of one phase differ in size or material.",
  "bonded-by-locknuts": 'Said by `racewayJumpers: "locknuts"` of a service run, or `bondedBy: "locknuts"`.',
  "electrode-not-supplemented":
    "Said by the electrodes of the services, a building or an outdoor source: one rod, pipe or plate, no other electrode than water pipes, and no `ohms` of 25 or less.",
  "water-pipe-not-supplemented": "Said by electrodes that are water pipes alone.",
  "electrode-not-connected":
    "Said by `electrodesNotConnected` of a service or building, and by `isElectrode` of piping or structural metal that no list of electrodes names. A concrete-encased electrode of an existing building may stay so if `steelNotAccessible`.",
  "electrode-conductor-unprotected":
    "Said by `route.protection` of an electrode whose conductor is smaller than 6 AWG, or by `route.exposedToDamage` of a larger one. PVC has to be Schedule 80 from 2020. Where nothing is told of a small conductor, a caution remains.",
  "aluminum-not-permitted-here":
    "Said by `route.cover`, `route.against` and `route.outdoorEnd` of an electrode whose conductor is of aluminum. What it may not lie against changed in 2020.",
  "material-forbidden": "Said by an amendment and `materials`.",
  "factory-jumper-to-be-removed":
    'Said by `factoryJumper: "in-place"` of a generator that is not separately derived, or of a source whose jumper is elsewhere.',
  "grounded-conductor-rebonded":
    "Said by `existingGroundedConductor` of a building, if a condition is not met.",
  "jumper-outside-too-long":
    "Said by `placed` and `lengthFeet` of `loadSideJumpers`; `atOutdoorPole` takes it away.",
  "designation-not-in-edition":
    'Said by `designation: "emergency-disconnect"` of a service disconnect; a violation before 2020.',
  "electrode-conductor-not-at-impedance":
    "Said by `impedance.electrodeConductorAt` and `from` of an electrode.",
};

const head = [
  '<!-- Generated by "npm run pages -- violations"; do not edit. -->',
  "# Violations",
  "",
  "What an edition forbids in an installation, or misses in it, is a violation. It is no caution, which is advice: it has to be mended. In a schedule,",
  "report, check and comparison violations stand before everything else; a drawing marks them where they are; the command `check` ends with 1.",
  "What an edition does not have is no violation under it. What exists is sized all the same.",
].join("\n");
