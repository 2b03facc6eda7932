import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { createPublishBundle } from '../../src/page/publish-bundle.ts';
import { buttonIn, catchDownload, createPublishHost } from './made-publish.ts';

async function open() {
  const made = await createPublishHost();
  const element = createPublishBundle(made.host);
  document.body.replaceChildren(element);
  return { ...made, element };
}

test('the sheet in one zip: figures, tables, words, sources and the job', async () => {
  const { element, said } = await open();
  const caught = catchDownload();
  buttonIn(element, 'This sheet in one zip').click();
  const { name, blob } = await caught;
  const files = Object.keys(unzipSync(new Uint8Array(await blob.arrayBuffer())));
  expect(name).toMatch(/\.zip$/);
  expect(files).toEqual(
    expect.arrayContaining([
      'captions.md',
      'figures/10-stack-gap.png',
      'figures/10-stack-gap.svg',
      'index.html',
      'job.json',
      'tables/10-table-set.csv',
    ]),
  );
  await expect.poll(() => said.at(-1)).toMatch(/kB/);
});

test('formats that are not ticked are left out', async () => {
  const { element } = await open();
  for (const box of element.querySelectorAll('input')) box.checked = false;
  const caught = catchDownload();
  buttonIn(element, 'This sheet in one zip').click();
  const { blob } = await caught;
  const files = Object.keys(unzipSync(new Uint8Array(await blob.arrayBuffer())));
  expect(files.filter((file) => file.startsWith('figures/'))).toEqual([]);
});

test('while it is made it can be stopped, and then nothing is written', async () => {
  const { element, said } = await open();
  buttonIn(element, 'This sheet in one zip').click();
  const stop = buttonIn(element, 'Stop');
  expect(stop.hidden).toBe(false);
  stop.click();
  await expect.poll(() => said.at(-1)).toBe('Stopped. Nothing was written.');
  expect(stop.hidden).toBe(true);
});
