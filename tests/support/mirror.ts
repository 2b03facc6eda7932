import ts from 'typescript';
import { parseSource, type SourceTree } from './source-tree.ts';

/** Files of src that want a test file at the mirrored path and have none. */
export function findUntested(tree: SourceTree, tests: ReadonlySet<string>): readonly string[] {
  return [...tree]
    .filter(([path, text]) => !path.endsWith('.d.ts') && !isOnlyTypes(path, text))
    .map(([path]) => [path, mirrorOf(path)] as const)
    .filter(([, mirror]) => !tests.has(mirror))
    .map(([path, mirror]) => `${path} has no ${mirror}`);
}

/** `src/a/b.ts` → `tests/a/b.test.ts`. */
function mirrorOf(path: string): string {
  return path.replace(/^src\//, 'tests/').replace(/\.[jt]s$/, '.test.ts');
}

/** True for a file that leaves nothing to run: types, interfaces and imports of them. */
function isOnlyTypes(path: string, text: string): boolean {
  return parseSource(path, text).statements.every(
    (statement) =>
      ts.isInterfaceDeclaration(statement) ||
      ts.isTypeAliasDeclaration(statement) ||
      ts.isImportDeclaration(statement) ||
      (ts.isExportDeclaration(statement) && statement.isTypeOnly),
  );
}
