/** Where two records of results differ, as lines of place, what was recorded and what is now; in both directions. */
export function differencesOf(recorded: unknown, now: unknown, place = ""): readonly string[] {
  if (isRecord(recorded) && isRecord(now)) {
    const keys = [...new Set([...Object.keys(recorded), ...Object.keys(now)])];
    return keys.flatMap((key) =>
      differencesOf(recorded[key], now[key], place === "" ? key : `${place}, ${key}`),
    );
  }
  if (recorded === now) return [];
  return [`${place}: recorded ${text(recorded)}, now ${text(now)}`];
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

function text(value: unknown): string {
  return value === undefined ? "nothing" : JSON.stringify(value);
}
