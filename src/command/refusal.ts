import type { Issue } from "../input/input-error.js";

/** What is wrong in something that is refused, each thing with its place. */
export function refusal(issues: readonly Issue[], name: string): string {
  const lines = issues.map(({ path, message }) => `  ${path === "" ? "the whole" : path}: ${message}`);
  const count = issues.length === 1 ? "one thing is wrong" : `${issues.length} things are wrong`;
  return [`${name} is refused, ${count}:`, ...lines].join("\n");
}
