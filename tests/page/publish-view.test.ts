import { expect, test } from 'vitest';
import { createPublishView } from '../../src/page/publish-view.ts';
import { PRINTED } from './made-publish.ts';
import { createTestDesk, textOf } from './test-desk.ts';

async function open() {
  const made = createTestDesk(PRINTED);
  const element = made.show(await createPublishView(made.desk, made.sheet));
  const titles = () => [...element.querySelectorAll('.publish-list > li > b')].map(textOf);
  return { ...made, element, titles };
}

test('every figure and every table of the sheet is offered', async () => {
  const { titles } = await open();
  expect(titles()).toEqual(['Gap', 'Set']);
});

test('its captions follow the readings', async () => {
  const { desk, element, given } = await open();
  const caption = () => element.querySelector('textarea')!.value;
  expect(caption()).toBe('Gap: 2.950\u00a0in.');
  desk.enter(given('reading'), { text: '3.3' });
  await desk.settled();
  await expect.poll(caption).toBe('Gap: 3.050\u00a0in.');
});
