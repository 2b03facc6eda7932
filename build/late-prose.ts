import { readFile } from 'node:fs/promises';
import ts from 'typescript';
import type { Plugin } from 'vite';

/** Where functions and units are declared with what is said of them. */
const PLACE = /\/src\/(?:(?:trade|language\/functions)\/[^/?]+|units\/unit-table)\.ts$/;
const WHOLE = '?whole';
/** What a person reads when they ask where a formula comes from; nothing is worked with it. */
const PROSE: ReadonlySet<string> = new Set(['doc', 'validity', 'source', 'example']);

/**
 * Leaves what is said of functions and units out of the first script; an import that ends in `?whole` brings the
 * declarations as they are written, when somebody asks.
 */
export function lateProse(): Plugin {
  return {
    name: 'layshaft-late-prose',
    enforce: 'pre',
    async resolveId(source, importer) {
      const isWhole = source.endsWith(WHOLE) || importer?.endsWith(WHOLE) === true;
      if (!isWhole) return undefined;
      const plain = source.replace(WHOLE, '');
      const found = await this.resolve(plain, importer?.replace(WHOLE, ''), { skipSelf: true });
      if (found === null) return undefined;
      return PLACE.test(found.id) ? `${found.id}${WHOLE}` : found;
    },
    load: (id) => (id.endsWith(WHOLE) ? readFile(id.slice(0, -WHOLE.length), 'utf8') : undefined),
    transform: (code, id) => (PLACE.test(id) ? { code: dropProse(code), map: null } : undefined),
  };
}

/** The source of declarations with empty prose. */
export function dropProse(code: string): string {
  const file = ts.createSourceFile('declarations.ts', code, ts.ScriptTarget.Latest, true);
  const spans: { readonly from: number; readonly to: number; readonly list: boolean }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && PROSE.has(node.name.getText(file))) {
      const { initializer } = node;
      const list = ts.isArrayLiteralExpression(initializer);
      spans.push({ from: initializer.getStart(file), to: initializer.getEnd(), list });
    } else ts.forEachChild(node, visit);
  };
  visit(file);
  return spans.reduceRight(
    (text, { from, to, list }) => text.slice(0, from) + (list ? "['', '']" : "''") + text.slice(to),
    code,
  );
}
