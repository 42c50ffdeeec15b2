import { readAll, readOneOf } from "../input/reader.js";

/**
 * Conductor materials that the tables know.
 *
 * @example
 * ```ts
 * import { materials } from "bondmil";
 * materials; // => ["copper", "aluminum", "copper-clad aluminum"]
 * ```
 */
export const materials = ["copper", "aluminum", "copper-clad aluminum"] as const;

/** Material of a conductor. */
export type Material = (typeof materials)[number];

/**
 * Whether something is a conductor material that the tables know.
 *
 * @param value - anything
 * @returns `true` for a member of {@link materials}
 *
 * @example
 * ```ts
 * import { isMaterial } from "bondmil";
 * isMaterial("copper-clad aluminum"); // => true
 * isMaterial("steel"); // => false
 * ```
 */
export function isMaterial(value: unknown): value is Material {
  return (materials as readonly unknown[]).includes(value);
}

/**
 * Columns of the tables.
 *
 * @example
 * ```ts
 * import { conductorColumns } from "bondmil";
 * conductorColumns; // => ["copper", "aluminum"]
 * ```
 */
export const conductorColumns = ["copper", "aluminum"] as const;

/** Column of a table: copper, or aluminum together with copper-clad aluminum. */
export type ConductorColumn = (typeof conductorColumns)[number];

/**
 * The column in which a material stands. Every table of the code has one for aluminum and copper-clad aluminum together,
 * so the two count as one material wherever sizes of different materials are compared.
 *
 * @param material - a material
 * @returns its column
 * @throws {@link InputError} for anything but a member of {@link materials}
 *
 * @example
 * ```ts
 * import { columnOf } from "bondmil";
 * columnOf("copper-clad aluminum"); // => "aluminum"
 * ```
 */
export function columnOf(material: Material): ConductorColumn {
  switch (material) {
    case "copper":
      return "copper";
    case "aluminum":
    case "copper-clad aluminum":
      return "aluminum";
    default:
      return columnOf(readAll(material, (at) => readOneOf(at, materials)));
  }
}
