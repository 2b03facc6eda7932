import { expect, test } from 'vitest';
import { createDisplay, createNamed, labelFrom } from '../../../src/sheet/blocks/named.ts';
import { createPlaces } from '../../../src/sheet/places.ts';
import { parseUnit } from '../../../src/units/parse-unit.ts';

const SOURCE = '```work\ngap = 1\n```\n';
const BLOCK = {
  source: SOURCE,
  places: createPlaces(SOURCE, 'made.md'),
  info: { from: 7, to: 7 },
  body: { from: 8, to: 16 },
  line: 1,
};
const NAME = { type: 'name', name: 'gap', from: 8, to: 11 } as const;

test.each([
  ['gap', 'Gap'],
  ['gap_when_worn', 'Gap when worn'],
  ['x2', 'X2'],
  ['', ''],
])('the name %s reads as %s', (name, label) => {
  expect(labelFrom(name)).toBe(label);
});

test('a statement has its place, and the label made from its name', () => {
  expect(createNamed(BLOCK, NAME, 15, {})).toEqual({
    name: 'gap',
    label: 'Gap',
    place: { file: 'made.md', line: 2, column: 1 },
    from: 8,
    to: 15,
  });
});

test('the words of the sheet go before the name, an empty label included', () => {
  expect(createNamed(BLOCK, NAME, 15, { label: 'Play', source: 'a book' })).toMatchObject({
    label: 'Play',
    source: 'a book',
  });
  expect(createNamed(BLOCK, NAME, 15, { label: '' }).label).toBe('');
});

test('a display holds what the clauses say of it, and nothing where they say nothing', () => {
  const unit = parseUnit('mm')!;
  expect(createDisplay({ unit, resolution: 0.1, label: 'Gap' })).toEqual({ unit, resolution: 0.1 });
  expect(createDisplay({ fraction: 64 })).toEqual({ fraction: 64 });
  expect(createDisplay({})).toEqual({});
});
