import { expect, test, vi } from 'vitest';
import { createResultTools } from '../../src/page/result-tools.ts';
import { openResult } from './made-result.ts';
import { textOf } from './test-desk.ts';

function tools(name: string) {
  const made = openResult();
  const element = made.show(createResultTools(made.desk, made.cell(name)));
  return { ...made, element, open: [...element.querySelectorAll('details')] };
}

test('numbers can be gone through and asked backwards, words only gone through', () => {
  const titles = (name: string) =>
    [...tools(name).element.querySelectorAll('summary')].map((each) => textOf(each));
  expect(titles('top')).toEqual(['Step by step', 'Ask backwards']);
  expect(titles('gear')).toEqual(['Step by step']);
});

test('each comes when it is opened', async () => {
  const { element, open } = tools('top');
  expect(element.querySelector('button')).toBeNull();
  for (const details of open) details.open = true;
  await vi.waitFor(() => expect(textOf(element)).toMatch(/Next line.*Find it/s));
});
