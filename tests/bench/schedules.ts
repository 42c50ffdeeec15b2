import { readFileSync } from "node:fs";
import { fingerprintOf, type Installation, readInstallation, scheduleOf } from "bondmil";

const text = readFileSync(new URL("../../docs/installations/cold-store.json", import.meta.url), "utf8");
const installation = JSON.parse(text) as Installation;
const schedule = scheduleOf(installation);

/** A service of six enclosures: what a program does with it, beside reading its text and writing its schedule with nothing between. */
export const schedules: Readonly<Record<string, () => unknown>> = {
  "bare JSON: parse the installation, write the schedule": () => [JSON.parse(text), JSON.stringify(schedule)],
  "`scheduleOf`": () => scheduleOf(installation),
  "`scheduleOf` without fingerprints": () => scheduleOf(installation, { fingerprint: false }),
  "`readInstallation`, which is part of it": () => readInstallation(installation),
  "`fingerprintOf` of the schedule, which is part of it": () => fingerprintOf(schedule),
};
