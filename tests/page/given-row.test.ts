import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { createGivenRow } from '../../src/page/given-row.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
width = 3.212 ± 0.003 in "Width" how "Caliper." to 0.001
gap = 0.150 in "Gap to set" from 0.100 in to 0.250 in to 0.005
ratios = pick "Wide" from sets.ratios "Gear set"
depth = blank mm "Depth"
\`\`\`

\`\`\`table sets "Sets"
set,ratios
Wide,"[3, 2, 1]"
Close,"[2.5, 1.5, 1]"
\`\`\`
`;

function createRow(name: string) {
  const test = createTestDesk(SHEET);
  const element = test.show(createGivenRow(test.desk, test.given(name)));
  const input = element.querySelector<HTMLInputElement>(`#${name}`)!;
  const commit = async (text: string): Promise<void> => {
    await userEvent.clear(input);
    await userEvent.type(input, `${text}{Enter}`);
  };
  return { ...test, element, input, commit };
}

test('the sheet’s example stands in the field as it is written, the unit behind it', () => {
  const { element, input } = createRow('width');
  expect(input.value).toBe('3.212 ± 0.003');
  expect(textOf(element.querySelector('.unit'))).toBe('in');
  expect(textOf(element.querySelector('.echo'))).toBe('81.585 mm');
});

test('label, how and echo belong to the field', () => {
  const { input } = createRow('width');
  expect(input.labels?.[0]?.textContent).toBe('Width');
  expect(input.getAttribute('aria-describedby')).toBe('width-how width-echo');
});

test('an entry is taken in the unit of the field and echoed', async () => {
  const { desk, element, given, commit } = createRow('width');
  await commit('3 1/8');
  expect(desk.entryOf(given('width'))).toEqual({ text: '3 1/8', unit: 'in' });
  expect(textOf(element.querySelector('.echo'))).toBe('3.125 in79.375 mm');
});

test('an entry that cannot be read stays, with its sentence', async () => {
  const { element, input, commit } = createRow('width');
  await commit('wide');
  expect(input.value).toBe('wide');
  expect(textOf(element.querySelector('.error'))).toMatch(/^Error: /);
});

test('a bare number of the other system shows its unit when the page changes', async () => {
  const { desk, element, input, commit } = createRow('width');
  await commit('3.1');
  desk.chooseSystem('metric');
  expect(input.value).toBe('3.1 in');
  expect(textOf(element.querySelector('.unit'))).toBe('mm');
  await commit('80');
  desk.chooseSystem('inch-pound');
  expect(input.value).toBe('80 mm');
});

test('a long entry has the width of the block', async () => {
  const { element, commit } = createRow('width');
  expect(element.classList.contains('long')).toBe(false);
  await commit('3.211; 3.214; 3.211; 3.212');
  expect(element.classList.contains('long')).toBe(true);
});

test('a value outside the range is taken, and said to be outside', async () => {
  const { element, commit } = createRow('gap');
  await commit('0.3');
  expect(textOf(element.querySelector('.outside'))).toBe('outside the usual range');
  await commit('0.25');
  expect(element.querySelector('.outside')).toBeNull();
});

test('a blank given says that it was left blank', () => {
  const { element } = createRow('depth');
  expect(textOf(element.querySelector('.echo'))).toBe('left blank');
});

test('a pick shows the rows; one’s own values take a field beside it', async () => {
  const { element, desk, given, input } = createRow('ratios');
  const select = input as unknown as HTMLSelectElement;
  const own = element.querySelector<HTMLInputElement>('#ratios-own')!;
  expect(own.parentElement?.hidden).toBe(true);
  await userEvent.selectOptions(select, 'Close');
  expect(desk.entryOf(given('ratios'))).toEqual({ text: 'Close' });
  await userEvent.selectOptions(select, 'my own, typed below');
  expect(own.parentElement?.hidden).toBe(false);
  expect(own.value).toBe('[2.5, 1.5, 1]');
  expect(own.ariaLabel).toBe('Gear set, your own');
});
