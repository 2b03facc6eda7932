import { describe, expect, test } from 'vitest';
import { createFigureTable } from '../../src/sheet/figure-table.ts';
import { createStanding } from '../../src/sheet/standing.ts';
import type { System } from '../../src/units/unit.ts';
import { block, makeBook } from './made-book.ts';

const GIVENS = block(
  'given',
  'reading = 3.2 ± 0.004 in "Reading" to 0.001',
  'plate = 0.25 in "Plate" to 0.001',
  'roll = blank mm "Roll-out"',
  'ratios = [3, 2, 1] "Ratios" to 0.01',
  'car = "Estate" "Car"',
);
const WORK = block(
  'work',
  'gap = reading - plate "Gap" as in to 0.001',
  'twice = 2 * roll "Twice"',
  'gear = ordinals(ratios) "Gear"',
  'steps = without_last(ratios) * 1 in "Step" as in to 0.1',
);

function set(
  lines: readonly string[],
  { system, entries = {} }: { system?: System; entries?: Record<string, string> } = {},
) {
  const { book, frame } = makeBook(
    { '10-a.md': `# Bench\n${GIVENS}${WORK}${block('figures "Set"', ...lines)}` },
    entries,
  );
  const { linked, statement } = book.figures[0]!;
  const isEntered = ({ name }: { readonly name: string }) => name in entries;
  const options = { isEntered, ...(system === undefined ? {} : { system }) };
  return createFigureTable(statement.title, linked!, createStanding(book, frame, options));
}

describe('single values, a row each', () => {
  test('tell value, unit, how sure and how known, and the sheet', () => {
    const { columns, rows } = set(['gap', 'reading', 'car'], {
      entries: { reading: '3.3 ± 0.002' },
    });
    expect(columns.map(({ title }) => title)).toEqual([
      'Figure',
      'Value',
      'Unit',
      'Worst case',
      'Likely, 95 %',
      'Known',
      'Sheet',
    ]);
    // Of one reading alone 95 % of a normal distribution would reach beyond its limits, 1.96/√3 of them.
    expect(rows[0]).toEqual(['Gap', '3.050', 'in', '± 0.0020', '± 0.0020', 'worked', '10 Bench']);
    expect(rows[1]!.slice(5)).toEqual(['entered', '10 Bench']);
    expect(rows[2]).toEqual(['Car', 'Estate', '', '', '', 'assumed', '10 Bench']);
  });

  test('say nothing of doubt where there is none', () => {
    expect(set(['plate', 'car']).columns.map(({ title }) => title)).not.toContain('Worst case');
  });

  test('a figure that is not there yet is a dash, and says so', () => {
    const { rows } = set(['roll', 'twice']);
    expect(rows.map(([, value, , known]) => [value, known])).toEqual([
      ['–', 'not known yet'],
      ['–', 'not known yet'],
    ]);
  });

  test('stand in the units of the page', () => {
    expect(set(['plate'], { system: 'metric' }).rows[0]!.slice(1, 3)).toEqual(['6.35', 'mm']);
  });
});

describe('lists, a column each', () => {
  test('have units in their heads and a row an element', () => {
    const { columns, rows } = set(['gear', 'ratios "Ratio"', 'steps']);
    expect(columns).toEqual([
      { title: 'Gear', numeric: false },
      { title: 'Ratio', numeric: true },
      { title: 'Step, in', numeric: true },
    ]);
    expect(rows).toEqual([
      ['1st', '3.00', '3.0'],
      ['2nd', '2.00', '2.0'],
      ['3rd', '1.00', '–'],
    ]);
  });
});
