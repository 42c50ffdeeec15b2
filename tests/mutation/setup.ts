import fc from "fast-check";

// A property is asked less often than in `npm test`, and its counterexample is not shrunk: one failure kills a mutant.
fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 50, endOnFailure: true });
