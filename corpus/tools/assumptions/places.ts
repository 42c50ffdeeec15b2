/** The value at a dotted path of an input; `undefined` where the path leads nowhere. */
export function valueAt(input: unknown, path: string): unknown {
  return path.split(".").reduce<unknown>((value, key) => (isParent(value) ? value[key] : undefined), input);
}

/** A copy of an input with another value at a path; without a value, the member is left out. */
export function withValueAt<T>(input: T, path: string, value: unknown): T {
  const copy = structuredClone(input);
  const keys = path.split(".");
  const last = keys.pop() as string;
  const parent = keys.reduce<unknown>((inner, key) => (isParent(inner) ? inner[key] : undefined), copy);
  if (!isParent(parent)) throw new Error(`nothing is at ${path}`);
  if (value !== undefined) parent[last] = value;
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else delete parent[last];
  return copy;
}

function isParent(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}
