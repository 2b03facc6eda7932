import { expect, test } from 'vitest';
import { createSpreadWriting } from '../../../src/sheet/spread/spread-writing.ts';
import { block, makeSheet } from '../made-book.ts';

const MADE = makeSheet(
  [
    block('given', 'finger_reading = 3.212 ± 0.003 in'),
    block('work', 'gap = finger_reading - 3 in as in to 0.001'),
  ].join('\n'),
);

function write(system?: 'metric'): string {
  const writing = createSpreadWriting(MADE.book, MADE.cell('gap'), system);
  return writing.show(0.00346 * 0.0254).replaceAll('\u00a0', ' ');
}

test('a doubt is shown with one figure more than the value', () => {
  expect(write()).toBe('0.0035 in');
});

test('the doubt of a length in fractions of an inch is a decimal of few figures', () => {
  const { book, cell } = makeSheet(
    [
      block('given', 'arm = 6 1/4 ± 1/16 in'),
      block('work', 'stop = arm - 3 in as in to 1/32'),
    ].join('\n'),
  );
  const { show } = createSpreadWriting(book, cell('stop'));
  expect(show(0.04586 * 0.0254).replaceAll('\u00a0', ' ')).toBe('0.046 in');
});

test('a doubt is in the units of the page', () => {
  expect(write('metric')).toBe('0.088 mm');
});

test('a given is called by its name in words', () => {
  const { name } = createSpreadWriting(MADE.book, MADE.cell('gap'));
  expect(name(MADE.cell('finger_reading').index)).toBe('finger reading');
});
