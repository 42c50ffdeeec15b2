import { InputError, type Installation, issuesSoFar, readInstallation } from "bondmil";
import { expect, it } from "vitest";
import { keptInstallation, keptNames } from "./installations.js";

// What is said of installations that are broken in one place: a member left out, a member that belongs elsewhere, another value that the same
// member has elsewhere. A broken installation is written down only where something is said that was not said before.

/** A fifth of them, so that it does not take a minute; the same ones when others come along. */
const isTried = (how: string) => [...how].reduce((sum, letter) => sum + letter.charCodeAt(0), 0) % 5 === 0;

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

interface Broken {
  readonly how: string;
  readonly installation: Json;
}

const isObject = (value: Json | undefined): value is { readonly [key: string]: Json } =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const whole: readonly Json[] = keptNames.map((name) => keptInstallation(name) as unknown as Json);

/** Every value of a member of that name, wherever it is. */
const valuesOf = new Map<string, Map<string, Json>>();

/** Every member that objects at a like place have. */
const membersAt = new Map<string, Set<string>>();

for (const one of whole) note(one, "");

function note(value: Json, place: string): void {
  if (Array.isArray(value)) for (const one of value as readonly Json[]) note(one, `${place}[]`);
  if (!isObject(value)) return;
  const members = membersAt.get(place) ?? new Set();
  membersAt.set(place, members);
  for (const [key, inner] of Object.entries(value)) {
    members.add(key);
    const values = valuesOf.get(key) ?? new Map<string, Json>();
    valuesOf.set(key, values);
    if (values.size < 9) values.set(JSON.stringify(inner), inner);
    note(inner, `${place}.${key}`);
  }
}

function* brokenIn(value: Json, place: string, at: string): Generator<Broken> {
  if (Array.isArray(value)) {
    const list = value as readonly Json[];
    for (const [i, one] of list.entries()) {
      for (const { how, installation } of brokenIn(one, `${place}[]`, `${at}[${i}]`))
        yield { how, installation: list.map((other, n) => (n === i ? installation : other)) };
    }
    yield { how: `${at} twice`, installation: [...list, ...list.slice(0, 1)] };
    return;
  }
  if (!isObject(value)) return;
  for (const [key, inner] of Object.entries(value)) {
    const { [key]: _, ...rest } = value;
    yield { how: `without ${at}.${key}`, installation: rest };
    for (const { how, installation } of brokenIn(inner, `${place}.${key}`, `${at}.${key}`))
      yield { how, installation: { ...value, [key]: installation } };
  }
  for (const key of membersAt.get(place) ?? []) {
    for (const [written, other] of valuesOf.get(key) ?? []) {
      if (JSON.stringify(value[key]) === written || key === "installed") continue;
      const shown = written.length > 60 ? `${written.slice(0, 57)}...` : written;
      yield { how: `${at}.${key} = ${shown}`, installation: { ...value, [key]: other } };
    }
  }
}

function saidOf(installation: Json): readonly string[] {
  try {
    readInstallation(installation as unknown as Installation);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ path, code, message }) => `${path} ${code}: ${message}`);
  }
}

it("installations that are broken in one place are refused as before", async () => {
  const seen = new Set<string>();
  const told: string[] = [];
  for (const [i, one] of whole.entries()) {
    for (const { how, installation } of brokenIn(one, "", "")) {
      if (!isTried(how)) continue;
      const said = saidOf(installation);
      const fresh = said.filter((line) => {
        const sort = line.replace(/"(?:[^"\\]|\\.)*"/g, '""').replace(/\d+/g, "#");
        return !seen.has(sort) && seen.add(sort);
      });
      if (fresh.length === 0) continue;
      const soFar = issuesSoFar(installation).length;
      told.push(`${keptNames[i]} ${how}; ${soFar} so far`, ...said.map((line) => `  ${line}`));
    }
  }
  const file = new URL("./refusals.txt", import.meta.url);
  await expect(`${told.join("\n")}\n`).toMatchFileSnapshot(file.pathname);
});
