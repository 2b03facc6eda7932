import { expect, test, vi } from 'vitest';
import { formatJobFile } from '../../src/job/read-job.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { downloadJob } from '../../src/page/download.ts';

test('a job is handed over as its file, under its name', async () => {
  const clicked: { readonly name: string; readonly address: string }[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    clicked.push({ name: this.download, address: this.href });
  });
  const job = { ...NEW_JOB, title: 'Five-speed', vehicle: 'Estate' };
  downloadJob(job);
  expect(clicked[0]?.name).toBe('estate-five-speed.job.json');
  expect(await (await fetch(clicked[0]!.address)).text()).toBe(formatJobFile(job));
});
