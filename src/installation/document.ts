export type { Installation } from "./shape.generated.js";
