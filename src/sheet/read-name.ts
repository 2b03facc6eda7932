import type { Cursor } from '../language/cursor.ts';
import { inferName, isName, maybeRole } from '../language/names.ts';
import { fault, unexpected } from '../language/parse.ts';
import type { NameNode } from '../language/tree.ts';

/** Reads a name that refers to a value. Throws a ReadFault. */
export function readName(cursor: Cursor, what: string): NameNode {
  const token = cursor.peek();
  if (token.type !== 'word') throw unexpected(token, what);
  const { text, from, to } = token;
  if (!isName(text)) throw fault('misspelt-name', token, { name: text, cure: inferName(text) });
  cursor.take();
  return { type: 'name', name: text, from, to };
}

/** Reads the name that a statement gives to a value: one that means nothing else yet. */
export function readNewName(cursor: Cursor, what: string): NameNode {
  const node = readName(cursor, what);
  const role = maybeRole(node.name);
  if (role !== undefined) throw fault('reserved-name', node, { name: node.name, role });
  return node;
}

/** Takes the sign between a name and its value. Throws a ReadFault. */
export function readEquals(cursor: Cursor): void {
  const token = cursor.peek();
  if (token.type !== 'symbol' || token.text !== '=') throw unexpected(token, '"=" after the name');
  cursor.take();
}
