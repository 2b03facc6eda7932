import { expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import { faultsOf, readBlock } from './made-block.ts';

test('a chain: its sum by name, and its terms with sign and label', () => {
  const { stack, problems } = readBlock(
    'stack',
    'gap "Gap" as in to 0.001 source "derived"',
    '+ finger',
    '- edge + 1 mm "edge, cleaned"',
  );
  expect(problems).toEqual([]);
  expect(stack).toMatchObject({
    name: 'gap',
    label: 'Gap',
    source: 'derived',
    display: { unit: { symbol: 'in' }, resolution: 0.001 },
  });
  expect(
    stack!.terms.map(({ sign, expression, label }) => [sign, printText(expression), label]),
  ).toEqual([
    [1, 'finger', undefined],
    [-1, 'edge + 1 mm', 'edge, cleaned'],
  ]);
});

test.each([
  ['no name', '"Gap"', ['+ 1 in'], 'unexpected-word 1:10'],
  ['a name that is a unit', 'mm', ['+ 1 in'], 'reserved-name 1:10'],
  ['a formula behind the name', 'gap = 3', ['+ 1 in'], 'unknown-clause 1:14'],
  ['no lines', 'gap', [], 'missing-line 1:10'],
  ['a line without its sign', 'gap', ['1 in'], 'unexpected-word 2:1'],
  ['a sign without a length', 'gap', ['+'], 'unexpected-end 2:2'],
  ['a clause on a line', 'gap', ['+ 1 in as mm'], 'unknown-clause 2:8'],
])('%s leaves no chain', (_, info, lines, fault) => {
  const found = readBlock('stack', info, ...lines);
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.stack).toBeUndefined();
});

test('a chain with one bad line is no shorter chain: it is none', () => {
  const found = readBlock('stack', 'gap', '+ 1 in', '2 in', '+ 3 in');
  expect(found.stack).toBeUndefined();
});
