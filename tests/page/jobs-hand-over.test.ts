import { afterEach, expect, test } from 'vitest';
import { parseLink } from '../../src/job/link.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

test('a short job is a link that opens as the same job', async () => {
  const { root } = await openJobsPage();
  const link = root.querySelector<HTMLInputElement>('#job-link')!.value;
  expect(parseLink(new URL(link).hash)).toMatchObject({ ok: true, job: { title: 'The demo' } });
  expect(root.querySelector('svg.qr')?.getAttribute('aria-label')).toMatch(/Code of the link/);
});

test('a long one is a file, and that is said', async () => {
  const { root, session } = await openJobsPage();
  const words = Array.from({ length: 3000 }, () => Math.random().toString(36)).join(' ');
  session.desk().setNote('10-bolts', 'given width', words);
  expect(root.querySelector('#job-link')).toBeNull();
  expect(root.querySelector('.link-told')?.textContent).toMatch(
    /would have [\d,]+ characters\. Links of more than 2,000 are cut/,
  );
});
