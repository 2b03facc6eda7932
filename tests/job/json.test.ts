import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEEPEST, formatSorted, isShallow } from '../../src/job/json.ts';

test('keys stand in order at every level, those like numbers too', () => {
  expect(formatSorted({ b: 1, a: { 10: 1, 9: 2, x: [] }, '': {} })).toBe(
    '{"":{},"a":{"10":1,"9":2,"x":[]},"b":1}',
  );
});

test('lines are indented a level at a time', () => {
  expect(formatSorted({ b: [1, { c: 'x' }], a: {} }, 2)).toBe(
    '{\n  "a": {},\n  "b": [\n    1,\n    {\n      "c": "x"\n    }\n  ]\n}',
  );
});

test('any data comes back as it was, on one line and in many', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (data) => {
      const plain = JSON.parse(JSON.stringify(data));
      expect(JSON.parse(formatSorted(data))).toEqual(plain);
      expect(JSON.parse(formatSorted(data, 2))).toEqual(plain);
    }),
  );
});

test('the same data is the same text, whatever order it was made in', () => {
  expect(formatSorted({ a: 1, b: 2 })).toBe(formatSorted({ b: 2, a: 1 }));
});

test('a name that every object has is a name like any other', () => {
  expect(formatSorted(JSON.parse('{"__proto__":{"x":1},"constructor":2}'))).toBe(
    '{"__proto__":{"x":1},"constructor":2}',
  );
});

test('data is shallow up to the deepest level and no further', () => {
  const nest = (levels: number) => JSON.parse('['.repeat(levels) + ']'.repeat(levels));
  expect(isShallow(nest(DEEPEST))).toBe(true);
  expect(isShallow(nest(DEEPEST + 1))).toBe(false);
  expect(isShallow(nest(5000))).toBe(false);
});
