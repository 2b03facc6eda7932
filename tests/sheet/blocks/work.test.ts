import { expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import { faultsOf, readBlock } from './made-block.ts';

test('a formula, with all that may stand behind it in any order', () => {
  const { statements, problems } = readBlock(
    'work',
    '',
    'out_by = gap - wanted "Out by" to 1/64 as in source "derived"',
    '  positive "Out." negative "In." zero "Leave it."',
    '  valid when gap > 0 in "The gap is closed."',
  );
  expect(problems).toEqual([]);
  const [found] = statements;
  expect(found).toMatchObject({
    name: 'out_by',
    label: 'Out by',
    source: 'derived',
    display: { unit: { symbol: 'in' }, fraction: 64 },
    signs: { positive: 'Out.', negative: 'In.', zero: 'Leave it.' },
    valid: { sentence: 'The gap is closed.' },
    place: { line: 2, column: 1 },
  });
  expect(printText(found!.expression)).toBe('gap - wanted');
  expect(printText(found!.valid!.condition)).toBe('gap > 0 in');
});

test('a bare formula has a label made from its name, and nothing else', () => {
  const [found] = readBlock('work', '', 'gap_when_worn = gap - wear').statements;
  expect(found).toMatchObject({ label: 'Gap when worn', display: {}, signs: {} });
  expect(found).not.toHaveProperty('valid');
  expect(found).not.toHaveProperty('source');
});

test('a statement reaches over the lines that belong to it', () => {
  const [first, second] = readBlock('work', '', 'a = 1 +', '  2', 'b = a').statements;
  expect(printText(first!.expression)).toBe('1 + 2');
  expect(second!.place.line).toBe(4);
});

test.each([
  ['a 1', 'unexpected-word 2:3'],
  ['a =', 'unexpected-end 2:4'],
  ['a = 1 how "Guessed."', 'unknown-clause 2:7'],
  ['a = 1 from 0 to 2', 'unknown-clause 2:7'],
  ['a = 1 valid a > 0 "No."', 'unexpected-word 2:13'],
  ['a = 1 valid when a > 0', 'unexpected-end 2:23'],
  ['a = 1 zero "No." zero "None."', 'repeated-clause 2:18'],
  ['pi = 3', 'reserved-name 2:1'],
])('%s is refused and the next line stands: %s', (line, fault) => {
  const found = readBlock('work', '', line, 'b = 2');
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.statements.map(({ name }) => name)).toEqual(['b']);
});
