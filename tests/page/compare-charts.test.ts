import { expect, test } from 'vitest';
import { openProposal } from './made-compare.ts';
import { textOf } from './test-desk.ts';

test('charts of all columns are laid over one another and told in a sentence', async () => {
  const { element, settled } = openProposal();
  await settled(() => expect(element.querySelector('figure svg')).not.toBeNull());
  const caption = textOf(element.querySelector('figcaption'));
  expect(caption).toMatch(/^Over axle, side by side\. Engine speed over axle from 2/);
  // The places of both on the axis across, as marks.
  expect(caption).toMatch(/As it is, 3\.25/);
  expect(caption).toMatch(/Proposal, 3\.73/);
});

test('their numbers are a table one click away', async () => {
  const { element, settled } = openProposal();
  await settled(() => expect(element.querySelector('figure svg')).not.toBeNull());
  element.querySelector<HTMLDetailsElement>('figure details')!.open = true;
  await settled(() => expect(element.querySelector('figure tbody tr')).not.toBeNull());
});
