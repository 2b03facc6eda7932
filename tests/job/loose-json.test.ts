import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatSorted } from '../../src/job/json.ts';
import { readLooseJSON } from '../../src/job/loose-json.ts';

test('sound JSON is read whole, without a fault', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 5 }), (data) => {
      const plain = JSON.parse(JSON.stringify(data));
      expect(readLooseJSON(formatSorted(data, 2))).toEqual({ value: plain, faults: [] });
    }),
  );
});

test.each([
  [
    'a text that is cut off',
    '{\n"a": 1,\n"b": {"c": 2, "d',
    { a: 1, b: { c: 2 } },
    3,
    /cut off|missing/,
  ],
  ['a missing comma', '{\n"a": 1\n"b": 2,\n"c": 3\n}', { a: 1, c: 3 }, 3, /comma/],
  ['a value that is none', '{\n"a": wrong,\n"b": 2\n}', { b: 2 }, 2, /cannot be read/],
  ['a name that is none', '{\n"a": 1,\n?: 3,\n"b": 2\n}', { a: 1, b: 2 }, 3, /name is missing/],
  ['a missing colon', '{\n"a" 1,\n"b": 2\n}', { b: 2 }, 2, /value of "a" is missing/],
  ['more behind the end', '{"a": 1} x', { a: 1 }, 1, /more text/],
  ['a text that never ends', '{\n"a": "x,\n"b": 2\n}', { b: 2 }, 2, /cannot be read/],
])('%s is told with its line, and the rest is kept', (_, text, value, line, message) => {
  const reading = readLooseJSON(text);
  expect(reading.value).toEqual(value);
  expect(reading.faults[0]).toEqual({ line, message: expect.stringMatching(message) });
});

test.each([[''], ['   '], ['hello'], ['\u0000'], ['"']])('of %j nothing is read', (text) => {
  const { value, faults } = readLooseJSON(text);
  expect(value).toBeUndefined();
  expect(faults).toHaveLength(1);
});

test('brackets without end are refused and not followed', () => {
  expect(readLooseJSON('['.repeat(100_000)).faults[0]?.message).toBe('nested too deep');
  expect(readLooseJSON('{"a":'.repeat(100_000)).faults[0]?.message).toBe('nested too deep');
});

test('a name that every object has is kept as a name', () => {
  const { value } = readLooseJSON('{"__proto__": {"x": 1}, ?');
  expect(Object.keys(value as object)).toEqual(['__proto__']);
  expect('x' in (value as object)).toBe(false);
});
