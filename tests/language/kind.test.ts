import { expect, test } from 'vitest';
import { type Kind, nameKind } from '../../src/language/kind.ts';

test.each<[Kind, string]>([
  [{ type: 'quantity', dimension: [1, 0, 0, 0] }, 'length'],
  [{ type: 'quantity', dimension: [0, 0, 0, 0] }, 'plain number'],
  [{ type: 'list', dimension: [0, 0, -1, 1] }, 'list of turning speed'],
  [{ type: 'list', dimension: [1, 0, 0, 0], length: 3 }, 'list of length'],
  [{ type: 'text' }, 'text'],
  [{ type: 'texts' }, 'list of text'],
  [{ type: 'truth' }, 'true or false'],
  [{ type: 'row', columns: new Map() }, 'table row'],
  [{ type: 'table', columns: new Map() }, 'table'],
])('%o is called %s', (kind, name) => {
  expect(nameKind(kind)).toBe(name);
});
