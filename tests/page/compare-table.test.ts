import { expect, test } from 'vitest';
import { openProposal } from './made-compare.ts';
import { textOf } from './test-desk.ts';

function rowsOf(element: HTMLElement, caption: string): readonly (readonly string[])[] {
  const table = [...element.querySelectorAll('table')].find(
    (each) => textOf(each.querySelector('caption')) === caption,
  );
  return [...(table?.querySelectorAll('tr') ?? [])].map((row) =>
    [...row.children].map((cell) => textOf(cell)),
  );
}

test('what differs stands in columns, with the difference in sign and words', () => {
  // By hand: 800 rpm × 3.25 = 2600, × 3.73 = 2984, shown to 10; 384 / 2600 = 14.8 %.
  expect(rowsOf(openProposal().element, 'Results side by side')).toEqual([
    ['Result', 'As it is', 'Proposal'],
    ['Engine speed', '2600 rpm', '2980 rpm+380 rpm, 15 % more'],
  ]);
});

test('checks stand in columns below', () => {
  expect(rowsOf(openProposal().element, 'Checks side by side')).toEqual([
    ['Check', 'As it is', 'Proposal'],
    ['At cruise', 'passes', 'fails'],
  ]);
});

test('chosen results are shown whether they differ or not', () => {
  const { element, find, given } = openProposal();
  const twice = given('twice').index;
  find(`compare-${twice}`).click();
  expect(rowsOf(element, 'Results side by side').slice(1)).toEqual([['Twice', '4', '4the same']]);
  find(`compare-${twice}`).click();
  expect(rowsOf(element, 'Results side by side')[1]![0]).toBe('Engine speed');
});

test('where nothing differs that is said', () => {
  const { element } = openProposal('3.25');
  expect(textOf(element)).toContain('Nothing on this sheet comes out different.');
});
