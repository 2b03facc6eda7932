import ts from 'typescript';
import { parseSource, type SourceTree, walk } from './source-tree.ts';

/** Ways of turning text into code or markup, which no sheet and no entry may reach. */
const CALLS: ReadonlySet<string> = new Set(['eval', 'Function']);
const MEMBERS: ReadonlySet<string> = new Set([
  'innerHTML',
  'outerHTML',
  'insertAdjacentHTML',
  'createContextualFragment',
  'srcdoc',
]);

/** Uses of these in code; words in comments and texts do not count. */
export function findForbidden(tree: SourceTree): readonly string[] {
  return [...tree].flatMap(([path, text]) => {
    const file = parseSource(path, text);
    return [...walk(file)].flatMap((node) => {
      const used = nameForbidden(node);
      const line = file.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      return used === undefined ? [] : [`${path}:${line} uses ${used}`];
    });
  });
}

function nameForbidden(node: ts.Node): string | undefined {
  if (ts.isCallExpression(node) || ts.isNewExpression(node)) {
    const called = node.expression.getText().replace(/^(globalThis|window|self)\./, '');
    if (CALLS.has(called) || /^document\.write(ln)?$/.test(called)) return called;
  }
  if (ts.isPropertyAccessExpression(node) && MEMBERS.has(node.name.text)) return node.name.text;
  if (ts.isElementAccessExpression(node) && ts.isStringLiteralLike(node.argumentExpression)) {
    const name = node.argumentExpression.text;
    return MEMBERS.has(name) || CALLS.has(name) ? name : undefined;
  }
  return undefined;
}
