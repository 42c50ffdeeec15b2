export {
  type ConductorColumn,
  columnOf,
  conductorColumns,
  isMaterial,
  type Material,
  materials,
} from "./material.js";
export { formatSize, parseSize } from "./parse.js";
export {
  areaOf,
  type ConductorSize,
  compareSizes,
  conductorSizes,
  isConductorSize,
  isStandardSize,
  nextSizeDown,
  nextSizeUp,
  type StandardSize,
  standardSizeFor,
  standardSizes,
} from "./size.js";
