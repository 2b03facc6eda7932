import { expect, test } from 'vitest';
import { freshId } from '../../src/job/fresh-id.ts';

test('no two names are the same', () => {
  const ids = new Set(Array.from({ length: 1000 }, freshId));
  expect(ids.size).toBe(1000);
  expect([...ids].every((id) => /^[0-9a-f]{24}$/.test(id))).toBe(true);
});
