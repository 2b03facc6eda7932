import { expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createTour } from '../../src/page/tour.ts';

function start() {
  let left = 0;
  const route = h('nav', { class: 'route' });
  const main = h('main', {}, h('div', { class: 'given-row' }), h('div', { class: 'work' }));
  const tour = createTour(() => {
    left += 1;
  });
  document.body.replaceChildren(h('header', { class: 'head' }), route, main, tour);
  const press = (words: string) => {
    const all = [...tour.querySelectorAll('button')];
    all.find(({ textContent }) => textContent === words)!.click();
  };
  return { tour, press, left: () => left };
}

test('the tour goes from stop to stop and ends', () => {
  const { tour, press, left } = start();
  const titles = [tour.querySelector('h2')?.textContent];
  for (let i = 0; i < 3; i += 1) {
    press('Next');
    titles.push(tour.querySelector('h2')?.textContent);
  }
  expect(new Set(titles).size).toBe(4);
  expect(tour.textContent).toContain('4 of 4');
  press('Done');
  expect(tour.isConnected).toBe(false);
  expect(left()).toBe(1);
});

test('what it speaks of is framed, one thing at a time, and nothing after it', () => {
  const { press } = start();
  press('Next');
  const framed = () => [...document.querySelectorAll('.framed')].map((one) => one.className);
  expect(framed()).toEqual(['given-row framed']);
  press('Leave the tour');
  expect(framed()).toEqual([]);
});

test('Escape leaves it', () => {
  const { tour, left } = start();
  tour.dispatchEvent(new KeyboardEvent('keydown', { key: 'Tab' }));
  expect(left()).toBe(0);
  tour.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
  expect(left()).toBe(1);
});

test('what is not on the page is spoken of all the same', () => {
  const tour = createTour(() => {});
  document.body.replaceChildren(tour);
  expect(tour.querySelector('h2')?.textContent).not.toBe('');
});
