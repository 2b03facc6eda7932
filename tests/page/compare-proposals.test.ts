import { expect, test } from 'vitest';
import { openCompare, openProposal } from './made-compare.ts';
import { textOf } from './test-desk.ts';

test('a proposal begins with what the job has, and the field is ready to type in', () => {
  const { desk, click, choose, find } = openCompare();
  click('proposal-add');
  choose('proposal-0-given', 'Axle');
  expect(desk.job().variants).toEqual([
    { name: 'Proposal', entries: { '10-sheet': { axle: '3.25' } } },
  ]);
  expect(document.activeElement).toBe(find('proposal-0-0'));
});

test('an entry that was typed in another unit of the page begins with that unit', () => {
  const { desk, click, choose, given } = openCompare();
  desk.enter(given('wide'), { text: '30', unit: 'mm' });
  click('proposal-add');
  choose('proposal-0-given', 'Wide');
  expect(desk.job().variants[0]!.entries).toEqual({ '10-sheet': { wide: '30 mm' } });
});

test('what is different is kept as it was typed', () => {
  const { desk } = openProposal('3 3/4');
  expect(desk.job().variants[0]!.entries).toEqual({ '10-sheet': { axle: '3 3/4' } });
  expect(desk.job().entries).toEqual({});
});

test('an entry that cannot be read is told and stays in the field', () => {
  const { find, element } = openProposal('3,,7');
  expect((find('proposal-0-0') as HTMLInputElement).value).toBe('3,,7');
  expect(textOf(element.querySelector('.error'))).toMatch(/^Error: Axle: /);
});

test('rows of a table are offered while typing', () => {
  const { choose, find } = openProposal();
  choose('proposal-0-given', 'Set');
  const list = (find('proposal-0-1') as HTMLInputElement).list!;
  expect([...list.options].map(({ value }) => value)).toEqual(['Tall', 'Short']);
});

test('every change can be undone, one step each', () => {
  const { desk } = openProposal();
  expect(desk.history().past.map(({ label }) => label)).toEqual([
    'add a proposal',
    'Proposal: Axle different',
    'Proposal: Axle 3.73',
  ]);
  desk.undo();
  expect(desk.job().variants[0]!.entries).toEqual({ '10-sheet': { axle: '3.25' } });
});

test('a difference may be taken back', () => {
  const { desk, element } = openProposal();
  element.querySelector<HTMLElement>('[aria-label="Take back Axle"]')!.click();
  expect(desk.job().variants[0]!.entries).toEqual({});
});

test('made the job’s, a proposal is gone and its difference stands in the job', () => {
  const { desk, click, given } = openProposal();
  click('proposal-0-adopt');
  expect(desk.job().variants).toEqual([]);
  expect(desk.entryOf(given('axle'))).toEqual({ text: '3.73' });
});

test('a proposal can be called otherwise, built on another and removed', () => {
  const { desk, click, type, choose } = openProposal();
  type('proposal-0-name', 'Short axle');
  click('proposal-add');
  choose('proposal-1-base', 'Short axle');
  expect(desk.job().variants[1]).toEqual({ name: 'Proposal', base: 'Short axle', entries: {} });
  click('proposal-0-remove');
  expect(desk.job().variants).toEqual([
    { name: 'Proposal', entries: { '10-sheet': { axle: '3.73' } } },
  ]);
});

test('a proposal whose base is gone says so, and can be built on the job', () => {
  const { desk, element, choose } = openProposal();
  const variants = desk.job().variants.map((variant) => ({ ...variant, base: 'gone' }));
  desk.replace('opened', { ...desk.job(), variants });
  expect(textOf(element.querySelector('.error'))).toMatch(/builds on "gone", which is no longer/);
  choose('proposal-0-base', 'the job');
  expect(desk.job().variants[0]!.base).toBeUndefined();
  expect(element.querySelector('.error')).toBeNull();
});
