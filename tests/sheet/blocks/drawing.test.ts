import { expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import { faultsOf, readBlock } from './made-block.ts';

test('a kind of drawing with its slots bound to formulas', () => {
  const { drawing, problems } = readBlock(
    'drawing',
    'dial "Round the bore"',
    'readings = [0 mm, -2 mm]',
    'angles = start + step',
  );
  expect(problems).toEqual([]);
  expect(drawing).toMatchObject({ type: { name: 'dial' }, title: 'Round the bore' });
  expect(drawing!.slots.map(({ name, expression }) => [name.name, printText(expression)])).toEqual([
    ['readings', '[0 mm, -2 mm]'],
    ['angles', 'start + step'],
  ]);
});

test('a drawing without a title is called by its kind, and may bind nothing yet', () => {
  const { drawing } = readBlock('drawing', 'joint_line');
  expect(drawing).toMatchObject({ title: 'Joint line', slots: [] });
});

test.each([
  ['no kind', '', [], 'unexpected-end 1:11'],
  ['a kind in quotation marks', '"dial"', [], 'unexpected-word 1:12'],
  ['a clause behind the kind', 'dial as in', [], 'unknown-clause 1:17'],
  ['a slot without its sign', 'dial', ['readings 3'], 'unexpected-word 2:10'],
  ['a slot without its value', 'dial', ['readings ='], 'unexpected-end 2:11'],
  ['a label behind a slot', 'dial', ['readings = 3 "Three"'], 'unknown-clause 2:14'],
])('%s leaves no drawing', (_, info, lines, fault) => {
  const found = readBlock('drawing', info, ...lines);
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.drawing).toBeUndefined();
});
