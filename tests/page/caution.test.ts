import { lexer } from 'marked';
import { expect, test } from 'vitest';
import { createCaution } from '../../src/page/caution.ts';

test('a caution says that it is one, in words', () => {
  const tokens = (lexer('Key *out*.')[0] as { tokens?: never[] }).tokens ?? [];
  const element = createCaution({
    kind: 'caution',
    line: 1,
    problems: [],
    title: 'Both wheels off the floor',
    tokens,
  });
  expect(element.textContent).toBe('Caution Both wheels off the floorKey out.');
  expect(element.getAttribute('role')).toBe('note');
  expect(element.querySelector('em')?.textContent).toBe('out');
});
