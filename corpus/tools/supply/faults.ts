import { type SupplyCheck, type SupplyCheckFile, supplyEntriesOf } from "./model.js";
import { questions } from "./questions.js";

/** What a schema cannot see: ids that come twice, files of no question, disputes that are none. */
export function supplyFaults(files: readonly SupplyCheckFile[]): readonly string[] {
  const entries = supplyEntriesOf(files);
  const ids = entries.map(({ check }) => check.id);
  const twice = new Set(ids.filter((id, index) => ids.indexOf(id) !== index));
  return [
    ...files
      .filter(({ id }) => !Object.hasOwn(questions, id))
      .map(({ id }) => `${id}: no question has this name`),
    ...[...twice].map((id) => `${id}: two checks have this id`),
    ...entries.flatMap(({ check }) => checkFaults(check).map((fault) => `${check.id}: ${fault}`)),
  ];
}

function checkFaults({ stated, holds, expect, dispute }: SupplyCheck): readonly string[] {
  const isOneSided = stated !== null && (holds.length !== 1 || holds[0] !== stated);
  const isSame = JSON.stringify(dispute?.expectByText) === JSON.stringify(expect);
  return [
    ...(isOneSided ? [`states ${stated}, so it holds there alone, not in ${holds.join(", ")}`] : []),
    ...(isSame ? ["source and text say the same"] : []),
  ];
}
