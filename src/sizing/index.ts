export type {
  CapReason,
  CapStep,
  FloorStep,
  Governing,
  LoadStep,
  NamedSizeStep,
  RatingRowStep,
  SharedCircuit,
  SharedStep,
  StandardSizeStep,
  Step,
} from "./step.js";
