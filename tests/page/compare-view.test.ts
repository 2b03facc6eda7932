import { expect, test } from 'vitest';
import { openCompare, openProposal } from './made-compare.ts';
import { textOf } from './test-desk.ts';

test('without a proposal there is nothing to see but how to make one', () => {
  const { element } = openCompare();
  expect(textOf(element)).toMatch(/changes nothing in the job until you make it the job’s/);
  expect(element.querySelector<HTMLElement>('.compared > div:last-child')!.hidden).toBe(true);
});

test('a change of the job is followed', async () => {
  const { desk, given, element, settled } = openProposal();
  desk.enter(given('axle'), { text: '3' });
  await settled(() => expect(textOf(element.querySelector('table'))).toContain('2400 rpm'));
});
