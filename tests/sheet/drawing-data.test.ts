import { expect, test } from 'vitest';
import { createDrawingData } from '../../src/sheet/drawing-data.ts';
import type { System } from '../../src/units/unit.ts';
import { block, makeSheet } from './made-book.ts';

const MADE = makeSheet(
  block(
    'given',
    'readings = [1 thou, 2 thou] "Readings" to 0.1 as thou',
    'angles = [0 deg, 90 deg]',
    'offset = 3 mm to 0.1',
    'open = blank deg',
  ) +
    block(
      'drawing dial "Round the bore"',
      'readings = readings',
      'angles = angles',
      'offset = offset',
      'direction = open',
      'dowel = 2 * offset / (offset - 3 mm) * 1 mm',
    ),
);

function data(system?: System) {
  const [drawing] = MADE.book.drawings;
  const { memory } = MADE.frame;
  return createDrawingData(
    'Round the bore',
    drawing!.linked!,
    ({ code }) => code.run(memory) as number,
    system,
  );
}
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('the values are in SI, by slot', () => {
  const { title, number, list } = data();
  expect(title).toBe('Round the bore');
  expect(number('offset')).toBeCloseTo(0.003, 12);
  expect(list('angles')).toEqual([0, Math.PI / 2]);
});

test('what is blank, has an error or is not bound is not there', () => {
  const { number, list, show, showAs } = data();
  for (const slot of ['direction', 'dowel', 'dowel_direction', 'nonsense']) {
    expect([number(slot), list(slot), show(slot)]).toEqual([undefined, undefined, '?']);
  }
  expect(showAs('nonsense', 1)).toBe('?');
});

test('a value is shown as its sheet shows it, an element of a list by its place', () => {
  const { show } = data();
  expect(plain(show('offset'))).toBe('3.0 mm');
  expect([plain(show('readings', 1)), plain(show('readings'))]).toEqual([
    '2.0 thou',
    '[1.0, 2.0] thou',
  ]);
  expect(show('readings', 2)).toBe('?');
});

test('and in the units of the page', () => {
  expect(plain(data('inch-pound').show('offset'))).toBe('0.118 in');
});

test('what a drawing works out itself is shown in the unit of a slot', () => {
  expect(plain(data().showAs('offset', 0.0254))).toBe('25.4 mm');
  expect(plain(data().showAs('readings', 0.0000254))).toBe('1.0 thou');
});
