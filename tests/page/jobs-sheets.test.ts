import { afterEach, expect, test, vi } from 'vitest';
import { parseSheetLink } from '../../src/job/sheet-link.ts';
import { takeInFile } from '../../src/page/take-in.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

/** The page of jobs, with a sheet from outside in the job. */
async function openWithSheet(text: string) {
  const opened = await openJobsPage();
  const { root, session } = opened;
  await takeInFile(session, session.desk(), new File([text], 'mine.md'));
  session.open('#/jobs');
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe('Jobs'));
  return { ...opened, part: () => root.querySelector('[aria-labelledby=own-sheets]')! };
}

test('a link to a sheet of one’s own is copied and shown, and opens as the same sheet', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  const { part, button } = await openWithSheet('# Mine\n');
  button('Copy link to this sheet mine').click();
  await vi.waitFor(() =>
    expect(part().querySelector('[role=status]')?.textContent).toBe('The link is copied.'),
  );
  const link = part().querySelector<HTMLInputElement>('input[readonly]')!.value;
  expect(write).toHaveBeenCalledWith(link);
  expect(parseSheetLink(new URL(link).hash)).toEqual({
    ok: true,
    sheet: { name: 'mine', text: '# Mine\n' },
  });
});

test('a sheet that is too long for a link is offered as a file', async () => {
  const words = Array.from({ length: 3000 }, (_, i) => (i * i).toString(36)).join(' ');
  const { part, button } = await openWithSheet(`# Mine\n\n${words}\n`);
  expect(part().textContent).toMatch(
    /As a link this sheet would have [\d,]+ characters\. Links of more than 2,000 are cut/,
  );
  expect(part().textContent).not.toContain('Copy link');
  const names: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    names.push(this.download);
  });
  button('Download the sheet mine').click();
  expect(names).toEqual(['mine.md']);
});

test('a sheet of one’s own is listed with its hash, and can be let go of', async () => {
  const { root, session, button } = await openJobsPage();
  await takeInFile(session, session.desk(), new File(['# Mine\n'], 'mine.md'));
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe('Mine'));
  session.open('#/jobs');
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe('Jobs'));
  const { version } = session.desk().job().foreign.mine!;
  expect(root.querySelector('[aria-labelledby=own-sheets]')?.textContent).toContain(version);
  button(/^Let go/).click();
  await vi.waitFor(() => expect(session.desk().job().foreign).toEqual({}));
});
