import { expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import { faultsOf, readBlock } from './made-block.ts';

test('a question asked backwards, with range, stock and label in any order', () => {
  const { statements, problems, title } = readBlock(
    'find',
    '"Which axle?"',
    'axle so that last(cruise) is 2 * 1000 rpm near stock "Axle to order" from 2.5 to 4.5',
  );
  expect(problems).toEqual([]);
  expect(title).toBe('Which axle?');
  const [found] = statements;
  expect(found).toMatchObject({
    given: { name: 'axle' },
    label: 'Axle to order',
    place: { line: 2, column: 1 },
  });
  const trees = [found!.result, found!.target, found!.near, found!.range?.from, found!.range?.to];
  expect(trees.map((tree) => tree && printText(tree))).toEqual([
    'last(cruise)',
    '2 * 1000 rpm',
    'stock',
    '2.5',
    '4.5',
  ]);
});

test('range, stock, label and title may be left out', () => {
  const found = readBlock('find', '', 'axle_ratio so that cruise is 2000 rpm');
  expect(found).toMatchObject({
    title: 'Asked backwards',
    statements: [{ label: 'Axle ratio' }],
  });
  expect(found.statements[0]).not.toHaveProperty('range');
  expect(found.statements[0]).not.toHaveProperty('near');
});

test.each([
  ['axle that cruise is 2000 rpm', 'unexpected-word 2:6'],
  ['axle so cruise is 2000 rpm', 'unexpected-word 2:9'],
  ['axle so that cruise 2000 rpm', 'unexpected-word 2:21'],
  ['axle so that cruise is', 'unexpected-end 2:23'],
  ['axle so that cruise is 2000 rpm from 2', 'unexpected-end 2:39'],
  ['axle so that cruise is 2000 rpm to 0.1', 'unknown-clause 2:33'],
  ['2 * axle so that cruise is 2000 rpm', 'unexpected-word 2:1'],
])('%s is refused: %s', (line, fault) => {
  const found = readBlock('find', '', line, 'tyre so that cruise is 2000 rpm');
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.statements.map(({ given }) => given.name)).toEqual(['tyre']);
});

test('a block without a question asks for one', () => {
  expect(faultsOf(readBlock('find', '', '# later'))).toEqual(['missing-line 1:8']);
});
