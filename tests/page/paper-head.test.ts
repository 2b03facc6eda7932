import { expect, test } from 'vitest';
import { NEW_JOB } from '../../src/job/record.ts';
import { createPaperHead } from '../../src/page/paper-head.ts';

test('a print says which job it is and of what day', () => {
  const head = createPaperHead(() => new Date(2026, 2, 14));
  head.show({ ...NEW_JOB, title: 'Quarry Lane estate' });
  expect(head.element.textContent).toBe('Layshaft · Quarry Lane estate14 March 2026');
  expect(head.element.classList.contains('print-only')).toBe(true);
});
