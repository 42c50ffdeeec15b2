import conductors from "../../../tables/conductor-properties.json" with { type: "json" };
import { areaReader } from "../../../tables/tools/generator/areas.js";
import type { TableFile } from "../../../tables/tools/generator/model.js";

/** Circular mils of a size by its name, as the generator of the tables reads them; of 1100 kcmil too, which no conductor has. */
export const areaOfName: (size: string) => number = areaReader(conductors as unknown as TableFile);
