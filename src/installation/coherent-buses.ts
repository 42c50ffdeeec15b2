import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";

type Service = NonNullable<Installation["services"]>[number];

/** A bus without a section, and sections on a bus that are supplied otherwise or are no service disconnects. */
export function busFaults({ buses = [], disconnects, runs }: Service, at: Keys): readonly Fault[] {
  return [
    ...buses.flatMap(({ id }, i) =>
      disconnects.some(({ bus }) => bus === id)
        ? []
        : [
            fault(
              "dangling-reference",
              [...at, "buses", i, "id"],
              `a disconnect with bus: "${id}"`,
              id,
              "name the bus in the disconnects that stand on it",
            ),
          ],
    ),
    ...disconnects.flatMap(({ id, bus, designation, jumperForm }, i) => {
      if (bus === undefined) return [];
      const keys = [...at, "disconnects", i];
      const run = runs.findIndex(({ to }) => to === id);
      return [
        ...(designation === "service-disconnect"
          ? []
          : [
              fault(
                "unknown-value",
                [...keys, "designation"],
                '"service-disconnect"',
                designation,
                "only service disconnects are sections on a bus",
              ),
            ]),
        ...(run < 0
          ? []
          : [
              fault(
                "unknown-value",
                [...at, "runs", run, "to"],
                `"${bus}", the bus that "${id}" stands on`,
                id,
                "a section is supplied by its bus; let the run end there, or take the bus from the disconnect",
              ),
            ]),
        ...(jumperForm === undefined
          ? []
          : [
              fault(
                "unknown-key",
                [...keys, "jumperForm"],
                `no such member, which "${bus}" has`,
                jumperForm,
                "the one main bonding jumper is the bus's; say its form there",
              ),
            ]),
      ];
    }),
  ];
}
