/** Steps from an input to a place in it. */
export type Keys = readonly (string | number)[];

/** Writes the steps to a place, for example `services[0].runs[1].from`; nothing for the input itself. */
export function pathOf(keys: Keys): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === "number") return `${path}[${key}]`;
    return path === "" ? key : `${path}.${key}`;
  }, "");
}
