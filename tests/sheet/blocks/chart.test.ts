import { expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import { faultsOf, readBlock } from './made-block.ts';

const CURVE = 'gap over wear from 0 mm to 2 mm';

test('a curve with all that may stand behind it, marks and limits in any order', () => {
  const { chart, problems } = readBlock(
    'chart',
    '"Gap as the disc wears"',
    'limits least to 2 * least "Holds"',
    'gap, gap_cold as in over wear from 0 mm to 2 mm a line for each names y "Gap" x "Wear"',
    'mark worn "Worn out" on x',
    'mark 1 mm',
  );
  expect(problems).toEqual([]);
  expect(chart).toMatchObject({
    title: 'Gap as the disc wears',
    results: [{ name: 'gap' }, { name: 'gap_cold' }],
    unit: { symbol: 'in' },
    over: { name: 'wear' },
    lines: { name: 'names' },
    xLabel: 'Wear',
    yLabel: 'Gap',
    marks: [{ label: 'Worn out', axis: 'x' }, { label: '' }],
    limits: [{ label: 'Holds' }],
  });
  const { range, limits } = chart!;
  const trees = [range.from, range.to, limits[0]!.least, limits[0]!.most];
  expect(trees.map((tree) => printText(tree))).toEqual(['0 mm', '2 mm', 'least', '2 * least']);
  expect(chart!.marks[1]).not.toHaveProperty('axis');
});

test('the curve alone is enough, and holds nothing that was not said', () => {
  const { chart } = readBlock('chart', '"Gap"', CURVE);
  expect(chart).toMatchObject({ marks: [], limits: [] });
  for (const absent of ['unit', 'lines', 'xLabel', 'yLabel'])
    expect(chart).not.toHaveProperty(absent);
});

test.each([
  ['no title', '', [CURVE], 'missing-name 1:9'],
  ['no curve', '"Gap"', ['mark 1 mm'], 'missing-line 1:10'],
  ['two curves', '"Gap"', [CURVE, CURVE], 'repeated-clause 3:10'],
  ['no range', '"Gap"', ['gap over wear'], 'unexpected-end 2:14'],
  ['no given to run over', '"Gap"', ['gap from 0 mm to 2 mm'], 'unexpected-word 2:5'],
  ['a comma too many', '"Gap"', ['gap, over wear from 0 mm to 2 mm'], 'unexpected-word 2:11'],
  ['a formula for a result', '"Gap"', ['2 * gap over wear'], 'unexpected-word 2:1'],
  ['limits with one end', '"Gap"', [CURVE, 'limits 1 mm'], 'unexpected-end 3:12'],
  ['a mark on no axis', '"Gap"', [CURVE, 'mark 1 mm on z'], 'unexpected-word 3:14'],
  ['an axis for limits', '"Gap"', [CURVE, 'limits 1 mm to 2 mm on y'], 'unknown-clause 3:21'],
])('%s leaves no chart', (_, info, lines, fault) => {
  const found = readBlock('chart', info, ...lines);
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.chart).toBeUndefined();
});
