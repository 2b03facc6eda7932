import { expect, test } from 'vitest';
import { createSignature } from '../../src/page/signature.ts';

test('a line to sign on stands on paper only, with room for the day', () => {
  const line = createSignature('Measured by');
  expect([...line.children].map((one) => one.textContent)).toEqual(['Measured by', 'Date']);
  expect(line.classList.contains('print-only')).toBe(true);
  expect(line.ariaHidden).toBe('true');
});
