import { fileURLToPath } from "node:url";
import ts from "typescript";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile).config,
  ts.sys,
  root,
);

/** The entries of the package by the files that they are made from. */
export const entries = {
  bondmil: `${root}src/index.ts`,
  "bondmil/corpus": `${root}corpus/tools/index.ts`,
  "bondmil/tables": `${root}tables/tools/index.ts`,
} as const;

const program = ts.createProgram(Object.values(entries), options);
const checker = program.getTypeChecker();

/** A name of the public face. */
export interface Exported {
  readonly entry: keyof typeof entries;
  readonly name: string;
  readonly declarations: readonly ts.Declaration[];
}

/** Every name that the package exports. */
export const exported: readonly Exported[] = (Object.keys(entries) as (keyof typeof entries)[]).flatMap(
  (entry) => {
    const file = program.getSourceFile(entries[entry]);
    const module = file && checker.getSymbolAtLocation(file);
    if (module === undefined) throw new Error(`${entry} is no module`);
    return checker.getExportsOfModule(module).map((symbol) => {
      const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      return { entry, name: symbol.name, declarations: target.declarations ?? [] };
    });
  },
);

/** Members of the types of the public face, and of the types that they are made of, that no comment explains; what can never be there needs none. */
export function undocumentedMembers(): readonly string[] {
  const seen = new Set<ts.Declaration>();
  const found: string[] = [];
  const visitType = (node: ts.Node, owner: string): void => {
    if (ts.isPropertySignature(node) || ts.isMethodSignature(node)) {
      if (node.type?.kind === ts.SyntaxKind.NeverKeyword) return;
      const name = `${owner}.${node.name.getText()}`;
      if (!isExplained(node)) found.push(name);
      ts.forEachChild(node, (child) => visitType(child, name));
      return;
    }
    if (ts.isTypeReferenceNode(node) || ts.isExpressionWithTypeArguments(node)) {
      const place = ts.isTypeReferenceNode(node) ? node.typeName : node.expression;
      const symbol = checker.getSymbolAtLocation(place);
      const target =
        symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      for (const declaration of target?.declarations ?? []) visit(declaration);
    }
    ts.forEachChild(node, (child) => visitType(child, owner));
  };
  const visit = (declaration: ts.Declaration): void => {
    const file = declaration.getSourceFile().fileName;
    if (seen.has(declaration) || !file.startsWith(root) || file.includes("node_modules")) return;
    seen.add(declaration);
    if (ts.isInterfaceDeclaration(declaration) || ts.isTypeAliasDeclaration(declaration)) {
      ts.forEachChild(declaration, (child) => visitType(child, declaration.name.text));
    } else if (ts.isFunctionDeclaration(declaration)) {
      for (const parameter of declaration.parameters) if (parameter.type) visitType(parameter.type, "");
      if (declaration.type) visitType(declaration.type, "");
    } else if (ts.isVariableDeclaration(declaration) && declaration.type) {
      visitType(declaration.type, declaration.name.getText());
    }
  };
  for (const { declarations } of exported) for (const declaration of declarations) visit(declaration);
  return [...new Set(found)];
}

function isExplained(node: ts.Node): boolean {
  return ts.getJSDocCommentsAndTags(node).length > 0;
}
