import { type Installation, readInstallation, scheduleOf } from "bondmil";
import type { Built } from "../built.js";
import type { Law } from "./law.js";

/** A document that was written and read again has the same fingerprint; what is not shown does not change it. */
export const fingerprintStays: Law = {
  name: "a document written and read again has its fingerprint",
  breaches: ({ installation, schedule }) => {
    const again = scheduleOf(readInstallation(JSON.stringify(installation)));
    const addressed = scheduleOf({
      ...installation,
      $schema: "https://example.org/installation.schema.json",
    });
    const { fingerprint } = schedule;
    return [
      ...(again.fingerprint === fingerprint ? [] : ["written and read again it has another fingerprint"]),
      ...(JSON.stringify(again) === JSON.stringify(schedule) ? [] : ["read again it has another schedule"]),
      ...(addressed.fingerprint === fingerprint ? [] : ["the address of the schema changes the fingerprint"]),
    ];
  },
};

/** A document that says something else has another fingerprint. */
export function fingerprintChanges(before: Built, after: Built): readonly string[] {
  if (says(before.installation) === says(after.installation)) return [];
  return before.schedule.fingerprint === after.schedule.fingerprint ? ["the fingerprint stays the same"] : [];
}

function says({ $schema: _, installed: __, ...installation }: Installation): string {
  return JSON.stringify(installation);
}
