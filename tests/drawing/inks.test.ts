import { expect, test } from 'vitest';
import { createInks } from '../../src/drawing/inks.ts';
import { contrast } from '../support/contrast.ts';

test('on the page an ink follows the page and has a colour to fall back on', () => {
  expect(createInks(false).setWash).toBe('var(--set-wash, #e5f0f0)');
  expect(createInks(false).ink).toBe('var(--ink, #1c2529)');
});

test('in a file that stands alone every ink is literal', () => {
  const inks = createInks(true);
  expect(Object.values(inks).join(' ')).not.toContain('var(');
  expect(inks.plate).toMatch(/sans-serif$/);
});

test.each(['ink', 'soft', 'set', 'warn', 'good'] as const)(
  'lettering in %s has the contrast of 4.5:1 that WCAG 2.2 SC 1.4.3 asks for',
  (name) => {
    const inks = createInks(true);
    expect(contrast(inks[name], '#ffffff')).toBeGreaterThan(4.5);
    expect(contrast(inks[name], inks.setWash)).toBeGreaterThan(4.5);
  },
);
