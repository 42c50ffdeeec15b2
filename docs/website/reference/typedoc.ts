import { join, relative } from "node:path";
import {
  Application,
  Comment,
  CommentTag,
  Converter,
  type DeclarationReflection,
  ReflectionKind,
} from "typedoc";
import type { EntryPoint } from "./entries.js";
import { useOf, useOrder } from "./uses.js";

/** The module that holds what exported types are made of and no import path exports. */
const SUPPORTING = "Supporting types";

/** Writes the reference of the import paths as Markdown into a folder, one file for each name. A name without its doc comment, or a link that leads nowhere, is an error. */
export async function writeReference(
  root: string,
  entries: readonly EntryPoint[],
  folder: string,
): Promise<void> {
  const app = await Application.bootstrapWithPlugins({
    options: join(root, "docs/typedoc.json"),
    entryPoints: entries.map(({ source }) => join(root, source)),
    internalModule: SUPPORTING,
    categoryOrder: [...useOrder],
    out: folder,
  } as Parameters<typeof Application.bootstrapWithPlugins>[0]);
  app.converter.on(
    Converter.EVENT_RESOLVE_BEGIN,
    ({ project }) => {
      const modules = project.getChildrenByKind(ReflectionKind.Module);
      for (const module of modules) {
        const entry = entries.find(({ source }) => join(root, source) === fileOf(module));
        if (entry !== undefined) module.name = entry.name;
        for (const one of module.children ?? []) if (one.name !== SUPPORTING) group(one, root);
      }
    },
    -1,
  );
  const project = await app.convert();
  if (project === undefined) throw new Error("typedoc could not read the entry points");
  app.validate(project);
  await app.generateOutputs(project);
  if (app.logger.hasErrors() || app.logger.hasWarnings())
    throw new Error("the reference has faults; see above");
}

function fileOf(reflection: DeclarationReflection): string | undefined {
  return reflection.project.getSymbolIdFromReflection(reflection)?.fileName;
}

/** Puts a name under the heading of its use. */
function group(one: DeclarationReflection, root: string): void {
  const file = fileOf(one);
  if (file === undefined) throw new Error(`typedoc does not say where ${one.name} is declared`);
  const bearers = one.signatures ?? [one];
  for (const bearer of bearers) {
    bearer.comment ??= new Comment();
    bearer.comment.blockTags.push(
      new CommentTag("@category", [
        { kind: "text", text: useOf(relative(root, file).replaceAll("\\", "/")) },
      ]),
    );
  }
}
