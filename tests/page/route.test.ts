import { expect, test } from 'vitest';
import { createRoute, formatNumber } from '../../src/page/route.ts';
import { createPlaces } from '../../src/sheet/places.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';

function sheet(name: string, number: number | undefined, title: string): Sheet {
  return {
    name,
    number,
    title,
    file: `${name}.md`,
    source: '',
    parts: [],
    problems: [],
    places: createPlaces('', ''),
  };
}

const sheets = [sheet('00-guide', 0, 'Guide'), sheet('20-gearing', 20, 'Gearing')];

test('every sheet is a stop that leads to it', () => {
  const { element } = createRoute(sheets);
  const links = [...element.querySelectorAll('a')];
  expect(links.map((link) => link.getAttribute('href'))).toEqual(['#/00-guide', '#/20-gearing']);
});

test('the open sheet is marked, and each state told in words as well as in shape', () => {
  const route = createRoute(sheets);
  route.show('20-gearing', (one) =>
    one.number === 20 ? { state: 'fails', fails: 1 } : { state: 'not-started' },
  );
  const open = route.element.querySelector('[aria-current=page]');
  expect(open?.textContent).toBe('20Gearing a check fails');
  expect(open?.className).toBe('stop fails');
  expect(route.element.querySelector('a')?.textContent).toBe('Guide not started');
});

test('the guide and a sheet without a number stand before the count', () => {
  expect([formatNumber(0), formatNumber(undefined), formatNumber(20)]).toEqual(['', '', '20']);
});
