import { describe, expect, test } from 'vitest';
import { block, makeBook } from './made-book.ts';

const SHEET = [
  block('given', 'gap = 0.165 in "Gap"', 'ratios = [3, 2, 1] "Ratios"', 'car = "Estate"'),
  block('work', 'gear = ordinals(ratios)', 'broken = gap + ratios + 1 s'),
].join('\n');

function link(title: string, ...lines: readonly string[]) {
  const { book } = makeBook({
    '10-a.md': SHEET + block(`figures ${title}`, ...lines),
    '20-b.md': SHEET,
  });
  return { figures: book.figures[0]!, problems: book.problems, book };
}

describe('a table of figures', () => {
  test('of single values has a row each', () => {
    const { linked } = link('"One"', 'gap', 'car "Car"').figures;
    expect(linked!.layout).toBe('rows');
    expect(linked!.figures.map(({ label }) => label)).toEqual(['Gap', 'Car']);
  });

  test('of lists has a column each, texts and quantities', () => {
    expect(link('', 'gear', 'ratios').figures.linked!.layout).toBe('columns');
  });

  test('takes values from another sheet', () => {
    const { figures, book } = link('', 'from 20-b', 'gap');
    expect(book.cells[figures.linked!.figures[0]!.cell]!.sheet).toBe('20-b');
  });
});

describe('is refused, and the rest of the sheet stands', () => {
  const messages = (title: string, ...lines: readonly string[]) =>
    link(title, ...lines).problems.map(({ message, place }) => `${place!.line}: ${message}`);

  test('with lists and single values in one table', () => {
    expect(messages('', 'gap', 'ratios')).toContainEqual(
      '13: a table of figures holds lists or single values, not both: gap (length) against ratios (list of plain number); give each a table of its own',
    );
  });

  test('with a name that there is not', () => {
    expect(messages('', 'gapp')).toContainEqual(
      expect.stringMatching(/^12: no value is called gapp; did you mean gap/),
    );
  });

  test('with a sheet that there is not', () => {
    expect(messages('', 'from 20-bb', 'gap')).toContainEqual(
      expect.stringMatching(/^12: no sheet is called 20-bb; did you mean 20-b/),
    );
  });

  test('silently, where the value itself has a fault that is told there', () => {
    const { figures, problems } = link('', 'broken');
    expect(figures.problem!.code).toBe('waiting');
    expect(problems.filter(({ cell }) => cell !== 'broken')).toEqual([]);
  });
});
