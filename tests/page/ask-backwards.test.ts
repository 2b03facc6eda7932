import { expect, test, vi } from 'vitest';
import { createAsk } from '../../src/page/ask-backwards.ts';
import { openResult, press } from './made-result.ts';
import { textOf } from './test-desk.ts';

function ask(name: string) {
  const made = openResult();
  const cell = made.cell(name);
  const element = made.show(createAsk(made.desk, cell));
  const field = (part: string) =>
    document.getElementById(`ask-${cell.index}-${part}`) as HTMLInputElement & HTMLSelectElement;
  return {
    ...made,
    element,
    field,
    by(label: string): void {
      const options = [...field('given').options];
      field('given').value = options.find((option) => option.textContent === label)!.value;
      field('given').dispatchEvent(new Event('change'));
    },
    find(target: string): string {
      field('target').value = target;
      press(element, 'Find it');
      return textOf(element.querySelector('.asked'));
    },
  };
}

test('the exact answer stands in words, rows of the table beside it', () => {
  // By hand: 1000 rpm × 3 × 0.8 = 2400 rpm.
  const { find, element } = ask('top');
  expect(find('2400')).toMatch(/^Axle ratio 3\.000 gives in top gear 2400 rpm\./);
  expect([...element.querySelectorAll('li')].map(textOf)).toEqual([
    'Tall gives 2460 rpm',
    'Short gives 2980 rpm',
  ]);
});

test('a target may be typed in any unit of its kind, and in the unit of the page', () => {
  expect(ask('top').find('40 rev/s')).toMatch(/^Axle ratio 3\.000 /);
});

test('a target of another kind is told, and stays in the field', () => {
  const { find, field } = ask('top');
  expect(find('3 in')).toMatch(/^Error: Target: .*length/);
  expect(field('target').value).toBe('3 in');
  expect(find('')).toMatch(/^Error: Type what the result should be/);
});

test('of a list the element is chosen by its name', () => {
  const { find, field } = ask('speeds');
  expect([...field('element').options].map((option) => option.textContent)).toEqual([
    '1st',
    '2nd',
    '3rd',
    '4th',
    '5th',
  ]);
  field('element').value = '3';
  expect(find('3000')).toMatch(/^Axle ratio 3\.000 gives engine speeds \(4th\) 3000 rpm/);
});

test('a reading that is picked from a table has its rows tried', () => {
  const { by, find, element } = ask('top');
  by('Gear set');
  expect(find('3000')).toMatch(/^Of the table, Four comes nearest to in top gear 3000 rpm/);
  expect(textOf(element.querySelector('li'))).toBe('Four gives 3070 rpm');
});

test('a range that was typed is kept to', () => {
  const { find, field } = ask('top');
  field('from').value = '4';
  field('to').value = '5';
  expect(find('2400')).toMatch(/^Nothing between 4\.000 and 5\.000 gives .*; nearest is 4\.000/);
});

test('an answer follows what changes on the sheet', async () => {
  const { desk, given, find, element } = ask('top');
  find('2400');
  desk.enter(given('wheel'), { text: '800' });
  await vi.waitFor(() => expect(textOf(element.querySelector('.found'))).toMatch(/ 3\.750 gives/));
});

test('what hangs on no reading cannot be asked', () => {
  expect(textOf(ask('plain').element)).toMatch(/hangs on no single figure/);
});
