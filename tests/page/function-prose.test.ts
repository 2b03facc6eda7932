import { expect, test } from 'vitest';
import { findProse } from '../../src/page/function-prose.ts';

test('all that is said of a formula of the trade is there', () => {
  const found = findProse('road_load')!;
  for (const words of [found.doc, found.source, found.validity, ...found.example])
    expect(words).not.toBe('');
});

test('there is nothing to say of what is no formula of the trade', () => {
  expect(findProse('constructor')).toBeUndefined();
});
