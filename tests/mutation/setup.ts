import fc from "fast-check";

// A property is asked less often than in `npm test`, and its counterexample is not shrunk: one failure kills a mutant.
fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 50, endOnFailure: true });

// A task of the command is loaded when it is run first. What is read with it would count as noticed by that one test alone.
if (process.env.MEASURED_ROOM === "command") {
  const { tasks } = await import("../../src/command/run.js");
  await Promise.all(Object.values(tasks).map((load) => load()));
}
