import { checkRole } from "../../asking/check-role.js";
import { member, readAll, refuse } from "../../input/reader.js";
import type { ArrangementComparison } from "./arrangement.js";
import { arrangeElectrodeConductors } from "./electrode-conductors.js";
import { readElectrodeConductors, readMainJumpers, readRacewayJumpers, readSystemJumpers } from "./input.js";
import { arrangeMainJumpers } from "./main-jumpers.js";
import { arrangeRacewayJumpers } from "./raceway-jumpers.js";
import type {
  ElectrodeConductorsInput,
  MainJumpersInput,
  RacewayJumpersInput,
  SystemJumpersInput,
} from "./shape.generated.js";
import { arrangeSystemJumpers } from "./system-jumpers.js";

/** The question of each role that has arrangements, by its id. */
interface Questions {
  /** The enclosures of a service, with the ungrounded conductors to each, and a wireway ahead of them. */
  readonly "main-bonding-jumper": MainJumpersInput;
  /** The source of a separately derived system and the enclosures that it feeds. */
  readonly "system-bonding-jumper": SystemJumpersInput;
  /** Metal raceways on the supply side, with what runs in each. */
  readonly "supply-side-bonding-jumper": RacewayJumpersInput;
  /** Several enclosures or derived systems that are connected to the electrodes. */
  readonly "grounding-electrode-conductor": ElectrodeConductorsInput;
}

/** What {@link arrangementsOf} takes for a role, by the role's id. */
export type ArrangementsInput<Id extends keyof Questions> = Questions[Id];

/**
 * Puts the ways to arrange the conductors of a role side by side, without a whole document, by the rules of the schedule of an installation:
 *
 * - `mainBondingJumper`: one in the enclosure of each service disconnect (250.28(D)(2)), or one in a listed assembly;
 * - `systemBondingJumper`: one in the enclosure of each first disconnect, one at the source (250.28(D)(3)), or jumpers at both ends;
 * - `supplySideBondingJumper`: one in each of several metal raceways, or one in common (250.102(C)(2));
 * - `groundingElectrodeConductor`: of several enclosures or derived systems a common conductor with taps, an individual one from each,
 *   or one from a place ahead (250.64(D), 250.30(A)(5), (6)).
 *
 * Each has its conductors, the total of metal, where things are then connected, which further connection is a fault, and what the edition forbids.
 *
 * @param role - one of these four
 * @param input - the code, the places with the ungrounded conductors to each, and the conductor to be sized
 * @returns the arrangements, also those that are not permitted; one place alone may have one. Areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { arrangementsOf, systemBondingJumper } from "bondmil";
 * const { arrangements } = arrangementsOf(systemBondingJumper, {
 *   code: { year: "2017" },
 *   source: { id: "T1", outdoors: false },
 *   enclosures: [
 *     { id: "P1", supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } },
 *     { id: "P2", supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] } },
 *   ],
 *   conductor: { material: "copper" },
 * });
 * arrangements.map((one) => one.conductors.map(({ subject, result }) => [subject, result.requiredArea]));
 * // => [[["P1", 105600], ["P2", 133100]], [["T1", 187500]]]
 * ```
 */
export function arrangementsOf<Id extends keyof Questions>(
  role: {
    /** Stable id. */
    readonly id: Id;
  },
  input: Questions[NoInfer<Id>],
): ArrangementComparison {
  checkRole(role);
  if (!Object.hasOwn(questions, role.id)) {
    readAll({ role }, (at) =>
      refuse(
        member(at, "role"),
        "unknown-value",
        Object.keys(questions).join(", "),
        "pass for example mainBondingJumper; other roles have no arrangements of their own",
      ),
    );
  }
  return questions[role.id](input);
}

const questions: { readonly [Id in keyof Questions]: (input: Questions[Id]) => ArrangementComparison } = {
  "main-bonding-jumper": (input) => arrangeMainJumpers(readAll(input, readMainJumpers)),
  "system-bonding-jumper": (input) => arrangeSystemJumpers(readAll(input, readSystemJumpers)),
  "supply-side-bonding-jumper": (input) => arrangeRacewayJumpers(readAll(input, readRacewayJumpers)),
  "grounding-electrode-conductor": (input) =>
    arrangeElectrodeConductors(readAll(input, readElectrodeConductors)),
};
