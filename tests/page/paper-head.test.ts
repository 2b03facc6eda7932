import { expect, test } from 'vitest';
import { NEW_JOB } from '../../src/job/record.ts';
import { createPaperHead } from '../../src/page/paper-head.ts';

const head = createPaperHead(() => new Date(2026, 2, 14));
const margin = (name: string) => document.documentElement.style.getPropertyValue(`--paper-${name}`);

test('a print says which job it is, of which car, and of what day', () => {
  head.show({ ...NEW_JOB, title: 'Gearbox', vehicle: 'Quarry Lane estate' });
  expect(head.element.textContent).toBe('Layshaft · Gearbox · Quarry Lane estate14 March 2026');
  expect(head.element.classList.contains('print-only')).toBe(true);
  expect(margin('job')).toBe('"Layshaft · Gearbox · Quarry Lane estate"');
  expect(margin('day')).toBe('"14 March 2026"');
});

test('a job without a car has its title alone', () => {
  head.show({ ...NEW_JOB, title: 'Gearbox' });
  expect(margin('job')).toBe('"Layshaft · Gearbox"');
});

test('each page says which sheet it is of', () => {
  head.name('Gearing');
  expect(margin('sheet')).toBe('"Gearing"');
});

test('the line at the head stands only where nothing is written into margins', () => {
  expect(head.element.hidden).toBe('CSSMarginRule' in window);
});
