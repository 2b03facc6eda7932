import { expect, test } from 'vitest';
import { migrate, SCHEMA } from '../../src/job/migrate.ts';

test('a tick that was a day alone becomes one that can be signed', () => {
  const old = { ticks: { '20-gearing': { 'tyre-size': '2026-03-14' } }, colour: 'green' };
  expect(migrate(old, 1)).toEqual({
    schema: SCHEMA,
    ticks: { '20-gearing': { 'tyre-size': { on: '2026-03-14' } } },
    colour: 'green',
  });
});

test('what a migration does not understand it leaves for the reading to tell of', () => {
  const odd = { ticks: { a: { b: 3 }, c: 'x' } };
  expect(migrate(odd, 1)).toEqual({ ...odd, schema: SCHEMA });
  expect(migrate({ ticks: 'x' }, 1)).toEqual({ ticks: 'x', schema: SCHEMA });
});

test('a record of this version is left alone', () => {
  const data = { ticks: { a: { b: '2026-03-14' } } };
  expect(migrate(data, SCHEMA)).toBe(data);
});
