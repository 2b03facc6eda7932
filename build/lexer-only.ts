import ts from 'typescript';
import type { Plugin } from 'vite';

const PLACE = /\/node_modules\/marked\/lib\/marked\.esm\.js$/;

/**
 * Leaves what writes HTML out of the library that reads Markdown: a sheet is read into tokens, and the page makes
 * nodes of its own from them. The library is tied up in one object, so that no bundler finds what is not needed.
 */
export function lexerOnly(): Plugin {
  return {
    name: 'layshaft-lexer-only',
    enforce: 'pre',
    transform: (code, id) =>
      PLACE.test(id) ? { code: keepExport(code, 'lexer'), map: null } : undefined,
  };
}

/** A statement, or one of the variables that a statement declares. */
interface Piece {
  readonly text: string;
  readonly declares: string | undefined;
  /** Every name in it, also of what is only called alike: one too many keeps too much and breaks nothing. */
  readonly names: ReadonlySet<string>;
}

/**
 * A module with one of its exports, and of its statements those that this one needs.
 * A statement that declares nothing stays where all that it names stays.
 */
export function keepExport(code: string, name: string): string {
  const file = ts.createSourceFile('library.js', code, ts.ScriptTarget.Latest, true);
  const pieces = file.statements.flatMap(takeApart);
  const local = localName(file, name);
  const kept = findNeeded(pieces, local);
  const gone = pieces.flatMap(({ declares = '' }) => (kept.has(declares) ? [] : [declares]));
  const staying = pieces.filter(({ declares, names }) =>
    declares === undefined ? gone.every((one) => !names.has(one)) : kept.has(declares),
  );
  return [...staying.map(({ text }) => text), `export { ${local} as ${name} };\n`].join('\n');
}

function takeApart(statement: ts.Statement): readonly Piece[] {
  if (ts.isExportDeclaration(statement)) return [];
  const createPiece = (node: ts.Node, text: string, declares?: string): Piece => {
    return { text, declares, names: namesIn(node) };
  };
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map((one) =>
      createPiece(one, `var ${one.getText()};`, one.name.getText()),
    );
  }
  const isNamed = ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement);
  return [createPiece(statement, statement.getText(), isNamed ? statement.name?.text : undefined)];
}

function namesIn(node: ts.Node): ReadonlySet<string> {
  const names = new Set<string>();
  const visit = (one: ts.Node): void => {
    if (ts.isIdentifier(one)) names.add(one.text);
    ts.forEachChild(one, visit);
  };
  visit(node);
  return names;
}

function localName(file: ts.SourceFile, name: string): string {
  const lists = file.statements.filter(ts.isExportDeclaration).map((one) => one.exportClause);
  const exported = lists.flatMap((list) =>
    list !== undefined && ts.isNamedExports(list) ? [...list.elements] : [],
  );
  const found = exported.find((one) => one.name.text === name);
  if (found === undefined) throw new Error(`the library exports no ${name} any more`);
  return (found.propertyName ?? found.name).text;
}

function findNeeded(pieces: readonly Piece[], start: string): ReadonlySet<string> {
  const needed = new Set([start]);
  for (const name of needed) {
    const piece = pieces.find(({ declares }) => declares === name);
    for (const used of piece?.names ?? []) needed.add(used);
  }
  return needed;
}
