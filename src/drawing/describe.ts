import { conductorWords, endWords } from "../installation/conductor-words.js";
import type { Group, Link, Marked } from "./group.js";
import { labelOf } from "./write.js";

/** The path as a list, for those who do not see it: what is forbidden, then place by place what leads there and what is within. */
export function describe({ places, links, violations = [] }: Group): readonly string[] {
  const names = new Map(places.map(({ key, name }) => [key, name]));
  const nameOf = (key: string): string => names.get(key) ?? key;
  return [
    ...violations.map(
      ({ mark, violation }) => `Not permitted, ${mark}: ${violation.at.join(", ")} [${violation.section}].`,
    ),
    ...links.map((link) => `From ${nameOf(link.from)} to ${nameOf(link.to)}: ${contentOf(link).join("; ")}.`),
    ...places
      .filter(({ inside }) => inside.length > 0)
      .map(({ name, inside }) => `Within ${name}: ${inside.map(told).join("; ")}.`),
  ];
}

function contentOf({ context, conductors }: Link): readonly string[] {
  return [...(context === undefined ? [] : [context]), ...conductors.map(told)];
}

function told(marked: Marked): string {
  const { conductor } = marked;
  return `${conductorWords(conductor)}, ${labelOf(marked)}, from ${endWords(conductor.from)} to ${endWords(conductor.to)}`;
}
