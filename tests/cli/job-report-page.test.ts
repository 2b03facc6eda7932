import { expect, test } from 'vitest';
import { formatReport } from '../../src/cli/job-report-page.ts';

test('tables without a row are left out', () => {
  const sheet = {
    title: 'Shaft',
    readings: [['Width', '3 in', '3 in']],
    results: [],
    checks: [],
    steps: [],
    notes: [],
  };
  const page = formatReport({ title: 'Job', vehicle: '', amiss: [], sheets: [sheet] });
  expect(page).toContain('<caption>Readings</caption>');
  expect(page.match(/<table>/g)).toHaveLength(1);
  expect(page).toContain('<h1>Job</h1>');
  expect(page).not.toContain('class="amiss"');
});

test('the page is the same for the same job, to the letter', () => {
  const report = { title: 'a', vehicle: 'b', amiss: ['c'], sheets: [] };
  expect(formatReport(report)).toBe(formatReport(report));
});
