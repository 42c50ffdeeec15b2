import { areaOf, compareSizes } from "../../conductor/index.js";
import { electrodeRacewayBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { electrodeRaceway } from "../../edition/tables/sections.generated.js";
import { sameSizeInAluminum } from "../../rules/by-supply-cautions.js";
import { finish, notRequired } from "../../rules/finish.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { NamedSizeStep } from "../../sizing/index.js";
import type { ElectrodeRacewayBondingJumperInput } from "./input.js";

type Id = "electrode-raceway-bonding-jumper";

const facts = electrodeRacewayBondingJumperFacts;

/** Sizes the jumpers at the ends of a raceway around grounding electrode conductors, or says why none is required. */
export function decide(input: ElectrodeRacewayBondingJumperInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, ferrous, enclosed, conductor } = input;
  const { material } = conductor;
  const citation = electrodeRaceway[code.year];
  if (!ferrous) return notRequired(facts, code, material, "nonferrous-raceway", citation);
  const { size } = enclosed.reduce((so, one) => (compareSizes(one.size, so.size) > 0 ? one : so));
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "other-conductor",
    size,
    requiredArea: areaOf(size),
    citation,
  };
  return finish(code, () => ({
    facts,
    code,
    material,
    steps: [step],
    governs: step.kind,
    requiredArea: step.requiredArea,
    quantity: 2,
    citation,
    cautions: () => sameSizeInAluminum(material, enclosed, citation),
  }));
}
