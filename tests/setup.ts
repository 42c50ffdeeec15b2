import fc from "fast-check";

const seed = process.env.FAST_CHECK_SEED;

// Without a seed fast-check draws its own and prints it with a failure.
if (seed !== undefined) {
  if (!/^-?\d+$/.test(seed)) throw new Error(`FAST_CHECK_SEED must be a whole number, got "${seed}"`);
  fc.configureGlobal({ seed: Number(seed) });
}
