import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fail } from '../../src/language/problem.ts';
import { createPlaces, formatPlace, placeProblem } from '../../src/sheet/places.ts';

test.each([
  ['', 0, 1, 1],
  ['abc', 0, 1, 1],
  ['abc', 3, 1, 4],
  ['a\nb', 1, 1, 2],
  ['a\nb', 2, 2, 1],
  ['a\n\nb', 3, 3, 1],
  ['\n', 1, 2, 1],
  ['a\nb', 99, 2, 98],
])('in %j the offset %i stands in line %i, column %i', (source, offset, line, column) => {
  expect(createPlaces(source, 'f.md')(offset)).toEqual({ file: 'f.md', line, column });
});

test('any offset stands where one comes to by counting', () => {
  const text = fc.array(fc.constantFrom('a', '\n', 'é'), { maxLength: 40 }).map((a) => a.join(''));
  fc.assert(
    fc.property(text, fc.nat(40), (source, at) => {
      const offset = Math.min(at, source.length);
      const before = source.slice(0, offset).split('\n');
      expect(createPlaces(source, 'f.md')(offset)).toEqual({
        file: 'f.md',
        line: before.length,
        column: before.at(-1)!.length + 1,
      });
    }),
  );
});

test('a place is written as editors read it', () => {
  expect(formatPlace({ file: 'notebooks/20-gearing.md', line: 12, column: 3 })).toBe(
    'notebooks/20-gearing.md:12:3',
  );
});

test('a problem gets its place and its cell; a place that it has already stays', () => {
  const places = createPlaces('a\nbc', 'f.md');
  const problem = fail('unclosed-text', { from: 3, to: 4 }, undefined);
  expect(placeProblem(problem, places)).toEqual({
    ...problem,
    place: { file: 'f.md', line: 2, column: 2 },
  });
  const placed = { ...problem, place: { file: 'other.md', line: 9, column: 9 } };
  expect(placeProblem(placed, places, 'gap')).toEqual({ ...placed, cell: 'gap' });
});
