import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** Source files by their path from the root of the project, with `/` between folders. */
export type SourceTree = ReadonlyMap<string, string>;

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The project's own files below a folder that end in one of these. */
export function readTree(folder: string, endings: readonly string[]): SourceTree {
  const names = readdirSync(join(ROOT, folder), { encoding: 'utf8', recursive: true });
  const paths = names.map((name) => posix.join(folder, name.replaceAll('\\', '/')));
  const wanted = paths.filter((path) => endings.some((ending) => path.endsWith(ending))).sort();
  return new Map(wanted.map((path) => [path, readFileSync(join(ROOT, path), 'utf8')]));
}

export function parseSource(path: string, text: string): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
}

/** Every node below this one, in the order of the text. */
export function* walk(node: ts.Node): Generator<ts.Node> {
  for (const child of node.getChildren()) {
    yield child;
    yield* walk(child);
  }
}

/** What a file imports, types and late imports included, as written. */
export function listImports(path: string, text: string): readonly string[] {
  return [...walk(parseSource(path, text))].flatMap((node) => nameImported(node) ?? []);
}

function nameImported(node: ts.Node): string | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
    return textOf(node.moduleSpecifier);
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    return textOf(node.argument.literal);
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return textOf(node.arguments[0]);
  }
  return undefined;
}

function textOf(node: ts.Node | undefined): string | undefined {
  return node !== undefined && ts.isStringLiteralLike(node) ? node.text : undefined;
}

/** What a file imports from this project, as paths from its root. */
export function listOwnImports(path: string, text: string): readonly string[] {
  const own = listImports(path, text).filter((name) => name.startsWith('.'));
  return own.map((name) => posix.join(dirname(path), name.replace(/\?.*$/, '')));
}
