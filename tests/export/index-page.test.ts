import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { formatIndex } from '../../src/export/index-page.ts';
import { openText } from '../support/notebooks.ts';

const HOSTILE = '"><script>alert(1)</script>';

test('whatever a job is called, nothing in the page is live', () => {
  const sheet = { ...openText(`# ${HOSTILE}`).sheets[0]!, title: HOSTILE };
  const figure = {
    kind: 'chart' as const,
    sheet: 'made',
    id: 'made-chart',
    title: HOSTILE,
    caption: HOSTILE,
    alt: HOSTILE,
    draw: () => ({}) as Element,
    csv: () => '',
    files: ['figures/made-chart.svg'],
  };
  const sources = [{ what: HOSTILE, source: HOSTILE }];
  const page = formatIndex({ title: HOSTILE, credit: HOSTILE }, [
    { sheet, figures: [figure], tables: [], sources },
  ]);
  const { document } = parseHTML(page);
  expect(document.querySelectorAll('script')).toHaveLength(0);
  expect(document.querySelector('img')!.getAttribute('alt')).toBe(HOSTILE);
  expect(document.querySelector('h1')!.textContent).toBe(HOSTILE);
});

test('a sheet with nothing to print is left out', () => {
  const sheet = openText('# Alone').sheets[0]!;
  const page = formatIndex({ title: 'T', credit: '' }, [
    { sheet, figures: [], tables: [], sources: [] },
  ]);
  expect(page).not.toContain('Alone');
});
