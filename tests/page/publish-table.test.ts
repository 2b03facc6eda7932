import { expect, test } from 'vitest';
import { createPublishTable } from '../../src/page/publish-table.ts';
import { buttonIn, catchDownload, createPublishHost } from './made-publish.ts';

const TABLE = {
  title: 'Set',
  columns: [
    { title: 'Figure', numeric: false },
    { title: 'Value', numeric: true },
  ],
  rows: [['Gap', '2.950']],
};

test.each([
  ['CSV', '10-table-set.csv', 'Figure,Value\r\nGap,2.950\r\n'],
  ['HTML', '10-table-set.html', '<caption>Set</caption>'],
])('a table is handed over as %s', async (button, file, content) => {
  const { host } = await createPublishHost();
  const element = createPublishTable(host, TABLE);
  const caught = catchDownload();
  buttonIn(element, button).click();
  const { name, blob } = await caught;
  expect(name).toBe(file);
  expect(await blob.text()).toContain(content);
});

test('what became of the clipboard is said', async () => {
  const { host, said } = await createPublishHost();
  const element = createPublishTable(host, TABLE);
  document.body.replaceChildren(element);
  buttonIn(element, 'Copy as Markdown').click();
  await expect.poll(() => said.at(-1)).toMatch(/clipboard/);
});
