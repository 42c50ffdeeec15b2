import type { Installation } from "bondmil";
import type { Derived, Service, System } from "../parts.js";

/** A list with one member changed. */
export function at<T>(list: readonly T[], i: number, change: (one: T) => T): T[] {
  return list.map((one, n) => (n === i ? change(one) : one));
}

/** A drawing with one of its services changed. */
export function inService(
  installation: Installation,
  i: number,
  change: (one: Service) => Service,
): Installation {
  return { ...installation, services: at(installation.services ?? [], i, change) };
}

/** A drawing with one of its derived systems changed. */
export function inDerived(
  installation: Installation,
  i: number,
  change: (one: Derived) => Derived,
): Installation {
  return { ...installation, derivedSystems: at(installation.derivedSystems ?? [], i, change) };
}

/** Every system of a drawing, with the way to change it. */
export function systemsOf(
  installation: Installation,
): readonly { readonly system: System; readonly put: (parts: Partial<System>) => Installation }[] {
  const { services = [], derivedSystems = [] } = installation;
  return [
    ...services.map((system, i) => ({
      system,
      put: (parts: Partial<System>) => inService(installation, i, (one) => ({ ...one, ...parts }) as Service),
    })),
    ...derivedSystems.map((system, i) => ({
      system,
      put: (parts: Partial<System>) => inDerived(installation, i, (one) => ({ ...one, ...parts }) as Derived),
    })),
  ];
}
