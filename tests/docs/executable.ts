import ts from "typescript";
import type { Snippet } from "./snippets.js";

/** A snippet as the body of a function of `require`, `$same` and `$throws`. */
export interface Executable {
  readonly body: string;
  /** How many `// =>` and `// throws` lines it checks. */
  readonly checks: number;
}

const marker = /^\/\/ ?(?:=>|throws [\w-]+(?:\n|$))/;

function parse(code: string): ts.SourceFile {
  return ts.createSourceFile("snippet.ts", code, ts.ScriptTarget.ES2022, true);
}

function isExpression(text: string): boolean {
  const { diagnostics } = ts.transpileModule(`(${text}\n);`, { reportDiagnostics: true });
  return text.trim() !== "" && diagnostics?.length === 0;
}

/** The expected value after an arrow: the fewest comment lines that make one whole expression. */
function expectedValue(lines: readonly string[]): string | undefined {
  for (let count = 1; count <= lines.length; count++) {
    const text = lines.slice(0, count).join("\n");
    if (isExpression(text)) return text;
  }
  return undefined;
}

function checkedStatement(statement: ts.Statement, comment: string, where: string): string {
  const code = statement.getText();
  const lines = comment.split("\n").map((line) => line.trim().replace(/^\/\/ ?/, ""));
  const [first = "", ...rest] = lines;
  const thrown = /^throws ([\w-]+)$/.exec(first)?.[1];
  if (thrown !== undefined) return `await $throws(async () => { ${code}\n }, ${JSON.stringify(thrown)});`;

  const value = expectedValue([first.replace(/^=>/, ""), ...rest]);
  if (value === undefined) throw new Error(`${where}: what follows "// =>" is not an expression`);
  if (ts.isExpressionStatement(statement)) return `$same(${statement.expression.getText()}, (${value}\n));`;
  const declared = ts.isVariableStatement(statement) ? statement.declarationList.declarations : [];
  const name = declared.length === 1 ? declared[0]?.name : undefined;
  if (name && ts.isIdentifier(name)) return `${code}\n$same(${name.text}, (${value}\n));`;
  throw new Error(`${where}: "// =>" belongs after an expression or after a const with one name`);
}

export function executable(snippet: Snippet): Executable {
  const source = parse(snippet.code);
  let checks = 0;
  const statements = source.statements.map((statement, index) => {
    if (ts.isImportDeclaration(statement)) {
      const from = (statement.moduleSpecifier as ts.StringLiteral).text;
      if (!["bondmil", "bondmil/corpus", "bondmil/tables"].includes(from))
        throw new Error(`${snippet.place}: imports "${from}"; only the entries of bondmil are allowed`);
    }
    const next = source.statements[index + 1]?.getStart() ?? snippet.code.length;
    const comment = snippet.code.slice(statement.end, next).trim();
    if (!marker.test(comment)) return statement.getText();
    checks++;
    const line = source.getLineAndCharacterOfPosition(statement.end).line;
    return checkedStatement(statement, comment, `${snippet.file}:${snippet.firstLine + line + 1}`);
  });
  const written = snippet.code.match(/\/\/ ?(?:=>|throws [\w-]+$)/gm)?.length ?? 0;
  if (written !== checks) {
    throw new Error(
      `${snippet.place}: a "// =>" or "// throws" does not directly follow a top-level statement`,
    );
  }
  const { outputText } = ts.transpileModule(statements.join("\n"), {
    compilerOptions: {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2022,
      esModuleInterop: true,
    },
  });
  return { body: `const exports = {}; return (async () => {${outputText}\n})();`, checks };
}
