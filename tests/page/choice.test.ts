import { beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { type Choice, createChoice } from '../../src/page/choice.ts';

let picked: string[];
let choice: Choice;

beforeEach(() => {
  picked = [];
  choice = createChoice({
    id: 'set',
    describedBy: [],
    rows: ['Wide', 'Close'],
    own: 'Your own, typed',
    pick: (row) => picked.push(row),
    pickOwn: () => picked.push('own'),
  });
  document.body.replaceChildren(choice.element);
  choice.show('Wide');
});

test('the row that holds is the one shown', () => {
  expect(choice.select.selectedOptions[0]?.textContent).toBe('Wide');
});

test('picking tells the row', async () => {
  await userEvent.selectOptions(choice.select, 'Close');
  expect(picked).toEqual(['Close']);
});

test('typing your own is one of the choices', async () => {
  await userEvent.selectOptions(choice.select, 'Your own, typed');
  expect(picked).toEqual(['own']);
});

test('a value that is no row is your own', () => {
  choice.show(undefined);
  expect(choice.select.selectedOptions[0]?.textContent).toBe('Your own, typed');
});

test('a whole row cannot be typed', () => {
  const rows = createChoice({
    id: 'row',
    describedBy: [],
    rows: ['Wide', 'own'],
    pick: () => {},
    pickOwn: () => {},
  });
  expect([...rows.select.options].map((option) => option.textContent)).toEqual(['Wide', 'own']);
});
