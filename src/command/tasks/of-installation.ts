import { checkOfRead } from "../../installation/check.js";
import type { Installation } from "../../installation/document.js";
import type { Check } from "../../installation/installed/checked.js";
import { readInstallation } from "../../installation/read-installation.js";
import type { Answer, RunTask } from "../answer.js";
import type { Task } from "../arguments.js";
import type { Ending } from "../exit-codes.js";
import type { Outcome } from "../failure.js";
import { hintFor } from "../hints.js";
import { readSource } from "../source.js";
import { formatOf, refusePage, styleOf } from "../style.js";
import type { Surroundings } from "../surroundings.js";
import { writeCheck, writeReport, writeSchedule } from "../writers.js";

/** Writes the schedule of an installation. */
export const scheduleTask: RunTask = async (task, around) => {
  const format = formatOf(task, "text");
  return withInstallation(task, format, around, (installation) => ({
    text: writeSchedule(installation, styleOf(task, format, around)),
    isForReading: format === "text",
    ending: "done",
  }));
};

/** Writes the report on an installation. */
export const reportTask: RunTask = async (task, around) => {
  const format = formatOf(task, "html");
  return withInstallation(task, format, around, (installation) => ({
    text: writeReport(installation, format, styleOf(task, format, around).options),
    isForReading: false,
    ending: "done",
  }));
};

/** Holds what is installed against the schedule. */
export const checkTask: RunTask = async (task, around) => {
  const format = formatOf(task, "text");
  return withInstallation(task, format, around, (installation) => {
    const check = checkOfRead(installation);
    return {
      text: writeCheck(check, styleOf(task, format, around)),
      isForReading: format === "text",
      ending: endingOf(check),
    };
  });
};

async function withInstallation(
  task: Task,
  format: string,
  around: Surroundings,
  answer: (installation: Installation) => Answer,
): Promise<Outcome<Answer>> {
  const page = refusePage(task, format, around);
  if (page !== null) return page;
  const source = await readSource(task.path, around, hintFor(task.subcommand));
  if (source.failure !== undefined) return source;
  return { value: answer(readInstallation(source.value)) };
}

function endingOf({ isListed, findings, schedule }: Check): Ending {
  return !isListed || findings.length > 0 || schedule.violations.length > 0 ? "found" : "done";
}
