import type { Material } from "../conductor/index.js";
import type { Installation } from "./document.js";

/** Which kind of conductor a material is named for. */
export type MaterialKey = keyof Installation["materials"];

/** Something that may name the materials of its own conductors. */
export interface WithMaterials {
  readonly materials?: { readonly [K in MaterialKey]?: Material };
}

/**
 * An installation as its conductors meet it at some things, from the outermost to the nearest: where one of them names a material, that one
 * stands in the installation's place..
 */
export function inMaterialsOf<T extends { readonly installation: Installation }>(
  at: T,
  ...things: readonly (WithMaterials | undefined)[]
): T {
  const own = things.flatMap((one) => one?.materials ?? []);
  if (own.length === 0) return at;
  const { installation } = at;
  const materials = Object.assign({ ...installation.materials }, ...own) as Installation["materials"];
  return { ...at, installation: { ...installation, materials } };
}

/** An installation with every conductor of a kind of one material, whatever its things say. */
export function withMaterial(installation: Installation, key: MaterialKey, material: Material): Installation {
  const { materials, ...others } = installation;
  return {
    ...(withoutOwn(others, key) as Omit<Installation, "materials">),
    materials: { ...materials, [key]: material },
  };
}

/** Data without the materials of a kind that anything in it names. */
function withoutOwn(data: unknown, key: MaterialKey): unknown {
  if (Array.isArray(data)) return data.map((one) => withoutOwn(one, key));
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(
    Object.entries(data).map(([name, value]) => {
      if (name !== "materials") return [name, withoutOwn(value, key)];
      const { [key]: _, ...kept } = value as Record<string, unknown>;
      return [name, kept];
    }),
  );
}
