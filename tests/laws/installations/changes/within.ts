import type { Drawing } from "bondmil";
import type { Derived, Service, System } from "../parts.js";

/** A list with one member changed. */
export function at<T>(list: readonly T[], i: number, change: (one: T) => T): T[] {
  return list.map((one, n) => (n === i ? change(one) : one));
}

/** A drawing with one of its services changed. */
export function inService(drawing: Drawing, i: number, change: (one: Service) => Service): Drawing {
  return { ...drawing, services: at(drawing.services ?? [], i, change) };
}

/** A drawing with one of its derived systems changed. */
export function inDerived(drawing: Drawing, i: number, change: (one: Derived) => Derived): Drawing {
  return { ...drawing, derivedSystems: at(drawing.derivedSystems ?? [], i, change) };
}

/** Every system of a drawing, with the way to change it. */
export function systemsOf(
  drawing: Drawing,
): readonly { readonly system: System; readonly put: (parts: Partial<System>) => Drawing }[] {
  const { services = [], derivedSystems = [] } = drawing;
  return [
    ...services.map((system, i) => ({
      system,
      put: (parts: Partial<System>) => inService(drawing, i, (one) => ({ ...one, ...parts }) as Service),
    })),
    ...derivedSystems.map((system, i) => ({
      system,
      put: (parts: Partial<System>) => inDerived(drawing, i, (one) => ({ ...one, ...parts }) as Derived),
    })),
  ];
}
